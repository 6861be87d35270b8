package org.kitweft.explore.role;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;

/**
 * Which sounds of a kit can do what in a groove. Where a kit has nothing of a kind, the nearest it
 * has stands in, so that hand drums and marimbas are judged by what they can do:
 *
 * <ul>
 *   <li>pulse: hi-hat, ride and bells; else every sound;
 *   <li>back beat: the snare; else everything but the low sounds;
 *   <li>low: the bass drum; else the sounds of the lowest surface;
 *   <li>mark: crash cymbals; else the low sounds;
 *   <li>round the kit, from high to low: the snare, then drums by diameter, the small ones first,
 *       then the bass drum (common practice, no source); bars and other pitched sounds by key.
 * </ul>
 */
final class KitTraits {
    private final Set<SoundName> pulse;
    private final Set<SoundName> backBeat;
    private final Set<SoundName> low;
    private final Set<SoundName> marks;
    private final Map<SoundName, Double> depth = new HashMap<>();
    private final boolean hasCrash;
    private final boolean pulseIsOnCymbals;

    KitTraits(Kit kit) {
        Map<SoundName, SoundFamily> families = new HashMap<>();
        for (SoundName name : kit.soundNames()) {
            SoundFamily family = SoundFamily.of(kit.sound(name));
            families.put(name, family);
            Surface surface = kit.surfaceOf(name);
            switch (family) {
                case SNARE -> depth.put(name, 0.0);
                case DRUM -> depth.put(name, surface.diameter());
                case BASS_DRUM -> depth.put(name, 1000 + surface.diameter());
                case BAR -> depth.put(name, 2000.0 - kit.sound(name).key());
                case HI_HAT, RIDE, CRASH, BELL -> {}
            }
        }
        Set<SoundName> all = families.keySet();
        Set<SoundName> bass = with(families, Set.of(SoundFamily.BASS_DRUM));
        low = bass.isEmpty() ? lowest(kit, all) : bass;
        Set<SoundName> snare = with(families, Set.of(SoundFamily.SNARE));
        backBeat = snare.isEmpty() ? without(all, low) : snare;
        Set<SoundName> ride =
                with(families, Set.of(SoundFamily.HI_HAT, SoundFamily.RIDE, SoundFamily.BELL));
        pulse = ride.isEmpty() ? all : ride;
        pulseIsOnCymbals =
                with(families, Set.of(SoundFamily.HI_HAT, SoundFamily.RIDE)).containsAll(pulse);
        Set<SoundName> crash = with(families, Set.of(SoundFamily.CRASH));
        hasCrash = !crash.isEmpty();
        marks = hasCrash ? crash : low;
    }

    private static Set<SoundName> with(
            Map<SoundName, SoundFamily> families, Set<SoundFamily> wanted) {
        return families.keySet().stream()
                .filter(name -> wanted.contains(families.get(name)))
                .collect(Collectors.toSet());
    }

    private static Set<SoundName> without(Set<SoundName> all, Set<SoundName> some) {
        Set<SoundName> rest = new HashSet<>(all);
        rest.removeAll(some);
        return rest.isEmpty() ? all : rest;
    }

    private Set<SoundName> lowest(Kit kit, Set<SoundName> all) {
        List<SoundName> deep =
                kit.soundNames().stream()
                        .filter(depth::containsKey)
                        .sorted(Comparator.comparing(depth::get))
                        .toList();
        if (deep.isEmpty()) {
            return all;
        }
        String surface = deep.get(deep.size() - 1).surface();
        return all.stream().filter(s -> s.surface().equals(surface)).collect(Collectors.toSet());
    }

    boolean keepsPulse(SoundName sound) {
        return pulse.contains(sound);
    }

    /** Whether all that keeps the pulse are cymbals: no bells among them, and no stand-ins. */
    boolean pulseIsOnCymbals() {
        return pulseIsOnCymbals;
    }

    boolean isBackBeat(SoundName sound) {
        return backBeat.contains(sound);
    }

    boolean isLow(SoundName sound) {
        return low.contains(sound);
    }

    boolean marks(SoundName sound) {
        return marks.contains(sound);
    }

    /** Whether the kit has cymbals to mark with, rather than low sounds that stand in. */
    boolean hasCrash() {
        return hasCrash;
    }

    /** Whether the sound has a place between high and low. */
    boolean hasDepth(SoundName sound) {
        return depth.containsKey(sound);
    }

    /** Smaller is higher. */
    double depth(SoundName sound) {
        return depth.getOrDefault(sound, 0.0);
    }

    /** Surfaces with a place between high and low, the bass drum left out. */
    int drums() {
        return (int)
                depth.keySet().stream()
                        .filter(s -> !low.contains(s) || !hasCrash)
                        .map(SoundName::surface)
                        .distinct()
                        .count();
    }
}
