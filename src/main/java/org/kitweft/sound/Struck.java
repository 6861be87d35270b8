package org.kitweft.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Ticks;
import org.kitweft.groove.Velocity;
import org.kitweft.kit.Sound;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Ornament;

/**
 * Turns the hits of a groove into notes: in half time or double time if so wanted, grace notes and
 * bounces written out, muted limbs left out. A grace note is the opposite limb's: it falls silent
 * with that.
 */
final class Struck {
    /** A drum's key is let go after a sixteenth: its sound rings on by itself. Our own choice. */
    private static final long STRUCK_TICKS = Ticks.PER_QUARTER / 4;

    /** What can be silenced, or has a pitch, is held for a whole note unless it is stopped. */
    private static final long RINGING_TICKS = 4L * Ticks.PER_QUARTER;

    private final Groove groove;
    private final PlaySettings settings;
    private final Feel feel;
    private final long stepTicks;

    Struck(Groove groove, PlaySettings settings) {
        this.groove = groove;
        this.settings = settings;
        this.feel = settings.stretch().feel();
        this.stepTicks = feel.scaled(groove.grid().stepTicks());
    }

    /** The notes of a hit, in time; none if its limbs are not heard or the kit lacks the sound. */
    List<Note> notes(Hit hit) {
        List<Note> notes = new ArrayList<>();
        Meter meter = groove.grid().meter();
        if (!groove.kit().has(hit.sound())) {
            return notes; // told as a conflict by the weaver
        }
        if (settings.hears(hit.limb().opposite())) {
            long spacing = Ornaments.graceTicks(stepTicks, meter, settings.tempo());
            for (int before = hit.ornament().graceNotes(); before > 0; before--) {
                notes.add(note(hit, -before * spacing, Velocity.GRACE));
            }
        }
        if (settings.hears(hit.limb())) {
            long spacing = Ornaments.bounceTicks(stepTicks, meter, settings.tempo());
            int bounces =
                    hit.ornament() == Ornament.BUZZ
                            ? Ornaments.bounces(stepTicks, meter, settings.tempo())
                            : 1;
            for (int bounce = 0; bounce < bounces; bounce++) {
                int velocity = Ornaments.bounceVelocity(hit.velocity(), bounce);
                notes.add(note(hit, bounce * spacing, velocity));
            }
        }
        return notes;
    }

    private Note note(Hit hit, long after, int velocity) {
        Surface surface = groove.kit().surfaceOf(hit.sound());
        Sound sound = groove.kit().sound(hit.sound());
        return new Note(
                feel.scaled(hit.start()) + after,
                rings(surface, sound) ? RINGING_TICKS : STRUCK_TICKS,
                feel.scaled(hit.written()),
                sound.channel(),
                sound.program(),
                sound.key(),
                velocity,
                stoppedKeys(surface, sound),
                Part.DRUMS);
    }

    private static boolean rings(Surface surface, Sound sound) {
        return sound.isPitched()
                || surface.sounds().stream().anyMatch(other -> other.stops().contains(sound.id()));
    }

    private static Set<Integer> stoppedKeys(Surface surface, Sound sound) {
        return sound.stops().stream()
                .flatMap(id -> surface.sound(id).stream())
                .filter(stopped -> stopped.channel() == sound.channel())
                .map(Sound::key)
                .collect(Collectors.toUnmodifiableSet());
    }
}
