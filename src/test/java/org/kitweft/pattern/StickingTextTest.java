package org.kitweft.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StickingTextTest {

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            textBlock =
                    """
                    RLRR LRLL,          RLRR LRLL
                    rlrr lrll,          RLRR LRLL
                    R|L|R|R,            RLRR
                    [RLRR LRLL]*2,      RLRR LRLL RLRR LRLL
                    [[RL]*2 K]*2,       RLRL KRLR LK
                    (R L) R,            (R) (L) R
                    >lR L L,            >lR L L
                    llR (rrL) Rz >Lz,   llR (rrL) Rz >Lz
                    K H B -,            KHB-
                    k h b -,            KHB-
                    rlr lrl,            RLR LRL
                    """)
    void readsWhatTheTradeWrites(String text, String written) {
        assertThat(Sticking.parse(text).text()).isEqualTo(written);
    }

    @Test
    void anyStickingReadsBackFromItsText() {
        RandomStickings.of(5, 2000, 40)
                .forEach(
                        sticking ->
                                assertThat(Sticking.parse(sticking.text())).isEqualTo(sticking));
    }

    @Test
    void anyGroupingReadsBack() {
        RandomStickings.of(6, 200, 30)
                .forEach(
                        sticking -> {
                            for (int group = 1; group <= 9; group++) {
                                assertThat(Sticking.parse(sticking.text(group)))
                                        .isEqualTo(sticking);
                            }
                        });
    }

    @Test
    void smallLettersAloneArePlainStrokesAndBesideCapitalsGraceNotes() {
        assertThat(Sticking.parse("lr").size()).isEqualTo(2);
        assertThat(Sticking.parse("lR").size()).isEqualTo(1);
    }

    /** Position of the fault, from 0, and what was expected there. */
    @ParameterizedTest(name = "{0}: at {1}")
    @CsvSource(
            quoteCharacter = '"',
            textBlock =
                    """
                    "",           0, "R, L, K, H, B"
                    "  ",         2, "R, L, K, H, B"
                    RLXR,         2, "R, L, K, H, B"
                    R>-,          2, a letter after the accent
                    R>,           2, a letter after the accent
                    R)L,          1, "R, L, K, H, B"
                    R(L,          1, "a ')' for this ghost stroke"
                    R(),          2, a letter between the parentheses
                    R(>L),        2, a letter of a ghost stroke
                    R(-),         2, a letter of a ghost stroke
                    R],           1, "a '[' before this ']'"
                    [RL,          0, "a ']' and a number of times"
                    "[]*2 R",     1, a stroke in the repeat
                    [RL],         4, "'*' and a number of times"
                    [RL]*,        5, a number of times from 1 to 512
                    [RL]*0,       5, a number of times from 1 to 512
                    [RL]*5000,    5, a number of times from 1 to 512
                    RlK,          1, grace notes before R or L only
                    Rrlr,         4, "R, L, K, H, B"
                    RrR,          1, "'l', the other hand's grace note"
                    lllR,         2, one grace note (flam) or two (drag)
                    lRz,          2, "a flam, a drag or a buzz"
                    R[RL]*512,    1, at most 512 strokes
                    """)
    void namesThePlaceAndWhatWasExpected(String text, int index, String expected) {
        TextFormatException fault =
                catchThrowableOfType(TextFormatException.class, () -> Sticking.parse(text));
        assertThat(fault).isNotNull();
        assertThat(fault.text()).isEqualTo(text);
        assertThat(fault.expected()).startsWith(expected);
        assertThat(fault.index()).isEqualTo(index);
        assertThat(fault).hasMessageStartingWith("sticking, character %d: ", index + 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"RLRR LRQL", "R\tQ", "é"})
    void theCaretStandsUnderTheFault(String text) {
        TextFormatException fault =
                catchThrowableOfType(TextFormatException.class, () -> Sticking.parse(text));
        List<String> lines = fault.excerpt().lines().toList();
        assertThat(lines.get(0).charAt(lines.get(1).indexOf('^')))
                .isEqualTo(text.charAt(fault.index()));
    }

    @Test
    void aLongTextIsCutAroundTheFaultButKeptWhole() {
        String text = "RL".repeat(100) + "x" + "RL".repeat(100);
        TextFormatException fault =
                catchThrowableOfType(TextFormatException.class, () -> Sticking.parse(text));
        List<String> lines = fault.excerpt().lines().toList();
        assertThat(lines.get(0)).hasSizeLessThan(80).startsWith("…").endsWith("…");
        assertThat(lines.get(0).charAt(lines.get(1).indexOf('^'))).isEqualTo('x');
        assertThat(fault.text()).isEqualTo(text);
    }

    @Test
    void hasAtMostFiveHundredAndTwelveStrokes() {
        assertThat(Sticking.parse("[RL]*256").size()).isEqualTo(512);
        assertThat(new Sticking(Collections.nCopies(512, Stroke.REST)).size()).isEqualTo(512);
    }

    /** Whatever is typed: a sticking, or a fault inside the text. Nothing else. */
    @Test
    void anyTypingGivesAStickingOrAFaultInsideTheText() {
        Random random = new Random(7);
        String keys = "RLKHBrlz>()[]*-| 27x";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder typed = new StringBuilder();
            for (int j = random.nextInt(12); j >= 0; j--) {
                typed.append(keys.charAt(random.nextInt(keys.length())));
            }
            String text = typed.toString();
            try {
                Sticking read = Sticking.parse(text);
                assertThat(Sticking.parse(read.text())).isEqualTo(read);
            } catch (TextFormatException fault) {
                assertThat(fault.index()).isBetween(0, text.length());
            }
        }
    }
}
