/** Play, tempo, click, count-in, mute and solo, level, and where the sound goes. */
@NullMarked
package org.kitweft.ui.transport;

import org.jspecify.annotations.NullMarked;
