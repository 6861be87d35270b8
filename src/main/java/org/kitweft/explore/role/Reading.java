package org.kitweft.explore.role;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.kitweft.explore.rhythm.Rhythm;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;

/** A groove as features look at it: by instants as written, swing left out. */
final class Reading {
    private static final long EIGHTH = Ticks.PER_QUARTER / 2;

    private final Groove groove;
    private final KitTraits kit;
    private final NavigableMap<Long, List<Hit>> instants = new TreeMap<>();

    /**
     * Reads a groove.
     *
     * @param kit of the groove's kit
     */
    Reading(Groove groove, KitTraits kit) {
        this.groove = groove;
        this.kit = kit;
        for (Hit hit : groove.hits()) {
            instants.computeIfAbsent(hit.written(), none -> new ArrayList<>()).add(hit);
        }
    }

    KitTraits kit() {
        return kit;
    }

    int beats() {
        return groove.grid().meter().beats();
    }

    int bars() {
        return groove.bars();
    }

    List<Hit> hits() {
        return groove.hits();
    }

    NavigableMap<Long, List<Hit>> instants() {
        return instants;
    }

    boolean isOnBeat(Hit hit) {
        return hit.written() % groove.grid().meter().beatTicks() == 0;
    }

    /** Accents, and what marks by itself. */
    boolean isStrong(Hit hit) {
        return hit.dynamic() == Dynamic.ACCENT
                || (kit.hasCrash() && kit.marks(hit.sound()) && hit.dynamic() != Dynamic.GHOST);
    }

    /** The hits at an instant, none if nothing is struck. */
    List<Hit> at(long written) {
        return instants.getOrDefault(written, List.of());
    }

    /** The instants of all eighths. */
    List<Long> eighths() {
        return every(EIGHTH);
    }

    /** The instants of all beats. */
    List<Long> beatInstants() {
        return every(groove.grid().meter().beatTicks());
    }

    private List<Long> every(long stride) {
        List<Long> all = new ArrayList<>();
        for (long written = 0; written < groove.ticks(); written += stride) {
            all.add(written);
        }
        return all;
    }

    /** The steps of one bar, from 0, that some wanted hit lies on exactly. */
    Rhythm rhythm(int bar, Predicate<Hit> wanted) {
        long step = groove.grid().stepTicks();
        long start = bar * groove.grid().meter().barTicks();
        TreeSet<Integer> struck = new TreeSet<>();
        for (Hit hit : groove.hits()) {
            long inBar = hit.written() - start;
            if (inBar >= 0
                    && inBar < groove.grid().meter().barTicks()
                    && inBar % step == 0
                    && wanted.test(hit)) {
                struck.add(Math.toIntExact(inBar / step));
            }
        }
        return new Rhythm(groove.grid().stepsPerBar(), struck);
    }

    Groove groove() {
        return groove;
    }

    /** What is struck when in a stretch of time, from its start. */
    Set<List<Object>> stretch(long from, long ticks) {
        Set<List<Object>> struck = new HashSet<>();
        for (Hit hit : groove.hits()) {
            if (hit.written() >= from && hit.written() < from + ticks) {
                struck.add(List.of(hit.written() - from, hit.sound()));
            }
        }
        return struck;
    }

    /** The surfaces struck by wanted hits, as ids. */
    Set<String> surfaces(Predicate<Hit> wanted) {
        return groove.hits().stream()
                .filter(wanted)
                .map(Hit::sound)
                .map(SoundName::surface)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
