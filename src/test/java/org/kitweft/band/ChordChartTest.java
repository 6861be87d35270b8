package org.kitweft.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.pattern.TextFormatException;

class ChordChartTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            textBlock =
                    """
                    Dm7 G7 | Cmaj7 %,             Dm7 G7 | Cmaj7 /
                    Dm7 G7 | %,                   Dm7 G7 | %
                    | C | F | G |,                C | F | G
                    C || F,                       C | F
                    C / / G,                      C / / G
                    C % % G,                      C / / G
                    C | N.C. | NC n.c.,           C | N.C. | N.C. /
                    C|F|C,                        C | F | C
                    C | / G,                      C | C G
                    Cm7/G F7(b9#11) | Bbmaj7,     Cm7/G F7(b9#11) | Bbmaj7
                    """)
    void readsWhatTheTradeWrites(String typed, String text) {
        ChordChart chart = ChordChart.parse(typed);
        assertThat(chart.text()).isEqualTo(text);
        assertThat(ChordChart.parse(chart.text())).isEqualTo(chart);
    }

    @Test
    void aBarIsSplitEvenlyByItsChords() {
        ChordChart chart = ChordChart.parse("Dm7 G7 | Cmaj7 % N.C.");
        assertThat(chart.bars().get(0)).hasSize(2);
        assertThat(chart.bars().get(1))
                .containsExactly(
                        Optional.of(Chord.parse("Cmaj7")),
                        Optional.of(Chord.parse("Cmaj7")),
                        Optional.empty());
    }

    @ParameterizedTest(name = "{0}: at {1}")
    @CsvSource(
            quoteCharacter = '"',
            textBlock =
                    """
                    "",                0, "a chord, N.C. or %"
                    "|",               1, "a chord, N.C. or %"
                    "C | | G",         4, "a chord, N.C. or %"
                    "Dm7 | Hm7 | C",   6, a chord root A to G
                    "Dm7 | Gm8 | C",   8, "5, 6, 69, 7, 9, 11 or 13"
                    "% | C",           0, a bar before it to repeat
                    "/ C",             0, a chord before it to go on with
                    "C C C C C C C C C C C C C C C C C", 32, at most 16 chords in a bar
                    """)
    void aFaultIsPointedAtWhereItWasTyped(String typed, int index, String expected) {
        TextFormatException fault =
                catchThrowableOfType(TextFormatException.class, () -> ChordChart.parse(typed));
        assertThat(fault).isNotNull();
        assertThat(fault.expected()).startsWith(expected);
        assertThat(fault.index()).isEqualTo(index);
        assertThat(fault).hasMessageStartingWith("chart, character %d: ", index + 1);
    }

    @Test
    void aChartLongerThanThePhraseIsPointedAtItsFirstBarTooMany() {
        TextFormatException fault =
                catchThrowableOfType(
                        TextFormatException.class, () -> ChordChart.parse("C | F | G7 | C", 2));
        assertThat(fault.index()).isEqualTo(8);
        assertThat(fault)
                .hasMessage(
                        "chart, character 9: found 'G', expected at most 2 bars, as many as the"
                                + " phrase has");
    }

    @Test
    void transposedThereAndBackItHasTheSameTones() {
        ChordChart chart = ChordChart.parse("Dm7 G7b9 | Cmaj7 N.C. | F#m7b5/C B7alt | Em(maj7)");
        for (int by = -12; by <= 12; by++) {
            assertThat(classes(chart.transposed(by).transposed(-by))).isEqualTo(classes(chart));
        }
    }

    @Test
    void anyTypingGivesAChartOrAFaultInsideTheText() {
        Random random = new Random(11);
        String[] pieces = {
            "C", "F#", "Bb", "m", "7", "maj7", "dim", "b5", " ", "|", "%", "/", "(", ")", "N.C.",
            "sus4", "x", "9"
        };
        int charts = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder typed = new StringBuilder();
            for (int j = random.nextInt(9); j >= 0; j--) {
                typed.append(pieces[random.nextInt(pieces.length)]);
            }
            try {
                ChordChart chart = ChordChart.parse(typed.toString());
                assertThat(ChordChart.parse(chart.text())).isEqualTo(chart);
                charts++;
            } catch (TextFormatException fault) {
                assertThat(fault.index()).isBetween(0, typed.length());
            }
        }
        assertThat(charts).isGreaterThan(100);
    }

    private static List<List<Integer>> classes(ChordChart chart) {
        return chart.bars().stream()
                .flatMap(List::stream)
                .map(
                        chord ->
                                chord.stream()
                                        .flatMap(c -> c.tones().stream())
                                        .map(PitchName::pitchClass)
                                        .toList())
                .toList();
    }
}
