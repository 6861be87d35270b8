package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Meter;
import org.kitweft.kit.Kit;

/**
 * Shares the hits of a bar out among voices: hands in the first, stems up, feet in the second,
 * stems down.
 *
 * <p>A layer whose division would clash with what its voice plays (triplets against sixteenths)
 * goes to the other voice if it fits there; the higher of two figures of the hands keeps the stems
 * that go up. If it fits in neither, both are written in the finest division they have in common,
 * or, where that is too fine to read, the layer gets a voice of its own: the third, fifth … with
 * stems up, the fourth, sixth … with stems down.
 */
final class Parts {
    /** Above this, a division that nobody plays by himself is hard to read. Our own choice. */
    private static final int EASY_UNITS = 8;

    /** Above this it is not readable at all. Our own choice. */
    private static final int MOST_UNITS = 24;

    private static final int FIRST = 1;
    private static final int SECOND = 2;

    private final Groove groove;
    private final Meter meter;
    private final boolean oneVoice;
    private final SortedMap<Integer, List<Hit>> voices = new TreeMap<>();

    private Parts(Groove groove, boolean oneVoice) {
        this.groove = groove;
        this.meter = groove.grid().meter();
        this.oneVoice = oneVoice;
    }

    /** Hits of one origin, which always fit each other. */
    private record Part(boolean feet, List<Hit> hits) {}

    /** The hits of each voice that has some, by the voice's number. */
    static SortedMap<Integer, List<Hit>> voices(
            Groove groove, List<Hit> hitsInBar, boolean oneVoice) {
        Parts parts = new Parts(groove, oneVoice);
        for (Part part : parts.parts(hitsInBar)) {
            if (!part.hits.isEmpty()) {
                parts.share(part);
            }
        }
        parts.voices.values().removeIf(List::isEmpty);
        parts.voices.values().forEach(hits -> hits.sort(Hit.IN_TIME));
        return parts.voices;
    }

    private void share(Part part) {
        boolean low = part.feet && !oneVoice;
        List<Hit> own = voice(low ? SECOND : FIRST);
        List<Hit> other = voice(low ? FIRST : SECOND);
        if (fits(own, part.hits, EASY_UNITS)) {
            own.addAll(part.hits);
        } else if (!low && height(part.hits) > height(own) && fits(other, own, EASY_UNITS)) {
            other.addAll(own);
            own.clear();
            own.addAll(part.hits);
        } else if (fits(other, part.hits, EASY_UNITS)) {
            other.addAll(part.hits);
        } else if (fits(own, part.hits, MOST_UNITS)) {
            own.addAll(part.hits);
        } else {
            int number = low ? SECOND + 2 : FIRST + 2;
            while (!fits(voice(number), part.hits, EASY_UNITS)) {
                number += 2;
            }
            voice(number).addAll(part.hits);
        }
    }

    private List<Hit> voice(int number) {
        return voices.computeIfAbsent(number, any -> new ArrayList<>());
    }

    /** Strokes before layers, so that layers give way. */
    private List<Part> parts(List<Hit> hitsInBar) {
        List<Part> parts = new ArrayList<>();
        for (boolean feet : new boolean[] {false, true}) {
            parts.add(
                    new Part(
                            feet,
                            hitsInBar.stream()
                                    .filter(h -> h.source() != HitSource.LAYER)
                                    .filter(h -> h.limb().isHand() != feet)
                                    .toList()));
        }
        Set<Hit> taken = new HashSet<>();
        for (Layer layer : groove.voicing().layers()) {
            parts.add(
                    new Part(
                            !layer.limb().isHand(),
                            hitsInBar.stream()
                                    .filter(h -> h.source() == HitSource.LAYER)
                                    .filter(h -> isOf(layer, h) && taken.add(h))
                                    .toList()));
        }
        return parts;
    }

    /** Whether a layer strikes where a hit is; hits of two layers that meet belong to either. */
    private boolean isOf(Layer layer, Hit hit) {
        long step = meter.beatTicks() / layer.stepsPerBeat();
        int steps = layer.figure().steps().size();
        return hit.limb() == layer.limb()
                && hit.sound().equals(layer.sound())
                && hit.written() % step == 0
                && layer.figure().steps().get((int) (hit.written() / step % steps)).isPresent();
    }

    private double height(List<Hit> hits) {
        Kit kit = groove.kit();
        return hits.stream()
                .filter(hit -> kit.has(hit.sound()))
                .mapToInt(hit -> kit.sound(hit.sound()).place().diatonic())
                .average()
                .orElse(0);
    }

    private boolean fits(List<Hit> there, List<Hit> coming, int mostUnits) {
        for (long beat = 0; beat < meter.beats(); beat++) {
            int before = units(there, List.of(), beat);
            int alone = units(coming, List.of(), beat);
            int together = units(there, coming, beat);
            if (together > mostUnits && together != before && together != alone) {
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
