package org.kitweft.score.font;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
    void theTextFontWritesLatinGreekAndCyrillicItself() {
        assertThat(text.runs(TextStyle.BOLD, "Übung Ρυθμός Ритм"))
                .containsExactly(new TextRun("Übung Ρυθμός Ритм", Optional.empty(), ""));
    }

    @Test
    void aCharacterThatNoFontHasIsABoxAndIsNamed() {
        TextFont alone = TextFont.load(SystemFonts.NONE);
        assertThat(alone.runs(TextStyle.REGULAR, "a 太鼓\t1"))
                .containsExactly(new TextRun("a \u25A1\u25A1 1", Optional.empty(), "太鼓"));
    }

    /** Liberation Sans, which comes with the PDF library, has Hebrew; ours has not. */
    @Test
    void anotherFontWritesWhatOursCannot(@TempDir Path folder) throws IOException {
        TextFont both = TextFont.load(SystemFonts.of(List.of(hebrew(folder))));
        List<TextRun> runs = both.runs(TextStyle.REGULAR, "a \u05D0\u05D1 \u05D2 b");
        assertThat(runs)
                .extracting(TextRun::text)
                .containsExactly("a ", "\u05D0\u05D1 \u05D2", " ", "b");
        assertThat(runs.get(1).font().orElseThrow().name()).isEqualTo("Liberation Sans");
        assertThat(both.width(TextStyle.REGULAR, 10, "a \u05D0\u05D1 \u05D2 b"))
                .isCloseTo(
                        runs.stream().mapToDouble(r -> both.width(r, TextStyle.REGULAR, 10)).sum(),
                        within(1e-9));
    }

    @Test
    void aBrokenFontFileIsPassedOver(@TempDir Path folder) throws IOException {
        Path broken = Files.writeString(folder.resolve("a.ttf"), "no font");
        TextFont both = TextFont.load(SystemFonts.of(List.of(broken, hebrew(folder))));
        assertThat(both.runs(TextStyle.REGULAR, "\u05D0").get(0).font()).isPresent();
    }

    private static Path hebrew(Path folder) throws IOException {
        Path file = folder.resolve("hebrew.ttf");
        try (InputStream in =
                PDDocument.class.getResourceAsStream(
                        "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            Files.copy(Objects.requireNonNull(in), file);
        }
        return file;
    }
}
