package org.kitweft.score.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.print.PrintService;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.band.Backing;
import org.kitweft.file.SafeFile;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.RoleVoicings;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Ink;
import org.kitweft.score.engrave.PlacedSign;
import org.kitweft.score.engrave.TooDenseException;
import org.kitweft.score.font.SystemFonts;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.page.Paper;
import org.kitweft.score.page.PdfFile;
import org.kitweft.score.page.Progress;
import org.kitweft.score.page.SheetPrinter;
import org.kitweft.score.page.Sheets;

class HandoutTest {
    private static final int LIMIT_BYTES = 300_000;

    private final Engraver engraver = new Engraver(Fonts.load());
    private final Handout handout =
            new Handout(engraver, HandoutSettings.DEFAULT.withFooter("Foot line"));

    private static LessonItem item(Recipe recipe) {
        return new LessonItem(
                "Paradiddle", Role.TIME, recipe, new Tempo(60), List.of(), "Keep it low.");
    }

    private static Recipe paradiddle() {
        return Recipe.plain(Sticking.parse(">RLRR >LRLL"), BuiltInKits.load(BuiltInKits.DEFAULT));
    }

    private static Lesson lesson(int items) {
        return new Lesson(
                "First week",
                "Ten minutes a day.",
                IntStream.range(0, items).mapToObj(i -> item(paradiddle())).toList());
    }

