package org.kitweft.explore.difficulty;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.Layer;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/**
 * How hard a groove is, burden by burden, in thousandths of a point for each bar: whole numbers, so
 * that comparing is exact. A point is that of {@link Effort}, a millisecond of travel between
 * surfaces by the reach model; other burdens have prices in it, our own choice, no source. {@link
 * #UNIT} says so to people.
 *
 * <p>Read once from start to end. Hits between the grid's steps, as a layer with other steps has
 * them, count as independence and limbs, not as moves. Grace notes have a fixed price.
 *
 * @param thousandths one entry for each {@link Burden}, none below 0
 */
public record Difficulty(Map<Burden, Long> thousandths) implements Comparable<Difficulty> {
    /** What a user reads beside the figures. */
    public static final String UNIT =
            "Points a bar: milliseconds of way between surfaces, estimated from published tapping"
                    + " data; crossing, repeating, striking together and the like count as so many."
                    + " An order, not a verdict on a person.";

    private static final int LIMB = 20;
    private static final int LAYER_ALONE = 10;
    private static final int LAYER_ACROSS_BARS = 40;
    private static final int LAYER_ACROSS_STEPS = 80;
    private static final int CHANGE_OF_DYNAMIC = 6;

    public Difficulty {
        Map<Burden, Long> copy = new EnumMap<>(Burden.class);
        copy.putAll(thousandths);
        for (Burden burden : Burden.values()) {
            if (copy.computeIfAbsent(burden, none -> 0L) < 0) {
                throw new IllegalArgumentException(
                        "%s: a burden is 0 or more, not %d"
                                .formatted(burden.words(), copy.get(burden)));
            }
        }
        thousandths = Collections.unmodifiableMap(copy);
    }

    /** The difficulty of a groove. */
    public static Difficulty of(Groove groove) {
        Tally tally = new Tally(groove);
        tally.countSteps();
        tally.countLayers();
        tally.countStrokes();
        return new Difficulty(tally.perBar());
    }

    /** Points a bar, all burdens together. */
    public double points() {
        return total() / 1000.0;
    }

    /** Thousandths of a point a bar, all burdens together. */
    public long total() {
        return thousandths.values().stream().mapToLong(Long::longValue).sum();
    }

    /** The burdens that count, the heaviest first. */
    public List<Burden> reasons() {
        return thousandths.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .sorted(
                        Map.Entry.<Burden, Long>comparingByValue(Comparator.reverseOrder())
                                .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
    }

    @Override
    public int compareTo(Difficulty other) {
        return Long.compare(total(), other.total());
    }

    private static final class Tally {
        private final Groove groove;
        private final Map<Burden, Long> points = new EnumMap<>(Burden.class);

        Tally(Groove groove) {
            this.groove = groove;
        }

        private void add(Burden burden, long more) {
            points.merge(burden, more, Long::sum);
        }

        void countSteps() {
            Effort effort = new Effort(groove.kit());
            long stepTicks = groove.grid().stepTicks();
            long[] strikes =
                    new long[Math.multiplyExact(groove.bars(), groove.grid().stepsPerBar())];
            for (Hit hit : groove.hits()) {
                if (hit.written() % stepTicks == 0) {
                    int step = Math.toIntExact(hit.written() / stepTicks);
                    strikes[step] = effort.with(strikes[step], hit.limb(), hit.sound());
                }
            }
            long stance = Effort.START;
            for (long struck : strikes) {
                add(Burden.TRAVEL, effort.travel(stance, struck));
                add(Burden.RUNS, effort.runs(stance, struck));
                add(Burden.CROSSINGS, effort.crossing(stance, struck));
                add(Burden.TOGETHER, effort.together(struck));
                stance = effort.after(stance, struck);
            }
        }

        void countLayers() {
            Map<Long, Integer> hitsAt = new HashMap<>();
            groove.hits().forEach(hit -> hitsAt.merge(hit.written(), 1, Integer::sum));
            for (Hit hit : groove.hits()) {
                if (hit.source() == HitSource.LAYER && hitsAt.get(hit.written()) == 1) {
                    add(Burden.INDEPENDENCE, LAYER_ALONE);
                }
            }
            int perBeat = groove.grid().stepsPerBeat();
            for (Layer layer : groove.voicing().layers()) {
                int own = layer.stepsPerBeat();
                if (own % perBeat != 0 && perBeat % own != 0) {
                    add(Burden.INDEPENDENCE, (long) LAYER_ACROSS_STEPS * groove.bars());
                }
                int barSteps = groove.grid().meter().beats() * own;
                if (barSteps % layer.figure().steps().size() != 0) {
                    add(Burden.INDEPENDENCE, (long) LAYER_ACROSS_BARS * groove.bars());
                }
            }
        }

        void countStrokes() {
            Set<Limb> limbs = EnumSet.noneOf(Limb.class);
            Map<Limb, Dynamic> last = new EnumMap<>(Limb.class);
            for (Hit hit : groove.hits()) {
                limbs.add(hit.limb());
                Dynamic before = last.put(hit.limb(), hit.dynamic());
                if (before != null) {
                    int levels = Math.abs(before.ordinal() - hit.dynamic().ordinal());
                    add(Burden.DYNAMICS, (long) levels * CHANGE_OF_DYNAMIC);
                }
                add(Burden.ORNAMENTS, price(hit.ornament()));
            }
            add(Burden.LIMBS, (long) LIMB * Math.max(0, limbs.size() - 1) * groove.bars());
        }

        private static int price(Ornament ornament) {
            return switch (ornament) {
                case NONE -> 0;
                case FLAM -> 15;
                case DRAG -> 25;
                case BUZZ -> 10;
            };
        }

        Map<Burden, Long> perBar() {
            Map<Burden, Long> perBar = new EnumMap<>(Burden.class);
            points.forEach(
                    (burden, sum) -> perBar.put(burden, Math.round(1000.0 * sum / groove.bars())));
            return perBar;
        }
    }
}
