package org.kitweft.explore.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.kit.SoundName;

/** All ways to put one stroke on one of its sounds, numbered from 0. Immutable. */
final class Changes {
    private final Possibilities possibilities;
    private final List<List<SoundName>> options;

    /** For each change the stroke, and the option it puts it on. */
    private final List<int[]> all = new ArrayList<>();

    Changes(Possibilities possibilities) {
        this.possibilities = possibilities;
        this.options = possibilities.options();
        for (int stroke = 0; stroke < options.size(); stroke++) {
            for (int option = 0; option < options.get(stroke).size(); option++) {
                all.add(new int[] {stroke, option});
            }
        }
    }

    /** The numbers of all changes in a random order. */
    int[] order(SplittableRandom random) {
        int[] order = new int[all.size()];
        for (int i = 0; i < order.length; i++) {
            int j = random.nextInt(i + 1);
            order[i] = order[j];
            order[j] = i;
        }
        return order;
    }

    /** What comes of a change; empty if it changes nothing or breaks a rule. */
    Optional<List<SoundName>> made(List<SoundName> sounds, int change) {
        int stroke = all.get(change)[0];
        SoundName sound = options.get(stroke).get(all.get(change)[1]);
        if (sound.equals(sounds.get(stroke))) {
            return Optional.empty();
        }
        List<SoundName> changed = new ArrayList<>(sounds);
        changed.set(stroke, sound);
        return possibilities.fault(changed).isEmpty()
                ? Optional.of(List.copyOf(changed))
                : Optional.empty();
    }

    /** About a quarter of the strokes moved at random, one after the other, as the rules allow. */
    List<SoundName> shaken(List<SoundName> sounds, SplittableRandom random) {
        List<SoundName> now = sounds;
        int times = 1 + sounds.size() / 4;
        for (int i = 0; i < times; i++) {
            now = made(now, random.nextInt(all.size())).orElse(now);
        }
        return now;
    }
}
