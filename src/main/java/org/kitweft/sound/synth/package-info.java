/**
 * The renderer: the JDK's synthesizer read as a stream, fed with notes that lie on exact frames.
 * The same for live sound and for files. Start at {@link org.kitweft.sound.synth.NoteStream}.
 */
@NullMarked
package org.kitweft.sound.synth;

import org.jspecify.annotations.NullMarked;
