package org.kitweft.score.font;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FontsTest {
    private final MusicFont music = MusicFont.load();
    private final TextFont text = TextFont.load();

    /** The PDF library finds an embedded font by the name that Java gives it. */
    @ParameterizedTest
    @EnumSource
    void styleKnowsTheNameOfItsFont(TextStyle style) {
        assertThat(text.font(style, 1).getFontName()).isEqualTo(style.fullName());
    }

    @ParameterizedTest
    @EnumSource
    void everyGlyphHasAnOutline(Glyph glyph) {
        assertThat(music.bounds(glyph).isEmpty()).isFalse();
    }

    /** Bravura 1.392, bravura_metadata.json: noteheadBlack is 1.18 wide, stemUpSE 1.18, 0.168. */
    @Test
    void outlinesAgreeWithTheFontsMetadata() {
        assertThat(music.bounds(Glyph.HEAD_BLACK).getMaxX()).isCloseTo(1.18, within(0.01));
        assertThat(music.anchor(Glyph.HEAD_BLACK, "stemUpSE").orElseThrow().getY())
                .isCloseTo(-0.168, within(1e-9));
    }

    @Test
    void charactersWithoutASignAreShownAsQuestionMarks() {
        assertThat(text.showable("Übung 太鼓\t1")).isEqualTo("Übung ?? 1");
    }
}
