/**
 * What is heard, before it is heard: phrases laid out in exact time, settings of playing, and what
 * a player offers. Knows no device and no file; the sub-packages make files and sound of it.
 *
 * <p>Start at {@link org.kitweft.sound.Timeline}.
 */
@NullMarked
package org.kitweft.sound;

import org.jspecify.annotations.NullMarked;
