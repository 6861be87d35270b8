package org.kitweft.score.page;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonFile;
import org.kitweft.lesson.LessonItem;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Palette;
import org.kitweft.score.handout.Handout;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.Score;
import org.w3c.dom.Element;

class GoldenPageTest {
    private static final int PAGE_DPI = 72;
    private static final int STAFF_DPI = 144;

    private final Engraver engraver = new Engraver(Fonts.load());

    private static Recipe recipe() {
        return Recipe.plain(
                        Sticking.parse(">RLRR (L)RLK lR - Rz -"),
                        BuiltInKits.load(BuiltInKits.DEFAULT))
                .withBars(OptionalInt.of(2));
    }

    private static Lesson demo() throws IOException {
        try (InputStream in =
                GoldenPageTest.class.getResourceAsStream("/org/kitweft/demo/harbour-class.json")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), UTF_8);
            return LessonFile.parse(text, "demo");
        }
    }

    private List<BufferedImage> pages(Lesson lesson) {
        return new Handout(engraver, HandoutSettings.DEFAULT)
                .sheets(lesson, Progress.NONE).sheets().stream()
                        .map(sheet -> image(sheet, PAGE_DPI))
                        .toList();
    }

    private BufferedImage image(Sheet sheet, int dpi) {
        return PngFile.image(sheet, engraver.fonts(), Palette.PRINT, dpi);
    }

    private BufferedImage staff(Recipe recipe) {
        Score score = Notation.of(recipe.weave(), NotationOptions.DEFAULT.withCounting(true));
        return image(new ScorePage(engraver, Paper.A4).cutOut(score, 500), STAFF_DPI);
    }

    @Test
    void demosHandoutLooksAsOnTheGoldenPages() throws IOException {
        List<BufferedImage> pages = pages(demo());
        assertThat(pages).hasSize(6);
        for (int i = 0; i < pages.size(); i++) {
            GoldenImage.check("harbour-class-" + (i + 1), pages.get(i));
        }
    }

    @Test
    void demosStaffsLookAsOnTheGoldenPictures() throws IOException {
        List<LessonItem> items = demo().items();
        for (int i = 0; i < items.size(); i++) {
            GoldenImage.check("harbour-staff-" + (i + 1), staff(items.get(i).recipe()));
        }
    }

    /** Swing of eighths and of sixteenths. */
    @Test
    void swingLooksAsOnTheGoldenPictures() throws IOException {
        for (int steps : new int[] {2, 4}) {
            Recipe swung = recipe().with(Grid.SIXTEENTHS.withStepsPerBeat(steps).withSwing(67));
            GoldenImage.check("swing-" + steps, staff(swung));
        }
    }

    /** Ornaments, a buzz and rests, which the demo has few of. */
    @Test
    void aHandoutOfOnePageLooksAsOnTheGoldenPage() throws IOException {
        LessonItem item =
                new LessonItem(
                        "First groove",
                        Role.TIME,
                        recipe(),
                        new Tempo(60),
                        List.of(),
                        "Keep the left hand low.");
        List<BufferedImage> pages = pages(new Lesson("Golden page", "Remarks.", List.of(item)));
        assertThat(pages).hasSize(1);
        GoldenImage.check("handout", pages.get(0));
    }

    /** The tolerance is no wider than the smallest thing that matters. */
    @Test
    void aMissingAccentOrGhostIsSeen() {
        Recipe with = recipe();
        for (String text : List.of("RLRR (L)RLK lR - Rz -", ">RLRR LRLK lR - Rz -")) {
            Recipe without = with.with(Sticking.parse(text));
            assertThat(GoldenImage.passes(staff(with), staff(without))).as(text).isFalse();
        }
        assertThat(GoldenImage.passes(staff(with), staff(recipe()))).isTrue();
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
                factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(UTF_8)));
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
