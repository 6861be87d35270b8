/**
 * Scores as MusicXML 4.0 (W3C Community Group Final Report, June 2021), plain and compressed.
 *
 * <p>Start at {@link org.kitweft.score.musicxml.MusicXmlFile}.
 */
@NullMarked
package org.kitweft.score.musicxml;

import org.jspecify.annotations.NullMarked;
