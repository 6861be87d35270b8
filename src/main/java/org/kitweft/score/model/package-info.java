/**
 * The notation model: what is written, before anybody decides where on the paper it stands.
 *
 * <p>Start at {@link org.kitweft.score.model.Notation}: it turns a phrase into a {@link
 * org.kitweft.score.model.Score} of measures, voices, chords and rests. Engraver and MusicXML both
 * read that.
 */
@NullMarked
package org.kitweft.score.model;

import org.jspecify.annotations.NullMarked;
