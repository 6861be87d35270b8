/** The mixer: level, pan, mute and solo of each part. Start at {@link MixerPanel}. */
@NullMarked
package org.kitweft.ui.mix;

import org.jspecify.annotations.NullMarked;
