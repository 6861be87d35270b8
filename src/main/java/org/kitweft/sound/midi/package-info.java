/** Standard MIDI files. Start at {@link org.kitweft.sound.midi.MidiFile}. */
@NullMarked
package org.kitweft.sound.midi;

import org.jspecify.annotations.NullMarked;
