package org.kitweft.groove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.pattern.TextFormatException;

class FigureTest {

    @ParameterizedTest
    @ValueSource(strings = {"x", "- x - x", ">x (x) x -", "x - - x - - x - - - x - x - - -"})
    void readsBackFromItsText(String text) {
        assertThat(Figure.parse(text).text()).isEqualTo(text);
        assertThat(Figure.parse(text.replace(" ", "|"))).isEqualTo(Figure.parse(text));
    }

    @ParameterizedTest(name = "{0}: at {1}")
    @CsvSource(
            quoteCharacter = '"',
            textBlock =
                    """
                    "",      0, at least one stroke 'x'
                    - -,     3, at least one stroke 'x'
                    x R,     2, "x, >x, (x) or a rest '-'"
                    x >-,    2, "x, >x, (x) or a rest '-'"
                    (x,      0, "x, >x, (x) or a rest '-'"
                    """)
    void namesThePlaceAndWhatWasExpected(String text, int index, String expected) {
        TextFormatException fault =
                catchThrowableOfType(TextFormatException.class, () -> Figure.parse(text));
        assertThat(fault.index()).isEqualTo(index);
        assertThat(fault.expected()).isEqualTo(expected);
        assertThat(fault).hasMessageStartingWith("layer, character %d: ", index + 1);
    }

    @ParameterizedTest
    @ValueSource(ints = {513, 600})
    void hasAtMostFiveHundredAndTwelveSteps(int steps) {
        TextFormatException fault =
                catchThrowableOfType(
                        TextFormatException.class, () -> Figure.parse("x".repeat(steps)));
        assertThat(fault.index()).isEqualTo(512);
        assertThat(Figure.parse("x".repeat(512)).steps()).hasSize(512);
    }
}
