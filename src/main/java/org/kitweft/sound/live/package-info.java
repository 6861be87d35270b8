/**
 * Live sound: a player that renders on a thread of its own, and its ways to the system's lines and
 * MIDI devices. Start at {@link org.kitweft.sound.live.LivePlayer}.
 */
@NullMarked
package org.kitweft.sound.live;

import org.jspecify.annotations.NullMarked;
