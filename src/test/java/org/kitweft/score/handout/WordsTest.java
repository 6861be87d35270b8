package org.kitweft.score.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.score.font.SystemFonts;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;

class WordsTest {
    private final TextFont font = TextFont.load(SystemFonts.NONE);

    private List<String> lines(String text, double width) {
        return Words.lines(font, TextStyle.REGULAR, 10, text, width);
    }

    private double width(String text) {
        return font.width(TextStyle.REGULAR, 10, text);
    }

    @Test
    void breaksBetweenWordsAndKeepsParagraphs() {
        assertThat(lines("left hand  low\n\nslow", width("left hand") + 0.1))
                .containsExactly("left hand", "low", "", "slow");
        assertThat(lines("  ", 100)).isEmpty();
    }

    @Test
    void cutsAWordThatIsLongerThanALine() {
        assertThat(lines("a mmmmm b", width("mm") + 0.1)).containsExactly("a", "mm", "mm", "m b");
    }

    /** Unicode Standard Annex 14: lines may break between ideographs, not before a full stop. */
    @Test
    void breaksWhereTheScriptAllowsIt() {
        double three = width("\u25A1\u25A1\u25A1") + 0.1;
        assertThat(lines("太鼓練習太鼓", three)).containsExactly("太鼓練", "習太鼓");
        assertThat(lines("太鼓練。習", three)).containsExactly("太鼓", "練。習");
    }

    @Test
    void losesNoCharacterHoweverNarrowTheLine() {
        assertThat(String.join("", lines("ab\uD83E\uDD41c", 0.1))).isEqualTo("ab\uD83E\uDD41c");
    }
}
