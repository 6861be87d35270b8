package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kitweft.band.Arrangement;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.band.ChordChart;
import org.kitweft.band.ClaveDirection;
import org.kitweft.groove.Groove;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.bank.TestBank;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.synth.NoteStream;
import org.kitweft.sound.synth.Render;

/**
 * The opening groove with a band in each style, each part rendered alone with our own bank at the
 * default mix: the drums lead, the bass stands beside them, punches and chords behind.
 */
class MixLevelsTest {
    private static final List<String> STYLES =
            List.of("rock", "funk", "swing", "bossa", "samba", "salsa", "ballad");
    private static final int BARS = 8;

    /** By how much each part lies below the drums, in LU: our own choice. */
    private static final Map<Part, Double> BELOW =
            Map.of(Part.CLICK, 3.0, Part.BASS, 2.0, Part.COMPING, 6.0, Part.PUNCHES, 4.0);

    private static final Map<Part, List<Double>> LOUDNESS = new EnumMap<>(Part.class);
    private static final List<Double> PEAKS = new ArrayList<>();

    private static double[][] rendered(Playable playable, Set<Part> parts) throws IOException {
        Set<Part> others = EnumSet.complementOf(EnumSet.copyOf(parts));
        PlaySettings settings =
                PlaySettings.DEFAULT
                        .withLoops(1)
                        .withTempo(new Tempo(100))
                        .withClick(true)
                        .withMix(Mix.DEFAULT.without(others));
        Bank bank = new Bank("built in", TestBank.loaded());
        try (NoteStream stream = NoteStream.open(bank)) {
            Render render = new Render(Timeline.of(playable, settings), stream);
            int frames = (int) render.frames();
            float[] samples = new float[2 * frames];
            render.read(samples, frames);
            double[][] channels = new double[2][frames];
            for (int i = 0; i < samples.length; i++) {
                channels[i % 2][i / 2] = samples[i];
            }
            return channels;
        }
    }

    private static Playable inStyle(String style) {
        Groove time = OpeningGroove.recipe().withBars(OptionalInt.of(BARS - 2)).weave();
        Recipe marks = OpeningGroove.recipe().withBars(OptionalInt.of(2));
        Groove punch = marks.with(Sticking.parse(">R---L-->R---->R-L")).weave();
        Phrase phrase =
                new Phrase(List.of(new Section(Role.TIME, time), new Section(Role.PUNCH, punch)));
        return Playable.of(
                phrase,
                new Arrangement(
                        ChordChart.parse(
                                "Dm7 | G7 | Cmaj7 | A7 | Dm7 G7 | Em7 A7 | Dm7 | G7", BARS),
                        BuiltInStyles.load(style),
                        ClaveDirection.values()[0],
                        1));
    }

    @BeforeAll
    static void measure() throws IOException {
        for (String style : STYLES) {
            Playable playable = inStyle(style);
            for (Part part : Part.values()) {
                double[][] alone = rendered(playable, Set.of(part));
                LOUDNESS.computeIfAbsent(part, any -> new ArrayList<>())
                        .add(IntegratedLoudness.of(NoteStream.RATE, alone));
            }
            double peak = 0;
            for (double[] channel : rendered(playable, EnumSet.allOf(Part.class))) {
                for (double sample : channel) {
                    peak = Math.max(peak, Math.abs(sample));
                }
            }
            PEAKS.add(peak);
        }
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    @Test
    void drumsLeadBassBesideThemChordsBehind() {
        double drums = median(LOUDNESS.get(Part.DRUMS));
        BELOW.forEach(
                (part, below) ->
                        assertThat(drums - median(LOUDNESS.get(part)))
                                .as("%s below the drums, median of all styles", part)
                                .isCloseTo(below, within(0.5)));
    }

    @Test
    void noStyleIsFarFromTheMedian() {
        LOUDNESS.values()
                .forEach(all -> assertThat(all).allMatch(l -> Math.abs(l - median(all)) < 3.5));
    }

    @Test
    void theFullMixDoesNotClip() {
        assertThat(PEAKS).allMatch(peak -> peak < 1);
    }
}
