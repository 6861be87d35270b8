package org.kitweft.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.engrave.EngraveSettings;
import org.kitweft.score.engrave.EngravedScore;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.handout.Handout;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.page.PdfFile;
import org.kitweft.score.page.Progress;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Re-engraving a four-bar line, a one-page handout and a course of 60 pages as PDF, beside the
 * least that any PDF of ours must do: one page with one word in one embedded font.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class WrittenPageBenchmark {
    private final Engraver engraver = new Engraver(Fonts.load());
    private final Handout handout = new Handout(engraver, HandoutSettings.DEFAULT);
    private final Recipe recipe =
            Recipe.plain(Sticking.parse(">RLRR LRLL"), BuiltInKits.load("five-piece"));
    private final Groove fourBars = recipe.withBars(OptionalInt.of(4)).weave();
    private final LessonItem item =
            new LessonItem("Item", Role.TIME, recipe, Tempo.DEFAULT, List.of(), "Remarks.");
    private final Lesson onePage = new Lesson("Lesson", "", List.of(item));
    // Three items a page.
    private final Lesson course = new Lesson("Course", "", Collections.nCopies(178, item));

    /** What follows an edit in the window. */
    @Benchmark
    public EngravedScore reEngraveFourBars() {
        return engraver.engrave(
                Notation.of(fourBars, NotationOptions.DEFAULT), EngraveSettings.ofWidth(220));
    }

    /** A page, laid out and written. */
    @Benchmark
    public byte[] onePageHandout() throws IOException {
        return pdf(onePage);
    }

    /** About 60 pages. */
    @Benchmark
    public byte[] courseOfSixtyPages() throws IOException {
        return pdf(course);
    }

    private byte[] pdf(Lesson lesson) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfFile.write(handout.sheets(lesson, Progress.NONE), engraver.fonts(), out, Progress.NONE);
        return out.toByteArray();
    }

    /** The rival. */
    @Benchmark
    public byte[] onlyOneWord() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                var file = TextFont.file(TextStyle.REGULAR)) {
            PDPage page = new PDPage();
            document.addPage(page);
            PDType0Font font = PDType0Font.load(document, file, true);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.beginText();
                content.setFont(font, 12);
                content.showText("Word");
                content.endText();
            }
            document.save(out);
        }
        return out.toByteArray();
    }
}
