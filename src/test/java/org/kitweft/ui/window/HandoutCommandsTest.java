package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.page.Paper;
import org.kitweft.ui.lesson.LessonEdits;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

class HandoutCommandsTest {
    @TempDir Path folder;

    private final SessionModel session = new SessionModel(Session.opening());
    private final List<String> told = new ArrayList<>();
    private final Notices notices =
            new Notices() {
                @Override
                public void note(String line) {
                    told.add(line);
                }

                @Override
                public void fault(String line) {
                    told.add("fault: " + line);
                }
            };

    private HandoutPage page() {
        return new HandoutPage(folder.resolve("settings").resolve("handout.properties"));
    }

    /** Without a window to stand before: nothing here opens a dialog. */
    private HandoutCommands handouts(HandoutPage page) {
        return new HandoutCommands(
                new JPanel(),
                session,
                page,
                new FileDialogs(new JPanel(), ""),
                Tasks.DIRECT,
                notices);
    }

    @Test
    void aLessonBecomesAPdfDocument() throws IOException {
        session.edit("Add", LessonEdits.addGroove(session.session()));
        Path target = folder.resolve("lesson.pdf");
        handouts(page()).pdf(target);
        assertThat(Files.readAllBytes(target))
                .startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
        assertThat(told).containsExactly("Written: " + target.toAbsolutePath());
    }

    @Test
    void theHandoutOfALessonWithoutTitleHasAHeading() throws IOException {
        session.edit("Add", LessonEdits.addGroove(session.session()));
        Path target = folder.resolve("untitled.pdf");
        handouts(page()).pdf(target);
        try (PDDocument document = Loader.loadPDF(target.toFile())) {
            assertThat(new PDFTextStripper().getText(document).strip()).startsWith("Lesson");
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Lesson");
        }
        assertThat(session.session().lesson().title()).isEmpty();
    }

    @Test
    void aLessonWithoutItemsIsToldBeforeAnythingIsAsked() {
        handouts(page()).pdf();
        assertThat(told).hasSize(1);
        assertThat(told.get(0)).startsWith("fault: The lesson has no items yet");
    }

    private static JTextField field(Container form, String name) {
        return Arrays.stream(form.getComponents())
                .filter(c -> name.equals(c.getName()))
                .map(JTextField.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static HandoutForm changed(HandoutForm form) {
        field(form, "title").setText("Third week ");
        field(form, "nameLine").setText("");
        field(form, "footer").setText("Harbour class, pier 3");
        return form;
    }

    @Test
    void theTitleGoesIntoTheLessonAndCanBeTakenBack() {
        String before = session.session().lesson().title();
        HandoutPage page = page();
        handouts(page).use(changed(new HandoutForm(before, page.settings())));
        assertThat(session.session().lesson().title()).isEqualTo("Third week");
        session.undo();
        assertThat(session.session().lesson().title()).isEqualTo(before);
    }

    @Test
    void theRestIsKeptForTheNextDay() throws IOException {
        HandoutSettings chosen =
                HandoutSettings.DEFAULT
                        .withPaper(Paper.LETTER)
                        .withNameLine("")
                        .withFooter("Übungen: Ритм = 太鼓\\")
                        .withNotation(
                                HandoutSettings.DEFAULT
                                        .notation()
                                        .withCounting(false)
                                        .withOneVoice(true))
                        .withLegend(false)
                        .withKit(false)
                        .withCareNotes(false);
        page().use(chosen);
        HandoutPage nextDay = page();
        handouts(nextDay).begin();
        assertThat(nextDay.settings()).isEqualTo(chosen);
        assertThat(new HandoutForm("", chosen).settings()).isEqualTo(chosen);
    }

    @Test
    void thePageIsWrittenAsChosen() throws IOException {
        session.edit("Add", LessonEdits.addGroove(session.session()));
        HandoutPage page = page();
        HandoutCommands handouts = handouts(page);
        handouts.use(changed(new HandoutForm("", page.settings().withPaper(Paper.LETTER))));
        Path target = folder.resolve("lesson.pdf");
        handouts.pdf(target);
        try (PDDocument document = Loader.loadPDF(target.toFile())) {
            assertThat(document.getPage(0).getMediaBox().getHeight()).isEqualTo(792);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Third week", "Harbour class, pier 3")
                    .doesNotContain("Name");
        }
    }

    @Test
    void settingsThatCannotBeKeptAreToldAndUsedAllTheSame() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("settings"), "a file");
        HandoutPage page = page();
        handouts(page).use(changed(new HandoutForm("", page.settings())));
        assertThat(told).hasSize(1);
        assertThat(told.get(0)).startsWith("fault: handouts look as you chose until");
        assertThat(page.settings().footer()).isEqualTo("Harbour class, pier 3");
        assertThat(inTheWay).hasContent("a file");
    }

    @Test
    void anUnwritableTargetIsToldInOneLine() {
        session.edit("Add", LessonEdits.addGroove(session.session()));
        handouts(page()).pdf(folder.resolve("missing").resolve("lesson.pdf"));
        assertThat(told).hasSize(1);
        assertThat(told.get(0)).startsWith("fault: ").contains("there is no folder");
    }

    @Test
    void aGrooveTooDenseForThePageIsToldInOneLineAndTheFormerFileStays() throws IOException {
        Recipe dense = session.recipe().with(new Grid(new Meter(32, 4), 12, Grid.STRAIGHT, false));
        session.edit("Denser", dense);
        session.edit("Add", LessonEdits.addGroove(session.session()));
        Path target = Files.writeString(folder.resolve("lesson.pdf"), "former");
        handouts(page()).pdf(target);
        assertThat(told).hasSize(1);
        assertThat(told.get(0)).startsWith("fault: ").contains("too dense for the page");
        assertThat(target).hasContent("former");
    }
}
