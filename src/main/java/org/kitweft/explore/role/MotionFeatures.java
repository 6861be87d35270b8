package org.kitweft.explore.role;

import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;

/** Features of where a groove goes: round the kit, toward its end, to its marks. */
final class MotionFeatures {
    /** A fill rarely goes over more drums than these; common practice, no source. */
    private static final int DRUMS_OF_A_FILL = 4;

    /** Moves that make a direction. */
    private static final double FEW_MOVES = 3;

    private MotionFeatures() {}

    /** Moves from higher to lower drums, less those upward, layers left out. */
    static Optional<Finding> travelsDown(Reading reading) {
        List<Hit> drums =
                reading.hits().stream()
                        .filter(hit -> hit.source() != HitSource.LAYER && isDrum(hit, reading))
                        .toList();
        int down = 0;
        int up = 0;
        for (int i = 1; i < drums.size(); i++) {
            double from = reading.kit().depth(drums.get(i - 1).sound());
            double to = reading.kit().depth(drums.get(i).sound());
            boolean atOnce = drums.get(i).written() == drums.get(i - 1).written();
            down += !atOnce && to > from ? 1 : 0;
            up += !atOnce && to < from ? 1 : 0;
        }
        double moves = down + up;
        return Finding.of(
                moves == 0 ? 0 : Math.max(0, (down - up) / moves) * Math.min(1, moves / FEW_MOVES));
    }

    /** How many different drums are struck, of those a fill goes over. */
    static Optional<Finding> roundTheKit(Reading reading) {
        int most = Math.min(DRUMS_OF_A_FILL, reading.kit().drums());
        if (most < 2) {
            return Finding.none();
        }
        int struck = reading.surfaces(hit -> isDrum(hit, reading)).size();
        double value = Math.max(0, Math.min(1, (struck - 1.0) / (most - 1)));
        return Finding.of(value, struck + " surfaces");
    }

    private static boolean isDrum(Hit hit, Reading reading) {
        KitTraits kit = reading.kit();
        return kit.hasDepth(hit.sound()) && !(kit.hasCrash() && kit.isLow(hit.sound()));
    }

    /** The steps where something is struck. */
    static Optional<Finding> dense(Reading reading) {
        return Finding.of(struckShare(reading));
    }

    /** The steps where nothing is struck. */
    static Optional<Finding> space(Reading reading) {
        return Finding.of(1 - struckShare(reading));
    }

    private static double struckShare(Reading reading) {
        double struck = 0;
        for (int bar = 0; bar < reading.bars(); bar++) {
            struck += reading.rhythm(bar, hit -> true).struck().size();
        }
        return struck / (reading.bars() * reading.groove().grid().stepsPerBar());
    }

    /** How much louder and denser the second half is, by velocities; twice as much makes 2/3. */
    static Optional<Finding> grows(Reading reading) {
        double first = 0;
        double second = 0;
        for (Hit hit : reading.hits()) {
            if (hit.written() < reading.groove().ticks() / 2) {
                first += hit.velocity();
            } else {
                second += hit.velocity();
            }
        }
        double all = first + second;
        return Finding.of(all == 0 ? 0 : Math.max(0, Math.min(1, 2 * (second - first) / all)));
    }

    /**
     * The last instant has a mark, with a low sound best; the first instant counts a little less,
     * for the end may come round to it. Without crash cymbals a low sound that is accented or
     * struck with another counts half.
     */
    static Optional<Finding> endsOnMark(Reading reading) {
        double last = mark(reading.instants().lastEntry().getValue(), reading);
        double first = mark(reading.at(0), reading);
        return Finding.of(Math.max(last, 0.6 * first));
    }

    private static double mark(List<Hit> hits, Reading reading) {
        KitTraits kit = reading.kit();
        boolean marks = hits.stream().anyMatch(hit -> kit.marks(hit.sound()));
        boolean low = hits.stream().anyMatch(hit -> kit.isLow(hit.sound()));
        if (kit.hasCrash()) {
            return marks && low ? 1 : marks ? 0.5 : 0;
        }
        return low && (hits.size() > 1 || hits.stream().anyMatch(reading::isStrong)) ? 0.5 : 0;
    }

    /** The marks that have a low sound with them. */
    static Optional<Finding> marksWithLow(Reading reading) {
        KitTraits kit = reading.kit();
        int marks = 0;
        int with = 0;
        for (List<Hit> hits : reading.instants().values()) {
            boolean mark = hits.stream().anyMatch(hit -> kit.marks(hit.sound()));
            marks += mark ? 1 : 0;
            with += mark && mark(hits, reading) >= (kit.hasCrash() ? 1 : 0.5) ? 1 : 0;
        }
        return Finding.of(marks == 0 ? 0 : (double) with / marks);
    }

    /** The instants where several limbs strike. */
    static Optional<Finding> together(Reading reading) {
        long several =
                reading.instants().values().stream()
                        .filter(hits -> hits.stream().map(Hit::limb).distinct().count() > 1)
                        .count();
        return Finding.of((double) several / reading.instants().size());
    }

    /** The strong hits among all. */
    static Optional<Finding> strong(Reading reading) {
        return Finding.of(
                (double) reading.hits().stream().filter(reading::isStrong).count()
                        / reading.hits().size());
    }
}
