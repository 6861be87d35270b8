/**
 * Strokes and stickings, the text they are written in, the rudiments, and the catalogue of all
 * stickings of a length. Knows nothing of drums: what a hand strikes is decided in {@code groove}.
 */
@NullMarked
package org.kitweft.pattern;

import org.jspecify.annotations.NullMarked;