    private byte[] pdf(Sheets sheets) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(sheets, engraver.fonts(), out, Progress.NONE);
        return out.toByteArray();
    }

    @Test
    void saysAllThatALearnerNeedsAsTextThatCanBeSelected() throws IOException {
        byte[] pdf = pdf(handout.sheets(lesson(1), Progress.NONE));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text)
                    .contains("First week", "Ten minutes a day.", "Paradiddle", "Keep it low.")
                    .contains("60", "66", "72", "102")
                    .contains("R L R R L R L L")
                    .contains("Practice log", "Date", "Name", "Foot line", "Snare")
                    .contains("NIOSH 98-126", "clinician or audiologist come first");
        }
        assertThat(pdf.length).isLessThan(LIMIT_BYTES);
    }

    @Test
    void embedsEveryFontItUses() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(handout.sheets(lesson(1), Progress.NONE)))) {
            var resources = document.getPage(0).getResources();
            int fonts = 0;
            for (COSName name : resources.getXObjectNames()) {
                PDFormXObject form = (PDFormXObject) resources.getXObject(name);
                for (COSName font : form.getResources().getFontNames()) {
                    assertThat(form.getResources().getFont(font).isEmbedded()).isTrue();
                    fonts++;
                }
            }
            assertThat(fonts).isGreaterThanOrEqualTo(3);
        }
    }

    private Sheets titled(TextFont text, String title) {
        Engraver other = new Engraver(new Fonts(engraver.fonts().music(), text));
        return new Handout(other, HandoutSettings.DEFAULT)
                .sheets(lesson(1).withTitle(title), Progress.NONE);
    }

    /** U+04D8 is in Liberation Sans, which comes with the PDF library, and not in our font. */
    @Test
    void embedsAFontOfTheComputerForWhatOursCannotWrite(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("other.ttf");
        try (InputStream in =
                PDDocument.class.getResourceAsStream(
                        "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            Files.copy(Objects.requireNonNull(in), file);
        }
        TextFont text = TextFont.load(SystemFonts.of(List.of(file)));
        Sheets sheets = titled(text, "Week \u0494\u0495");
        assertThat(sheets.note()).isEmpty();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(sheets, new Fonts(engraver.fonts().music(), text), out, Progress.NONE);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            assertThat(new PDFTextStripper().getText(document)).contains("Week \u0494\u0495");
        }
    }

    @Test
    void namesTheCharactersThatNoFontHas() {
        Sheets sheets = titled(TextFont.load(SystemFonts.NONE), "Week 太鼓太");
        assertThat(sheets.note()).hasValueSatisfying(note -> assertThat(note).contains("太 鼓:"));
        assertThat(sheets.title()).isEqualTo("Week 太鼓太");
    }

    @Test
    void theSameLessonGivesTheSameFile() throws IOException {
        assertThat(pdf(handout.sheets(lesson(2), Progress.NONE)))
                .isEqualTo(pdf(handout.sheets(lesson(2), Progress.NONE)));
    }

    @Test
    void everySignLiesOnThePaper() {
        for (Paper paper : Paper.values()) {
            Handout onPaper = new Handout(engraver, HandoutSettings.DEFAULT.withPaper(paper));
            Sheets sheets = onPaper.sheets(lesson(9), Progress.NONE);
            assertThat(sheets.sheets().size()).isGreaterThan(2);
            sheets.sheets().stream()
                    .flatMap(sheet -> sheet.signs().stream())
                    .forEach(
                            sign -> {
                                assertThat(sign.bounds().getMinX()).isGreaterThan(20);
                                assertThat(sign.bounds().getMaxX()).isLessThan(paper.width() - 20);
                                assertThat(sign.bounds().getMaxY()).isLessThan(paper.height() - 20);
                            });
        }
    }

    /** Titles, name line and footer of any length: all words stand, on the paper, apart. */
    @Test
    void longWordsAreBrokenAndNotLost() throws IOException {
        String many = "one two three four five six seven eight nine ten eleven twelve ".repeat(3);
        Handout wordy =
                new Handout(
                        engraver,
                        HandoutSettings.DEFAULT.withNameLine("N " + many).withFooter("F " + many));
        Lesson lesson =
                new Lesson("T " + many, "", List.of(item(paradiddle()).withTitle("I " + many)));
        Sheets sheets = wordy.sheets(lesson, Progress.NONE);
        List<PlacedSign> words =
                sheets.sheets().get(0).signs().stream()
                        .filter(sign -> sign.ink() instanceof Ink.OfText)
                        .toList();
        for (PlacedSign one : words) {
            assertThat(one.bounds().getMinX()).isGreaterThan(41);
            assertThat(one.bounds().getMaxX()).isLessThan(Paper.A4.width() - 41);
            assertThat(words.stream().filter(o -> o.bounds().intersects(one.bounds())))
                    .as(one.line())
                    .allMatch(other -> other.equals(one) || isInPicture(other));
        }
        try (PDDocument document = Loader.loadPDF(pdf(sheets))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            assertThat(stripper.getText(document).split("twelve", -1)).hasSize(13);
        }
    }

    /** In the picture of the kit a token may lie on a name. */
    private static boolean isInPicture(PlacedSign sign) {
        return sign.ink() instanceof Ink.OfText text && text.size() <= 6;
    }

    @Test
    void leavesOutWhatIsNotWanted() throws IOException {
        HandoutSettings bare =
                HandoutSettings.DEFAULT
                        .withNameLine("")
                        .withKit(false)
                        .withLegend(false)
                        .withPracticeLog(false)
                        .withCareNotes(false)
                        .withNotation(HandoutSettings.DEFAULT.notation().withCounting(false));
        Sheets sheets = new Handout(engraver, bare).sheets(lesson(1), Progress.NONE);
        try (PDDocument document = Loader.loadPDF(pdf(sheets))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("First week", "R L R R L R L L")
                    .doesNotContain("Name", "Snare", "Practice log", "Care", "1 e & a");
        }
    }

    @Test
    void refusesALessonWithoutItems() {
        assertThatThrownBy(() -> handout.sheets(lesson(0), Progress.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("First week")
                .hasMessageContaining("no items");
    }

    @Test
    void namesTheBarThatIsTooDense() {
        Recipe dense = paradiddle().with(new Grid(new Meter(32, 4), 12, Grid.STRAIGHT, false));
        assertThatThrownBy(() -> handout.sheets(lesson(0).withItem(item(dense)), Progress.NONE))
                .isInstanceOf(TooDenseException.class)
                .hasMessageContaining("bar 1")
                .hasMessageContaining("fewer steps per beat");
    }

    @Test
    void tellsItsProgressAndCanBeStoppedWhileItIsLaidOut() {
        List<Integer> heard = new ArrayList<>();
        assertThatThrownBy(
                        () ->
                                handout.sheets(
                                        lesson(9),
                                        (done, of) -> {
                                            assertThat(of).isEqualTo(9);
                                            heard.add(done);
                                            return done < 3;
                                        }))
                .isInstanceOf(CancellationException.class);
        assertThat(heard).containsExactly(0, 1, 2, 3);
    }

    @Test
    void leavesTheTargetAsItWasWhenStopped(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("week.pdf"), "former");
        Sheets sheets = handout.sheets(lesson(9), Progress.NONE);
        assertThatThrownBy(
                        () ->
                                PdfFile.write(
                                        sheets,
                                        engraver.fonts(),
                                        file,
                                        SafeFile.Existing.REPLACE,
                                        (done, of) -> done < 1))
                .isInstanceOf(CancellationException.class);
        assertThat(file).hasContent("former");
        try (var files = Files.list(folder)) {
            assertThat(files.collect(Collectors.toList())).containsExactly(file);
        }
    }

    @Test
    void saysInOneSentenceThatTheFolderIsMissing(@TempDir Path folder) {
        Path file = folder.resolve("missing").resolve("week.pdf");
        assertThatThrownBy(
                        () ->
                                PdfFile.write(
                                        handout.sheets(lesson(1), Progress.NONE),
                                        engraver.fonts(),
                                        file,
                                        SafeFile.Existing.KEEP,
                                        Progress.NONE))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("there is no folder");
    }

    @Test
    void saysThatThereIsNoPrinter() {
        Sheets sheets = handout.sheets(lesson(1), Progress.NONE);
        assertThatThrownBy(() -> SheetPrinter.print(sheets, engraver.fonts(), new NoPrinter()))
                .isInstanceOf(PrinterException.class)
                .hasMessageContaining("no printer");
    }

    /** A job on a computer without printers. */
    private static final class NoPrinter extends PrinterJob {
        @Override
        public @Nullable PrintService getPrintService() {
            return null;
        }

        @Override
        public void setPrintable(Printable painter) {}

        @Override
        public void setPrintable(Printable painter, PageFormat format) {}

        @Override
        public void setPageable(Pageable document) {}

        @Override
        public boolean printDialog() {
            return false;
        }

        @Override
        public PageFormat pageDialog(PageFormat page) {
            return page;
        }

        @Override
        public PageFormat defaultPage(PageFormat page) {
            return page;
        }

        @Override
        public PageFormat validatePage(PageFormat page) {
            return page;
        }

        @Override
        public void print() {
            throw new AssertionError("must not be reached");
        }

        @Override
        public void setCopies(int copies) {}

        @Override
        public int getCopies() {
            return 1;
        }

        @Override
        public String getUserName() {
            return "";
        }

        @Override
        public void setJobName(String name) {}

        @Override
        public String getJobName() {
            return "";
        }

        @Override
        public void cancel() {}

        @Override
        public boolean isCancelled() {
            return false;
        }
    }

    @Test
    void offersALadderOfTempoStepsWhereTheItemHasNone() {
        assertThat(TempoBoxes.of(List.of(), new Tempo(60), 400).steps())
                .isEqualTo(List.of(60, 66, 72, 78, 84, 90, 96, 102));
        assertThat(TempoBoxes.of(List.of(50, 55), new Tempo(60), 400).steps())
                .isEqualTo(List.of(50, 55));
    }

    private static LessonPhrase phrase(Optional<Backing> band) {
        Recipe time = paradiddle();
        PhrasePlan plan =
                PhrasePlan.ofOne(
                        time,
                        RoleVoicings.fill(time.voicing(), time.kit()),
                        RoleVoicings.punch(time.voicing(), time.kit()),
                        8);
        return new LessonPhrase(
                "Eight bars", plan, band, new Tempo(84), List.of(60, 72, 84), "Sing the punch.");
    }

    @Test
    void aPhraseIsPrintedWithItsSectionsChordsAndTempoSteps() throws IOException {
        Backing band =
                Backing.DEFAULT
                        .withOn(true)
                        .withStyle("salsa")
                        .withChords("Dm7 G7 | Cmaj7 | N.C. | F#m7b5/E");
        Lesson lesson = lesson(1).withPhrase(phrase(Optional.of(band)));
        String text = text(handout.sheets(lesson, Progress.NONE));
        assertThat(text)
                .contains("2 Eight bars")
                .contains("6 bars of time, 1 bar of fill, 1 bar of punch. Band: Salsa, clave 3-2.")
                .contains("Dm7", "G7", "Cmaj7", "N.C.", "F#m7b5/E")
                .contains("60", "72", "84")
                .contains("Sing the punch.");
        assertThat(text.split("Cmaj7", -1).length - 1)
                .as("the chart of four bars comes twice")
                .isEqualTo(2);
    }

    @Test
    void aPhraseWithoutABandHasNoChordsAndMayStandAlone() throws IOException {
        Backing off = Backing.DEFAULT.withChords("Ebm9");
        Lesson lesson = lesson(0).withPhrase(phrase(Optional.of(off)));
        assertThat(text(handout.sheets(lesson, Progress.NONE)))
                .contains("Eight bars")
                .doesNotContain("Ebm9", "Band:");
    }

    private String text(Sheets sheets) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(sheets))) {
            return new PDFTextStripper().getText(document);
        }
    }
}
