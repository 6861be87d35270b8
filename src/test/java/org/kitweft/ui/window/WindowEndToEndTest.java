package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.explore.search.Target;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.SoundName;
import org.kitweft.lesson.LessonItem;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.Playable;
import org.kitweft.ui.play.FakePlayer;
import org.kitweft.ui.session.PhraseDraft;

/**
 * The real window on a real (or virtual) display, worked by keys alone: type a sticking, place a
 * limb, play, export, undo. Left out where there is no display; {@code .ci/run} provides one.
 */
class WindowEndToEndTest {
    private static final Path SCREENSHOTS = Path.of("target", "screenshots");
    private static final int PATIENCE_SECONDS = 30;

    @TempDir Path folder;
    private final FakePlayer player = new FakePlayer();
    private MainWindow window;
    private Robot robot;

    @BeforeEach
    void open() throws Exception {
        Assumptions.assumeFalse(
                GraphicsEnvironment.isHeadless(),
                "LEFT OUT: the window's end-to-end test needs a display; .ci/run provides one");
        CompletableFuture<MainWindow> stands = new CompletableFuture<>();
        MainWindow.start(
                folder.resolve("window.properties"),
                () -> player,
                () -> {
                    throw new IOException("no sound bank in this test");
                },
                Optional.empty(),
                stands::complete);
        window = stands.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        robot = new Robot();
        robot.setAutoDelay(15);
        await("the window has the focus", () -> window.frame().isFocused());
        await("the player is there", () -> !player.listeners.isEmpty());
    }

    @AfterEach
    void close() {
        if (window != null) {
            EventQueue.invokeLater(window.frame()::dispose);
        }
    }

