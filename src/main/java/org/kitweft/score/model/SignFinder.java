package org.kitweft.score.model;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/**
 * Finds the signs of hits, one after the other in time.
 *
 * <p>Open: another sound of the surface stops this one and looks the same without a sign. Closed:
 * the first such sound after an open one; later ones need no sign. Remembers what it has seen, so
 * use one for each phrase.
 */
final class SignFinder {
    private final Kit kit;
    private final Map<String, SoundName> lastOn = new HashMap<>();

    SignFinder(Kit kit) {
        this.kit = kit;
    }

    /** The signs of a hit, which comes at or after all hits asked about before. */
    Set<Sign> signsOf(Hit hit) {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        if (hit.dynamic() == Dynamic.ACCENT) {
            signs.add(Sign.ACCENT);
        }
        if (hit.ornament() == Ornament.BUZZ) {
            signs.add(Sign.BUZZ);
        }
        SoundName before = lastOn.put(hit.sound().surface(), hit.sound());
        ringing(kit, hit.sound())
                .ifPresentOrElse(
                        signs::add,
                        () -> {
                            if (before != null
                                    && ringing(kit, before).isPresent()
                                    && stopsItsLike(hit.sound(), before)) {
                                signs.add(Sign.CLOSED);
                            }
                        });
        return signs;
    }

    /** The sign that tells a sound from one that stops it and looks the same. */
    static Optional<Sign> ringing(Kit kit, SoundName name) {
        if (!kit.has(name)) {
            return Optional.empty();
        }
        Surface surface = kit.surfaceOf(name);
        Sound sound = kit.sound(name);
        return surface.sounds().stream()
                        .anyMatch(
                                other ->
                                        other.stops().contains(sound.id())
                                                && looksLike(other, sound))
                ? Optional.of(Sign.OPEN)
                : Optional.empty();
    }

    private boolean stopsItsLike(SoundName name, SoundName open) {
        if (!kit.has(name)) {
            return false;
        }
        return kit.sound(name).stops().contains(open.sound())
                && looksLike(kit.sound(name), kit.sound(open));
    }

    private static boolean looksLike(Sound one, Sound other) {
        return one.place().equals(other.place()) && one.notehead() == other.notehead();
    }
}
