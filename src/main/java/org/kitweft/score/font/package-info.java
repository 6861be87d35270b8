/**
 * Outlines, anchors and widths of the music font (Bravura) and the text font (Source Sans 3), both
 * in the jar.
 */
@NullMarked
package org.kitweft.score.font;

import org.jspecify.annotations.NullMarked;
