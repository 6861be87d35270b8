package org.kitweft.explore.role;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.kitweft.explore.rhythm.MetricWeights;
import org.kitweft.explore.rhythm.Syncopation;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Dynamic;

/** Features of how a groove stands to its pulse and meter. */
final class PulseFeatures {
    private PulseFeatures() {}

    /** The surface of the pulse that strikes most eighths; half of them count for nothing. */
    static Optional<Finding> steadyEighths(Reading reading) {
        return steadiest(reading, reading.eighths(), hit -> reading.kit().keepsPulse(hit.sound()));
    }

    /** The surface that strikes most beats, whichever it is. */
    static Optional<Finding> steadyBeats(Reading reading) {
        return steadiest(reading, reading.beatInstants(), hit -> true);
    }

    private static Optional<Finding> steadiest(
            Reading reading, List<Long> instants, Predicate<Hit> wanted) {
        double best = 0;
        String on = "";
        for (String surface : reading.surfaces(wanted)) {
            long struck =
                    instants.stream()
                            .filter(
                                    at ->
                                            reading.at(at).stream()
                                                    .filter(wanted)
                                                    .anyMatch(
                                                            hit ->
                                                                    hit.sound()
                                                                            .surface()
                                                                            .equals(surface)))
                            .count();
            double value = Math.max(0, 2.0 * struck / instants.size() - 1);
            if (value > best) {
                best = value;
                on =
                        reading.groove()
                                .kit()
                                .surface(surface)
                                .map(PulseFeatures::named)
                                .orElse(surface);
            }
        }
        return Finding.of(best, on);
    }

    /** Within a sentence; the name of a pitch keeps its capital. */
    private static String named(Surface surface) {
        return surface.sounds().get(0).isPitched()
                ? surface.name()
                : surface.name().toLowerCase(Locale.ROOT);
    }

    /**
     * The even beats of a bar with an even number of them, else all but the first: those with a
     * back-beat sound, less half of the others that have one too. Ghosts do not count.
     */
    static Optional<Finding> backBeat(Reading reading) {
        int beats = reading.beats();
        if (beats < 2) {
            return Finding.none();
        }
        int wanted = 0;
        int struck = 0;
        int astray = 0;
        List<Long> instants = reading.beatInstants();
        for (int i = 0; i < instants.size(); i++) {
            int beat = i % beats;
            boolean back = beats % 2 == 0 ? beat % 2 == 1 : beat > 0;
            boolean has =
                    reading.at(instants.get(i)).stream()
                            .anyMatch(
                                    hit ->
                                            hit.dynamic() != Dynamic.GHOST
                                                    && reading.kit().isBackBeat(hit.sound()));
            wanted += back ? 1 : 0;
            struck += back && has ? 1 : 0;
            astray += !back && has ? 1 : 0;
        }
        double others = instants.size() - wanted;
        return Finding.of(
                (double) struck / wanted * (1 - 0.5 * (others == 0 ? 0 : astray / others)),
                beats == 4 ? "2 and 4" : "");
    }

    /** The bars that begin with a low sound. */
    static Optional<Finding> lowOnOne(Reading reading) {
        int low = 0;
        List<Long> instants = reading.beatInstants();
        for (int bar = 0; bar < reading.bars(); bar++) {
            low +=
                    reading.at(instants.get(bar * reading.beats())).stream()
                                    .anyMatch(hit -> reading.kit().isLow(hit.sound()))
                            ? 1
                            : 0;
        }
        return Finding.of((double) low / reading.bars());
    }

    /** How much each bar is like the one before; of one bar, how much its halves are alike. */
    static Optional<Finding> repeats(Reading reading) {
        long bar = reading.groove().grid().meter().barTicks();
        if (reading.bars() == 1) {
            return reading.beats() % 2 == 0
                    ? Finding.of(alike(reading.stretch(0, bar / 2), reading.stretch(bar / 2, bar)))
                    : Finding.none();
        }
        double sum = 0;
        for (int i = 1; i < reading.bars(); i++) {
            sum += alike(reading.stretch((i - 1) * bar, bar), reading.stretch(i * bar, bar));
        }
        return Finding.of(sum / (reading.bars() - 1));
    }

    private static double alike(Set<List<Object>> one, Set<List<Object>> other) {
        Set<List<Object>> all = new HashSet<>(one);
        all.addAll(other);
        Set<List<Object>> both = new HashSet<>(one);
        both.retainAll(other);
        return all.isEmpty() ? 0 : (double) both.size() / all.size();
    }

    /**
     * The index of Longuet-Higgins and Lee 1984 of what stands out: strong hits, or where there are
     * none, low sounds. One point a beat makes one half; our own scale, no source.
     */
    static Optional<Finding> syncopated(Reading reading) {
        Predicate<Hit> strong =
                reading.hits().stream().anyMatch(reading::isStrong)
                        ? reading::isStrong
                        : hit -> reading.kit().isLow(hit.sound());
        MetricWeights meter = MetricWeights.of(reading.groove().grid());
        double sum = 0;
        for (int bar = 0; bar < reading.bars(); bar++) {
            double index = Syncopation.longuetHigginsLee(reading.rhythm(bar, strong), meter);
            sum += index / (index + reading.beats());
        }
        return Finding.of(sum / reading.bars());
    }

    /** The strong hits that lie on no beat. */
    static Optional<Finding> accentsOffBeat(Reading reading) {
        List<Hit> strong = reading.hits().stream().filter(reading::isStrong).toList();
        long off = strong.stream().filter(hit -> !reading.isOnBeat(hit)).count();
        return Finding.of(strong.isEmpty() ? 0 : (double) off / strong.size());
    }
}
