package org.kitweft.sound.live;

import java.util.Set;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.sound.Note;
import org.kitweft.sound.Part;
import org.kitweft.sound.synth.NoteStream;

/** One sound struck outside a phrase. */
final class Audition {
    /** How long its key is held: pitched sounds are heard long enough to tell their pitch. */
    static final int FRAMES = NoteStream.RATE;

    private Audition() {}

    /**
     * The note of a stroke.
     *
     * @throws org.kitweft.kit.UnknownNameException if the kit has no such sound
     * @throws IllegalArgumentException if the velocity is not 1 to 127
     */
    static Note note(Kit kit, SoundName name, int velocity) {
        Surface surface = kit.surfaceOf(name);
        Sound sound = kit.sound(name);
        return new Note(
                0,
                Ticks.PER_QUARTER,
                0,
                sound.channel(),
                sound.program(),
                sound.key(),
                velocity,
                Set.copyOf(
                        sound.stops().stream()
                                .flatMap(id -> surface.sound(id).stream())
                                .map(Sound::key)
                                .toList()),
                Part.DRUMS);
    }
}
