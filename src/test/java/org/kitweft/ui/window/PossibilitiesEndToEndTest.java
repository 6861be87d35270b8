package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Place;
import org.kitweft.kit.SoundName;
import org.kitweft.ui.play.FakePlayer;

/**
 * The possibilities in the real window, by keys and mouse: hear the next one at the bar line, keep
 * it, rank by role, pin. Left out where there is no display; {@code .ci/run} provides one.
 */
class PossibilitiesEndToEndTest {
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
        await("variations are listed", () -> list().getModel().getSize() > 0);
    }

    @AfterEach
    void close() {
        if (window != null) {
            EventQueue.invokeLater(window.frame()::dispose);
        }
    }

    @Test
    void arrowsHearTheNextVariationAtTheBarLineAndTheStarKeepsIt() throws Exception {
        press(KeyEvent.VK_F7);
        await("the list has the keys", () -> list().isFocusOwner());
        press(KeyEvent.VK_SPACE);
        await("the space bar plays from the list", () -> player.asked.contains("play"));
        reach(new Place(1, 3));
        press(KeyEvent.VK_DOWN);
        press(KeyEvent.VK_DOWN);
        press(KeyEvent.VK_DOWN);
        await("a row is selected", () -> list().getSelectedIndex() == 2);
        Variation wanted = on(() -> list().getModel().getElementAt(2));
        press(KeyEvent.VK_S);
        await("what waits for the bar line is kept", () -> items() == 1);
        assertThat(List.copyOf(kept().values())).isEqualTo(wanted.sounds());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await("keeping is undone", () -> items() == 0);
        reach(new Place(1, 15));
        assertThat(on(this::strokes)).as("before the bar line nothing changes").isEmpty();
        int shown = player.asked.size();
        reach(new Place(1, 16));
        await("the variation is on the kit", () -> strokes().size() == 8);
        assertThat(List.copyOf(on(this::strokes).values())).isEqualTo(wanted.sounds());
        assertThat(player.asked.subList(shown, player.asked.size()))
                .as("it is shown to the player, which never stops")
                .doesNotContain("stop", "play");
        screenshot("possibilities-heard.png");

        assertThat(on(window.session()::session).own()).as("it is only heard").isPresent();
        press(KeyEvent.VK_ENTER);
        await("Enter takes it", () -> window.session().session().own().isEmpty());
        assertThat(on(this::items)).isZero();
        press(KeyEvent.VK_S);
        await("S keeps it", () -> items() == 1);
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_8);
        await("* keeps it as well", () -> items() == 2);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await("keeping is undone", () -> items() == 1);
        press(KeyEvent.VK_SPACE);
    }

    @Test
    void ranksByRoleWhileOneLooks() throws Exception {
        press(KeyEvent.VK_F7);
        on(
                () -> {
                    orders().setSelectedIndex(3);
                    return "";
                });
        await("the best fills so far are listed", () -> list().getModel().getSize() >= 100);
        press(KeyEvent.VK_DOWN);
        await("one is selected", () -> list().getSelectedIndex() >= 0);
        Variation chosen = on(() -> list().getSelectedValue());
        robot.delay(700);
        await(
                "it stays selected while the list gets better",
                () -> list().isSelectionEmpty() || chosen.equals(list().getSelectedValue()));
        await("the groove is the chosen one", () -> strokes().size() == 8);
        assertThat(List.copyOf(on(this::strokes).values())).isEqualTo(chosen.sounds());
        screenshot("possibilities-ranked.png");
    }

    @Test
    void pinsByKeyAndByMouseNarrowAtOnce() throws Exception {
        BigInteger all = new BigInteger("7").pow(8);
        press(KeyEvent.VK_F4);
        press(KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_I);
        await("stroke 2 is pinned where it is", () -> pins().size() == 1);
        assertThat(on(this::pins).get(0).index()).isEqualTo(1);
        await("a seventh is left", () -> total().equals(all.divide(BigInteger.valueOf(7))));

        Component grid = named(window.frame(), Component.class, "Groove grid");
        Point at = on(grid::getLocationOnScreen);
        int width = on(grid::getWidth) / 16;
        int height = on(grid::getHeight) / 9;
        robot.mouseMove(at.x + 4 * width + width / 2, at.y + height / 2);
        robot.delay(300);
        robot.mousePress(InputEvent.BUTTON3_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON3_DOWN_MASK);
        await("the menu is there", () -> menuItem("Pin stroke 5 on Crash").isPresent());
        screenshot("possibilities-pinning.png");
        on(
                () -> {
                    menuItem("Pin stroke 5 on Crash").orElseThrow().doClick();
                    MenuSelectionManager.defaultManager().clearSelectedPath();
                    return "";
                });
        await("stroke 5 is pinned too", () -> pins().size() == 2);
        assertThat(on(this::strokes).get(4).text()).startsWith("crash.");
        await("a 49th is left", () -> total().equals(all.divide(BigInteger.valueOf(49))));
        robot.delay(400);
        screenshot("possibilities-pinned.png");
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        await("the pin is undone", () -> pins().size() == 1);
    }

    private List<Rule.Pin> pins() {
        return window.session().session().rules().stream()
                .filter(Rule.Pin.class::isInstance)
                .map(Rule.Pin.class::cast)
                .toList();
    }

    /** Counted once more, apart from the window. */
    private BigInteger total() {
        var session = window.session().session();
        return Possibilities.of(session.recipe(), session.choicesInUse(), session.rules()).total();
    }

    private static Optional<JMenuItem> menuItem(String start) {
        for (MenuElement element : MenuSelectionManager.defaultManager().getSelectedPath()) {
            for (MenuElement inner : element.getSubElements()) {
                if (inner instanceof JMenuItem item && item.getText().startsWith(start)) {
                    return Optional.of(item);
                }
            }
        }
        return Optional.empty();
    }

    private SortedMap<Integer, SoundName> strokes() {
        return window.session().recipe().voicing().strokes();
    }

    private SortedMap<Integer, SoundName> kept() throws Exception {
        return on(
                () ->
                        window.session()
                                .session()
                                .lesson()
                                .items()
                                .get(0)
                                .recipe()
                                .voicing()
                                .strokes());
    }

    private int items() {
        return window.session().session().lesson().items().size();
    }

    @SuppressWarnings("unchecked") // the list of this name holds variations
    private JList<Variation> list() {
        return named(window.frame(), JList.class, "Variations");
    }

    private JComboBox<?> orders() {
        return named(window.frame(), JComboBox.class, "Order of the variations");
    }

    private static <C extends Component> C named(Container within, Class<C> type, String name) {
        return find(within, type, name)
                .orElseThrow(() -> new AssertionError("no component is called " + name));
    }

    private static <C extends Component> Optional<C> find(
            Container within, Class<C> type, String name) {
        for (Component component : within.getComponents()) {
            if (type.isInstance(component)
                    && component.getAccessibleContext() != null
                    && name.equals(component.getAccessibleContext().getAccessibleName())) {
                return Optional.of(type.cast(component));
            }
            if (component instanceof Container inner) {
                Optional<C> found = find(inner, type, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** The player has come to a step. */
    private void reach(Place place) {
        player.listeners.get(0).struck(List.of(), place, 0);
        robot.waitForIdle();
    }

    private static <T> T on(Supplier<T> what) throws Exception {
        Object[] result = new Object[1];
        EventQueue.invokeAndWait(() -> result[0] = what.get());
        @SuppressWarnings("unchecked") // the array holds what was asked for
        T typed = (T) result[0];
        return typed;
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
        robot.waitForIdle();
        Rectangle bounds = window.frame().getBounds();
        ImageIO.write(robot.createScreenCapture(bounds), "png", SCREENSHOTS.resolve(name).toFile());
    }

    /** A slow machine may take its time; what never comes is a failure with its name. */
    private void await(String what, BooleanSupplier condition) throws Exception {
        for (int i = 0; i < PATIENCE_SECONDS * 20; i++) {
            boolean[] met = new boolean[1];
            SwingUtilities.invokeAndWait(() -> met[0] = condition.getAsBoolean());
            if (met[0]) {
                return;
            }
            robot.delay(50);
        }
        screenshot("failed.png");
        throw new AssertionError("waited in vain until " + what);
    }
}
