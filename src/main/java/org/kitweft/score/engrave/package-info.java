/**
 * The engraver: from a score to placed signs, and from placed signs to any {@link
 * java.awt.Graphics2D}.
 *
 * <p>Lengths are staff spaces (a quarter of the staff's height); x grows to the right, y downwards,
 * and y = 0 is the middle line. Start at {@link org.kitweft.score.engrave.Engraver}.
 */
@NullMarked
package org.kitweft.score.engrave;

import org.jspecify.annotations.NullMarked;