    @Test
    void aTeacherTypesPlacesPlaysExportsAndUndoes() throws Exception {
        List<SoundName> before = path(Letter.R);

        press(KeyEvent.VK_F2);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        for (char letter : "RLRRLRLL".toCharArray()) {
            press(KeyEvent.VK_SHIFT, KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        Sticking typed = Sticking.parse("RLRR LRLL");
        await("the sticking is woven", () -> window.session().recipe().sticking().equals(typed));

        press(KeyEvent.VK_F3);
        press(KeyEvent.VK_R);
        press(KeyEvent.VK_UP);
        press(KeyEvent.VK_ENTER);
        await("R is placed elsewhere", () -> !path(Letter.R).equals(before));

        press(KeyEvent.VK_SPACE);
        await("it plays", () -> player.asked.contains("play"));
        player.listeners
                .get(0)
                .struck(window.session().groove().hitsInBar(1).subList(0, 1), new Place(1, 1), 0);
        robot.waitForIdle();
        robot.delay(1500);
        screenshot("window.png");
        press(KeyEvent.VK_SPACE);
        await("it stops", () -> player.asked.contains("stop"));

        Path midi = folder.resolve("groove.mid");
        EventQueue.invokeAndWait(() -> window.exports().midi(midi));
        await("the MIDI file is there", () -> Files.exists(midi));
        assertThat(Files.readAllBytes(midi)).startsWith("MThd".getBytes(StandardCharsets.US_ASCII));

        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await("R is back", () -> path(Letter.R).equals(before));
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await(
                "the first sticking is back",
                () -> !window.session().recipe().sticking().equals(typed));
    }

    @Test
    void aTeacherClimbsTheLadderTakesItHomeAndSearches() throws Exception {
        Recipe goal = window.session().recipe();
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_F12);
        // The ladder is made off the event thread: press until its first rung is there to be heard.
        awaitPressing(KeyEvent.VK_DOWN, "the first rung is heard", () -> !recipe().equals(goal));
        assertThat(recipe().voicing()).isEqualTo(Voicing.plain(goal.kit()));
        press(KeyEvent.VK_DOWN);
        screenshot("ladder.png");
        press(KeyEvent.VK_MULTIPLY);
        await("all rungs are in the lesson", () -> items().size() > 2);
        assertThat(items().get(items().size() - 1).recipe()).isEqualTo(goal);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await("one undo takes them all out", () -> items().isEmpty());

        press(KeyEvent.VK_F12);
        press(KeyEvent.VK_ALT, KeyEvent.VK_S);
        robot.delay(1500);
        Recipe before = recipe();
        awaitPressingFromSearch("a groove that was found is heard", () -> !recipe().equals(before));
        robot.delay(500);
        screenshot("search-role.png");
        press(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_MULTIPLY);
        await("it is kept", () -> items().size() == 1 && items().get(0).recipe().equals(recipe()));

        press(KeyEvent.VK_ALT, KeyEvent.VK_G);
        press(KeyEvent.VK_ALT, KeyEvent.VK_D);
        robot.delay(1000);
        Recipe found = recipe();
        awaitPressingFromSearch("another way to play it is taken", () -> !recipe().equals(found));
        assertThat(Target.of(recipe().weave())).isEqualTo(Target.of(found.weave()));
        screenshot("search-groove.png");
    }

    /** Split panes and tables have F2, F6 and F8 for themselves; here they are commands. */
    @Test
    void keysOfTheWindowReachEveryTabAndGiveItTheKeys() throws Exception {
        int tempo = tempo();
        press(KeyEvent.VK_F7);
        await("the variations have the keys", () -> focusName().equals("Variations"));
        press(KeyEvent.VK_F6);
        await("the mixer has the keys", () -> focusName().startsWith("Drums"));
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_F6);
        await("practice has the keys", () -> focusName().equals("Steady"));
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_F12);
        await("the rungs have the keys", () -> focusName().equals("Rungs of the ladder"));
        press(KeyEvent.VK_F8);
        robot.delay(400);
        press(KeyEvent.VK_F8);
        await("F8 taps the tempo from a table", () -> tempo() != tempo);
        press(KeyEvent.VK_SPACE);
        await("the space bar plays from a table", () -> player.asked.contains("play"));
        press(KeyEvent.VK_SPACE);
        press(KeyEvent.VK_F12);
        await("the search has the keys", () -> focusName().equals("Role"));
        press(KeyEvent.VK_F9);
        await("the phrase has the keys", () -> focusName().equals("Phrase"));
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_F9);
        await("the chords have the keys", () -> focusName().equals("Chords"));
        press(KeyEvent.VK_F6);
        press(KeyEvent.VK_F2);
        await("the sticking has the keys", () -> focusName().startsWith("Sticking"));
    }

    private int tempo() {
        return window.session().session().tempo().beatsPerMinute();
    }

    private Recipe recipe() {
        return window.session().recipe();
    }

    private List<LessonItem> items() {
        return window.session().session().lesson().items();
    }

    /** Down through the list that the search tab gives the keys to once something is found. */
    private void awaitPressingFromSearch(String what, BooleanSupplier condition) throws Exception {
        for (int i = 0; i < PATIENCE_SECONDS * 4; i++) {
            press(KeyEvent.VK_F12);
            press(KeyEvent.VK_DOWN);
            robot.delay(100);
            if (met(condition)) {
                return;
            }
            robot.delay(150);
        }
        screenshot("failed.png");
        throw new AssertionError("waited in vain until " + what);
    }

    private void awaitPressing(int key, String what, BooleanSupplier condition) throws Exception {
        for (int i = 0; i < PATIENCE_SECONDS * 4 && !met(condition); i++) {
            press(key);
            robot.delay(100);
        }
        await(what, condition);
    }

    private static boolean met(BooleanSupplier condition) throws Exception {
        boolean[] met = new boolean[1];
        EventQueue.invokeAndWait(() -> met[0] = condition.getAsBoolean());
        return met[0];
    }

    @Test
    void aTeacherBuildsAPhraseWithABandExportsAndUndoes() throws Exception {
        press(KeyEvent.VK_F9);
        await("the strip has the keys", () -> focusName().equals("Phrase"));
        press(KeyEvent.VK_M);
        await("there is a phrase", () -> draft().plan().isPresent());
        press(KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_EQUALS);
        await("the fill has two bars", () -> draft().plan().orElseThrow().bars() == 9);

        press(KeyEvent.VK_CONTROL, KeyEvent.VK_B);
        await("the band is heard", () -> lastShown().band().size() == 3);
        press(KeyEvent.VK_SPACE);
        await("it plays", () -> player.asked.contains("play"));
        player.listeners.get(0).struck(List.of(), new Place(7, 5), 0);
        robot.waitForIdle();
        robot.delay(1500);
        screenshot("window-phrase.png");

        press(KeyEvent.VK_SHIFT, KeyEvent.VK_F9);
        await("the chords have the keys", () -> focusName().equals("Chords"));
        int before = player.shown.size();
        press(KeyEvent.VK_END);
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_H);
        await("the fault is told", () -> draft().fault().isPresent());
        assertThat(player.shown).as("the last good chart keeps sounding").hasSize(before);
        screenshot("window-band.png");
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await("the chords are right again", () -> draft().fault().isEmpty());

        Path midi = folder.resolve("phrase.mid");
        Path pdf = folder.resolve("phrase.pdf");
        EventQueue.invokeAndWait(
                () -> {
                    window.exports().midi(midi);
                    window.exports().staff(pdf);
                });
        await("the files are there", () -> Files.exists(midi) && Files.exists(pdf));
        assertThat(Files.readString(midi, StandardCharsets.ISO_8859_1))
                .startsWith("MThd")
                .contains("drums", "bass", "comping", "punches");
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await("all of it is undone", () -> draft().plan().isEmpty() && !draft().backing().on());
    }

    private PhraseDraft draft() {
        return window.session().session().draft();
    }

    private Playable lastShown() {
        return player.shown.get(player.shown.size() - 1);
    }

    private static String focusName() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner == null
                ? ""
                : String.valueOf(owner.getAccessibleContext().getAccessibleName());
    }

    private List<SoundName> path(Letter letter) {
        return window.session().recipe().voicing().letter(letter).orElseThrow().path();
    }

    private void press(int... keys) {
        for (int key : keys) {
            robot.keyPress(key);
        }
        for (int i = keys.length - 1; i >= 0; i--) {
            robot.keyRelease(keys[i]);
        }
        robot.waitForIdle();
    }

    private void screenshot(String name) throws IOException {
        Files.createDirectories(SCREENSHOTS);
        Rectangle bounds = window.frame().getBounds();
        ImageIO.write(robot.createScreenCapture(bounds), "png", SCREENSHOTS.resolve(name).toFile());
    }

    /** A slow machine may take its time; what never comes is a failure with its name. */
    private void await(String what, BooleanSupplier condition) throws Exception {
        for (int i = 0; i < PATIENCE_SECONDS * 20; i++) {
            if (met(condition)) {
                return;
            }
            robot.delay(50);
        }
        screenshot("failed.png");
        throw new AssertionError("waited in vain until " + what);
    }
}
