package org.kitweft.score.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Palette;
import org.kitweft.score.handout.Handout;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.w3c.dom.Element;

class GoldenPageTest {
    private static final int DPI = 72;

    /** Font engines of other Java versions shade edges a little differently. */
    private static final int LARGE_DIFFERENCE = 96;

    private static final double MOST_DIFFERENT = 0.002;

    private final Engraver engraver = new Engraver(Fonts.load());

    private static Recipe recipe() {
        return Recipe.plain(
                        Sticking.parse(">RLRR (L)RLK lR - Rz -"),
                        BuiltInKits.load(BuiltInKits.DEFAULT))
                .withBars(OptionalInt.of(2));
    }

    /** To renew the golden page, write {@link #page()} over it and look at both. */
    @Test
    void handoutLooksAsOnTheGoldenPage() throws IOException {
        BufferedImage golden;
        try (InputStream in = GoldenPageTest.class.getResourceAsStream("handout.golden.png")) {
            golden = ImageIO.read(Objects.requireNonNull(in));
        }
        BufferedImage page = page();
        assertThat(page.getWidth()).isEqualTo(golden.getWidth());
        assertThat(page.getHeight()).isEqualTo(golden.getHeight());
        int different = 0;
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                int green = page.getRGB(x, y) >> 8 & 0xFF;
                int expected = golden.getRGB(x, y) >> 8 & 0xFF;
                if (Math.abs(green - expected) > LARGE_DIFFERENCE) {
                    different++;
                }
            }
        }
        assertThat((double) different / (page.getWidth() * page.getHeight()))
                .as("share of dots that differ")
                .isLessThan(MOST_DIFFERENT);
    }

    private BufferedImage page() {
        LessonItem item =
                new LessonItem(
                        "First groove",
                        Role.TIME,
                        recipe(),
                        new Tempo(60),
                        List.of(),
                        "Keep the left hand low.");
        Sheets sheets =
                new Handout(engraver, HandoutSettings.DEFAULT)
                        .sheets(
                                new Lesson("Golden page", "Remarks.", List.of(item)),
                                Progress.NONE);
        return PngFile.image(sheets.sheets().get(0), engraver.fonts(), Palette.PRINT, DPI);
    }

    @Test
    void svgIsWellFormedHoldsItsWordsAndIsTheSameEachTime() throws Exception {
        Groove groove = recipe().weave();
        Sheet sheet =
                new ScorePage(engraver, Paper.A4)
                        .cutOut(Notation.of(groove, NotationOptions.DEFAULT), 500);
        String svg = SvgFile.text(sheet, engraver.fonts(), Palette.PRINT);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        var document =
                factory.newDocumentBuilder()
                        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        var texts = document.getElementsByTagName("text");
        assertThat(texts.getLength()).isGreaterThan(10);
        // Words are read as text and seen as outlines, so no font has to be installed.
        for (int i = 0; i < texts.getLength(); i++) {
            assertThat(((Element) texts.item(i)).getAttribute("style")).contains("fill-opacity: 0");
        }
        assertThat(SvgFile.text(sheet, engraver.fonts(), Palette.PRINT)).isEqualTo(svg);
    }

    @Test
    void legendNamesEachNotehead() {
        Sheets sheets =
                new ScorePage(engraver, Paper.LETTER)
                        .pages(Notation.of(recipe().weave(), NotationOptions.DEFAULT), "A groove");
        assertThat(
                        sheets.sheets().stream()
                                .flatMap(sheet -> sheet.signs().stream())
                                .map(sign -> sign.line()))
                .anyMatch(line -> line.contains("\"Snare\""))
                .anyMatch(line -> line.contains("\"Bass drum\""));
    }
}
