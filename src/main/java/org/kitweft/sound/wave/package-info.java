/** Sound files. Start at {@link org.kitweft.sound.wave.WaveFile}. */
@NullMarked
package org.kitweft.sound.wave;

import org.jspecify.annotations.NullMarked;
