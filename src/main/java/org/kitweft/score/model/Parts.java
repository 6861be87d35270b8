package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Meter;

/**
 * Shares the hits of a bar out among two voices: hands in the first, feet in the second.
 *
 * <p>A layer whose division would clash with what its voice plays (triplets against sixteenths)
 * goes to the other voice if it fits there; if it fits in neither, it stays, and the beats where
 * both meet are written in the finest division they have in common.
 */
final class Parts {
    /** Above this, a division that nobody plays by himself is hard to read. Our own choice. */
    private static final int MOST_COMMON_UNITS = 8;

    private final Meter meter;
    private final boolean oneVoice;

    Parts(Meter meter, boolean oneVoice) {
        this.meter = meter;
        this.oneVoice = oneVoice;
    }

    /** Hits of one origin, which always fit each other. */
    private record Part(boolean feet, List<Hit> hits) {}

    /** The hits of the first and of the second voice; either may be empty. */
    List<List<Hit>> voices(Groove groove, List<Hit> hitsInBar) {
        List<Hit> first = new ArrayList<>();
        List<Hit> second = new ArrayList<>();
        if (oneVoice) {
            return List.of(hitsInBar, second);
        }
        for (Part part : parts(groove, hitsInBar)) {
            List<Hit> own = part.feet ? second : first;
            List<Hit> other = part.feet ? first : second;
            if (fits(own, part.hits) || !fits(other, part.hits)) {
                own.addAll(part.hits);
            } else {
                other.addAll(part.hits);
            }
        }
        first.sort(Hit.IN_TIME);
        second.sort(Hit.IN_TIME);
        return List.of(first, second);
    }

    /** Strokes before layers, so that layers give way. */
    private static List<Part> parts(Groove groove, List<Hit> hitsInBar) {
        Map<Object, Part> parts = new LinkedHashMap<>();
        for (boolean feet : new boolean[] {false, true}) {
            for (Hit hit : hitsInBar) {
                if (hit.source() != HitSource.LAYER && hit.limb().isHand() != feet) {
                    parts.computeIfAbsent(feet, any -> new Part(feet, list())).hits.add(hit);
                }
            }
        }
        for (Layer layer : groove.voicing().layers()) {
            for (Hit hit : hitsInBar) {
                if (hit.source() == HitSource.LAYER
                        && hit.limb() == layer.limb()
                        && hit.sound().equals(layer.sound())) {
                    List<Hit> hits =
                            parts.computeIfAbsent(
                                            List.of(hit.limb(), hit.sound()),
                                            any -> new Part(!hit.limb().isHand(), list()))
                                    .hits;
                    if (!hits.contains(hit)) {
                        hits.add(hit);
                    }
                }
            }
        }
        return List.copyOf(parts.values());
    }

    private static List<Hit> list() {
        return new ArrayList<>();
    }

    private boolean fits(List<Hit> there, List<Hit> coming) {
        for (long beat = 0; beat < meter.beats(); beat++) {
            int before = units(there, List.of(), beat);
            int alone = units(coming, List.of(), beat);
            int together = units(there, coming, beat);
            if (together > MOST_COMMON_UNITS && together != before && together != alone) {
                return false;
            }
        }
        return true;
    }

    private int units(List<Hit> some, List<Hit> more, long beat) {
        SortedSet<Long> ticks = new TreeSet<>();
        for (List<Hit> hits : List.of(some, more)) {
            for (Hit hit : hits) {
                long inBar = hit.written() % meter.barTicks();
                if (inBar / meter.beatTicks() == beat) {
                    ticks.add(inBar % meter.beatTicks());
                }
            }
        }
        return Division.fewestUnits(meter.beatTicks(), ticks);
    }
}
