package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.band.Backing;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Limb;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.ui.explore.PossibilitiesPanel;
import org.kitweft.ui.play.FakePlayer;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.staff.StaffPanel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.HighEnough;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.Theme;

/** All panels of the window painted to an image, without a display. */
class PanelPaintTest {

    /** Panels without a frame, as big as the window would make them. */
    private static final class Stage {
        final SessionModel session = new SessionModel(Session.opening());
        final Playhead playhead = new Playhead();
        final Panels panels;
        final int width;
        final int height;

        Stage(Theme theme, int zoom, int width, int height) {
            this.width = width;
            this.height = height;
            theme.install(zoom);
            StatusBar status = new StatusBar();
            PlayModel play = new PlayModel(session, playhead, Runnable::run, status);
            play.attach(new FakePlayer());
            panels =
                    new Panels(
                            session,
                            playhead,
                            play,
                            status,
                            () -> {},
                            Optional::empty,
                            NotationOptions.DEFAULT,
                            Tasks.DIRECT);
        }

        void layOut() {
            panels.setSize(new Dimension(width, height));
            layOut(panels);
        }

        private static void layOut(Container container) {
            container.doLayout();
            for (Component child : container.getComponents()) {
                if (child instanceof Container inner) {
                    layOut(inner);
                }
            }
        }

        BufferedImage paint() {
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            panels.paint(g);
            g.dispose();
            return image;
        }
    }

    private interface Work<T> {
        T on(Stage stage) throws Exception;
    }

    /** Sizes reach listeners through the event queue: a turn of it between layout and painting. */
    private static <T> T with(Theme theme, int zoom, int width, int height, Work<T> work)
            throws Exception {
        return with(theme, zoom, width, height, stage -> {}, work);
    }

    /** As above, after a change and the layout that follows it. */
    private static <T> T with(
            Theme theme, int zoom, int width, int height, Consumer<Stage> change, Work<T> work)
            throws Exception {
        Stage[] stage = new Stage[1];
        EventQueue.invokeAndWait(
                () -> {
                    stage[0] = new Stage(theme, zoom, width, height);
                    stage[0].layOut();
                    stage[0].panels.begin();
                });
        for (int i = 0; i < 3; i++) {
            EventQueue.invokeAndWait(() -> stage[0].layOut());
        }
        EventQueue.invokeAndWait(() -> change.accept(stage[0]));
        for (int i = 0; i < 6; i++) {
            EventQueue.invokeAndWait(() -> stage[0].layOut());
        }
        Object[] result = new Object[1];
        Exception[] fault = new Exception[1];
        EventQueue.invokeAndWait(
                () -> {
                    try {
                        result[0] = work.on(stage[0]);
                    } catch (Exception e) {
                        fault[0] = e;
                    }
                });
        if (fault[0] != null) {
            throw fault[0];
        }
        @SuppressWarnings("unchecked") // the array holds what work returned
        T typed = (T) result[0];
        return typed;
    }

    private static long pixels(BufferedImage image, Color color) {
        int rgb = color.getRGB() & 0xFFFFFF;
        return Arrays.stream(
                        image.getRGB(
                                0,
                                0,
                                image.getWidth(),
                                image.getHeight(),
                                null,
                                0,
                                image.getWidth()))
                .filter(pixel -> (pixel & 0xFFFFFF) == rgb)
                .count();
    }

    @ParameterizedTest(name = "{0} at {1} %")
    @CsvSource({
        "LIGHT, 100, 1280, 800",
        "DARK, 100, 1280, 800",
        "LIGHT, 200, 2560, 1440",
        "DARK, 200, 2560, 1440"
    })
    void everyPanelIsPaintedInEveryThemeAndSize(Theme theme, int zoom, int width, int height)
            throws Exception {
        BufferedImage image = with(theme, zoom, width, height, Stage::paint);
        Path folder = Files.createDirectories(Path.of("target", "screenshots"));
        ImageIO.write(
                image, "png", folder.resolve("panels-" + theme + "-" + zoom + ".png").toFile());
        assertThat(pixels(image, LimbColors.of(Limb.RIGHT_HAND))).isGreaterThan(1000);
        assertThat(pixels(image, LimbColors.of(Limb.LEFT_HAND))).isGreaterThan(1000);
        assertThat(pixels(image, LimbColors.of(Limb.RIGHT_FOOT))).isGreaterThan(300);
    }

    @ParameterizedTest(name = "{0} at {1} %")
    @CsvSource({
        "LIGHT, 100, 1280, 800",
        "DARK, 100, 1280, 800",
        "LIGHT, 200, 2560, 1440",
        "DARK, 200, 2560, 1440"
    })
    void searchAndLadderArePaintedInEveryThemeAndSize(Theme theme, int zoom, int width, int height)
            throws Exception {
        Map<String, Consumer<Panels>> views = new LinkedHashMap<>();
        views.put("ladder", panels -> panels.goTo(Panels.LADDER));
        views.put(
                "search-role",
                panels -> {
                    panels.goTo(Panels.SEARCH);
                    press(panels, "Search");
                });
        views.put(
                "search-groove",
                panels -> {
                    panels.goTo(Panels.SEARCH);
                    press(panels, "From a groove");
                    press(panels, "From the grid");
                });
        for (var view : views.entrySet()) {
            BufferedImage image =
                    with(
                            theme,
                            zoom,
                            width,
                            height,
                            stage -> {
                                view.getValue().accept(stage.panels);
                                stage.layOut();
                                stage.layOut();
                                return stage.paint();
                            });
            Path folder = Files.createDirectories(Path.of("target", "screenshots"));
            String name = "%s-%s-%d.png".formatted(view.getKey(), theme, zoom);
            ImageIO.write(image, "png", folder.resolve(name).toFile());
            BufferedImage lower = image.getSubimage(0, height * 5 / 8, width, height / 4);
            assertThat(pixels(lower, Inks.FOCUS.color()))
                    .as("bars of difficulty in %s", name)
                    .isGreaterThan(400);
        }
    }

    private static JTabbedPane tabs(Container within) {
        return find(within, JTabbedPane.class, lower -> true).get(0);
    }

    /** All components of a kind, in their order. */
    private static <C extends Component> List<C> find(
            Container within, Class<C> type, Predicate<C> which) {
        List<C> found = new ArrayList<>();
        for (Component child : within.getComponents()) {
            if (type.isInstance(child) && which.test(type.cast(child))) {
                found.add(type.cast(child));
            }
            if (child instanceof Container inner) {
                found.addAll(find(inner, type, which));
            }
        }
        return found;
    }

    private static void press(Container within, String text) {
        for (AbstractButton button : buttons(within)) {
            if (button.getText().equals(text)) {
                button.doClick(0);
                return;
            }
        }
        throw new AssertionError("no button is called " + text);
    }

    private static List<AbstractButton> buttons(Container within) {
        List<AbstractButton> buttons = new ArrayList<>();
        for (Component child : within.getComponents()) {
            if (child instanceof AbstractButton button && button.getText() != null) {
                buttons.add(button);
            } else if (child instanceof Container inner) {
                buttons.addAll(buttons(inner));
            }
        }
        return buttons;
    }

    @ParameterizedTest(name = "{0} {1} at {2} %")
    @CsvSource({
        "Mixer, LIGHT, 100, 1280, 800",
        "Mixer, DARK, 100, 1280, 800",
        "Mixer, LIGHT, 200, 2560, 1600",
        "Mixer, DARK, 200, 2560, 1600",
        "Practice, LIGHT, 100, 1280, 800",
        "Practice, DARK, 100, 1280, 800",
        "Practice, LIGHT, 200, 2560, 1600",
        "Practice, DARK, 200, 2560, 1600"
    })
    void lowerTabsFitTheirPlace(String tab, Theme theme, int zoom, int width, int height)
            throws Exception {
        BufferedImage image =
                with(
                        theme,
                        zoom,
                        width,
                        height,
                        stage -> {
                            stage.panels.goTo(tab);
                            stage.panels.doLayout();
                            stage.layOut();
                            stage.layOut();
                            JScrollPane scroll =
                                    (JScrollPane) tabs(stage.panels).getSelectedComponent();
                            Dimension view = scroll.getViewport().getView().getPreferredSize();
                            assertThat(view.height).isLessThanOrEqualTo(scroll.getHeight());
                            return stage.paint();
                        });
        Path folder = Files.createDirectories(Path.of("target", "screenshots"));
        ImageIO.write(
                image,
                "png",
                folder.resolve("panels-%s-%s-%d.png".formatted(tab, theme, zoom)).toFile());
    }

    @ParameterizedTest(name = "{0} at {1} %")
    @CsvSource({
        "LIGHT, 100, 1280, 800",
        "DARK, 100, 1280, 800",
        "LIGHT, 200, 2560, 1440",
        "DARK, 200, 2560, 1440"
    })
    void thePhraseIsPaintedAsAStripWithItsPlayhead(Theme theme, int zoom, int width, int height)
            throws Exception {
        BufferedImage image =
                painted(
                        theme,
                        zoom,
                        width,
                        height,
                        stage -> {
                            stage.panels.phrase().makeOfOne();
                            stage.panels.goTo(Panels.PHRASE);
                            stage.playhead.at(new Place(5, 9), Optional.empty(), List.of());
                        });
        write(image, "phrase-" + theme + "-" + zoom);
        // Rounded corners and letters take some of each box; the strip is 60 pixels high.
        int box = zoom * zoom / 10;
        assertThat(pixels(image, Inks.TIME.color())).isGreaterThan(10L * box);
        assertThat(pixels(image, Inks.FILL.color())).isGreaterThan(2L * box);
        assertThat(pixels(image, Inks.PUNCH.color())).isGreaterThan(2L * box);
        assertThat(pixels(image, Inks.LIGHT.color())).as("the playhead").isGreaterThan(60);
    }

    @ParameterizedTest(name = "{0} at {1} %")
    @CsvSource({
        "LIGHT, 100, 1280, 800",
        "DARK, 100, 1280, 800",
        "LIGHT, 200, 2560, 1440",
        "DARK, 200, 2560, 1440"
    })
    void aChordThatCannotBeReadIsMarkedInTheBand(Theme theme, int zoom, int width, int height)
            throws Exception {
        BufferedImage right =
                painted(
                        theme,
                        zoom,
                        width,
                        height,
                        stage -> band(stage, "swing", "Dm7 G7 | Cmaj7 %"));
        BufferedImage wrong =
                painted(
                        theme,
                        zoom,
                        width,
                        height,
                        stage -> band(stage, "salsa", "Dm7 H7 | Cmaj7 %"));
        write(right, "band-" + theme + "-" + zoom);
        write(wrong, "band-fault-" + theme + "-" + zoom);
        assertThat(pixels(wrong, Inks.FAULT.color()))
                .isGreaterThan(pixels(right, Inks.FAULT.color()) + 20);
    }

    private static void band(Stage stage, String style, String chords) {
        var now = stage.session.session();
        stage.session.edit(
                "Band",
                now.with(
                        now.draft()
                                .with(Backing.DEFAULT.withOn(true).withStyle(style))
                                .typed(chords)));
        stage.panels.goTo(Panels.BAND);
    }

    /** What the panels look like once something was done and everything has its place again. */
    private static BufferedImage painted(
            Theme theme, int zoom, int width, int height, Consumer<Stage> work) throws Exception {
        Stage[] kept = new Stage[1];
        with(
                theme,
                zoom,
                width,
                height,
                stage -> {
                    work.accept(stage);
                    kept[0] = stage;
                    return stage;
                });
        for (int i = 0; i < 3; i++) {
            EventQueue.invokeAndWait(() -> kept[0].layOut());
        }
        BufferedImage[] image = new BufferedImage[1];
        EventQueue.invokeAndWait(() -> image[0] = kept[0].paint());
        return image[0];
    }

    private static void write(BufferedImage image, String name) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "screenshots"));
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    }

    private static final List<String> TABS =
            List.of(
                    "Possibilities",
                    "Voicing",
                    "Layers",
                    "Phrase",
                    "Band",
                    "Search",
                    "Ladder",
                    "Mixer",
                    "Practice");

    @Test
    void whateverTakesTheKeysHasANameForThoseWhoDoNotSeeIt() throws Exception {
        List<String> nameless =
                with(
                        Theme.LIGHT,
                        100,
                        1280,
                        800,
                        stage -> {
                            stage.panels.phrase().makeOfOne();
                            stage.panels.showLesson(true);
                            TABS.forEach(stage.panels::goTo);
                            return find(stage.panels, JComponent.class, c -> nameless(c)).stream()
                                    .map(c -> c.getClass().getName() + " in " + owner(c))
                                    .distinct()
                                    .toList();
                        });
        assertThat(nameless).isEmpty();
    }

    /** Parts that others are made of, and what only holds others, need no name. */
    private static boolean nameless(JComponent c) {
        boolean partOfAnother =
                SwingUtilities.getAncestorOfClass(JSpinner.class, c) != null
                        || SwingUtilities.getAncestorOfClass(JComboBox.class, c) != null
                        || SwingUtilities.getAncestorOfClass(JScrollBar.class, c) != null;
        boolean operated =
                c instanceof AbstractButton
                        || c instanceof JTextComponent
                        || c instanceof JComboBox
                        || c instanceof JSpinner
                        || c instanceof JSlider
                        || c instanceof JList
                        || c instanceof JTable
                        || c.getInputMap().size() > 0;
        String name = c.getAccessibleContext() == null ? "" : accessibleName(c);
        return operated && !partOfAnother && c.isFocusable() && name.isBlank();
    }

    private static String accessibleName(JComponent c) {
        return Optional.ofNullable(c.getAccessibleContext().getAccessibleName()).orElse("");
    }

    private static String owner(Component c) {
        Component at = c;
        while (at != null && !at.getClass().getName().startsWith("org.kitweft")) {
            at = at.getParent();
        }
        return String.valueOf(at == null ? null : at.getClass().getSimpleName());
    }

    @Test
    void mnemonicsDoNotClashWithinATabNorWithMenus() throws Exception {
        List<String> clashes =
                with(
                        Theme.LIGHT,
                        100,
                        1280,
                        800,
                        stage -> {
                            stage.panels.phrase().makeOfOne();
                            List<String> twice = new ArrayList<>();
                            for (String tab : TABS) {
                                stage.panels.goTo(tab);
                                stage.layOut();
                                Map<Integer, String> taken = new LinkedHashMap<>();
                                "FEKPVH".chars().forEach(key -> taken.put(key, "a menu"));
                                for (JComponent c :
                                        find(stage.panels, JComponent.class, x -> true)) {
                                    int key = seen(c) ? mnemonic(c) : 0;
                                    String before = key == 0 ? null : taken.put(key, text(c));
                                    if (before != null) {
                                        twice.add(
                                                "%s: Alt+%c is %s and %s"
                                                        .formatted(tab, key, before, text(c)));
                                    }
                                }
                            }
                            return twice;
                        });
        assertThat(clashes).isEmpty();
    }

    /** As {@code isShowing} says, but for the window that is not there. */
    private static boolean seen(Component c) {
        for (Component at = c; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private static int mnemonic(JComponent c) {
        if (c instanceof AbstractButton button) {
            return button.getMnemonic();
        }
        return c instanceof JLabel label ? label.getDisplayedMnemonic() : 0;
    }

    private static String text(JComponent c) {
        return c instanceof AbstractButton button ? button.getText() : ((JLabel) c).getText();
    }

    /** At 200 % on a small screen the middle scrolls, and each tab has the room it needs. */
    @Test
    void largeTypeOnASmallScreenLeavesTheTabsTheirRoom() throws Exception {
        int[] heights =
                with(
                        Theme.LIGHT,
                        200,
                        1280,
                        800,
                        stage -> {
                            stage.panels.goTo("Mixer");
                            stage.layOut();
                            JTabbedPane lower = tabs(stage.panels);
                            HighEnough middle =
                                    find(stage.panels, HighEnough.class, m -> true).get(0);
                            return new int[] {
                                lower.getHeight(),
                                middle.getHeight(),
                                middle.getParent().getHeight(),
                                ((JViewport) middle.getParent()).getViewPosition().y
                            };
                        });
        assertThat(heights[0]).as("the tabs").isGreaterThan(380);
        assertThat(heights[1]).as("the middle scrolls").isGreaterThan(heights[2]);
        assertThat(heights[3]).as("and has scrolled to the tab").isGreaterThan(100);
    }

    /** Nobody scrolls while a learner looks on from across the room. */
    @ParameterizedTest(name = "{0} steps a beat")
    @ValueSource(ints = {2, 4, 6, 8})
    void theLargeViewShowsAWholeBarOnASmallScreen(int steps) throws Exception {
        JViewport grid =
                with(
                        Theme.LIGHT,
                        100,
                        1280,
                        800,
                        stage -> {
                            Recipe now = stage.session.recipe();
                            Recipe next = now.with(now.grid().withStepsPerBeat(steps));
                            stage.session.edit("Steps", next);
                            stage.panels.showLarge(true);
                        },
                        stage -> {
                            write(stage.paint(), "large-view-" + steps);
                            return find(stage.panels.groove(), JScrollPane.class, s -> true)
                                    .get(0)
                                    .getViewport();
                        });
        int bar = grid.getView().getPreferredSize().width;
        assertThat(bar).isLessThanOrEqualTo(grid.getWidth()).isGreaterThan(grid.getWidth() / 2);
    }

    /**
     * With the lesson beside them possibilities need no scrolling to the side, and say how many.
     */
    @ParameterizedTest(name = "{0} at {1} %")
    @CsvSource({
        "LIGHT, 100, 1280, 800",
        "DARK, 100, 1280, 800",
        "LIGHT, 200, 2560, 1600",
        "DARK, 200, 2560, 1600"
    })
    void lessonAndPossibilitiesHaveRoomSideBySide(Theme theme, int zoom, int width, int height)
            throws Exception {
        Map<String, Integer> missing =
                with(
                        theme,
                        zoom,
                        width,
                        height,
                        stage -> stage.panels.showLesson(true),
                        stage -> {
                            write(stage.paint(), "lesson-%s-%d".formatted(theme, zoom));
                            PossibilitiesPanel panel =
                                    find(stage.panels, PossibilitiesPanel.class, p -> true).get(0);
                            JComponent all =
                                    (JComponent)
                                            find(panel, JScrollPane.class, s -> true)
                                                    .get(0)
                                                    .getViewport()
                                                    .getView();
                            JLabel playable =
                                    find(panel, JLabel.class, l -> l.getText().endsWith("playable"))
                                            .get(0);
                            Component lesson = stage.panels.lesson();
                            return Map.of(
                                    "possibilities",
                                    all.getPreferredSize().width - panel.getWidth(),
                                    "count",
                                    playable.getPreferredSize().width - playable.getWidth(),
                                    "lesson",
                                    lesson.getMinimumSize().width - lesson.getWidth());
                        });
        assertThat(missing.values()).as("pixels missing in %s", missing).allMatch(p -> p <= 0);
    }

    /** With tempo, swing and chords over it; the window's menu bar takes some of the screen. */
    @ParameterizedTest(name = "{0} at {1} %, {2} wide")
    @CsvSource({
        "LIGHT, 100, 1280, 776",
        "DARK, 100, 1280, 776",
        "LIGHT, 100, 1920, 1050",
        "LIGHT, 200, 2560, 1552"
    })
    void gridAndStaffAreSeenWhole(Theme theme, int zoom, int width, int height) throws Exception {
        Map<String, Integer> missing =
                with(
                        theme,
                        zoom,
                        width,
                        height,
                        stage -> {
                            stage.session.edit("Swing", stage.session.session().withSwing(62));
                            band(stage, "swing", "Dm7 G7");
                            stage.panels.goTo(Panels.POSSIBILITIES);
                        },
                        stage -> {
                            write(stage.paint(), "staff-%s-%d-%d".formatted(theme, zoom, width));
                            StaffPanel staff =
                                    find(stage.panels, StaffPanel.class, s -> true).get(0);
                            return Map.of(
                                    "grid", outOfSight(stage.panels.groove()),
                                    "staff", outOfSight(staff));
                        });
        assertThat(missing.values()).as("pixels missing in %s", missing).allMatch(p -> p <= 0);
    }

    /** How much higher than its view is what a panel scrolls. */
    private static int outOfSight(Container panel) {
        JViewport view = find(panel, JScrollPane.class, s -> true).get(0).getViewport();
        return view.getView().getPreferredSize().height - view.getHeight();
    }

    /** However long the line below the grid is that says what cannot be played. */
    @Test
    void aConflictLeavesTheKitItsRoomBesideTheLesson() throws Exception {
        int kit =
                with(
                        Theme.LIGHT,
                        100,
                        1280,
                        776,
                        stage -> {
                            Recipe now = stage.session.recipe();
                            Layer ride =
                                    new Layer(
                                            Limb.RIGHT_HAND,
                                            now.kit().find("ride"),
                                            4,
                                            Figure.parse("x"));
                            stage.session.edit(
                                    "Layer", now.with(now.voicing().withLayers(List.of(ride))));
                            stage.panels.showLesson(true);
                        },
                        stage -> {
                            assertThat(outOfSight(stage.panels.groove())).isLessThanOrEqualTo(0);
                            return stage.panels.kit().getWidth();
                        });
        assertThat(kit).isGreaterThan(1280 / 4);
    }

    @Test
    void whatIsStruckLightsUp() throws Exception {
        long quiet =
                with(
                        Theme.LIGHT,
                        100,
                        1280,
                        800,
                        stage -> pixels(stage.paint(), Inks.METAL.color()));
        long struck =
                with(
                        Theme.LIGHT,
                        100,
                        1280,
                        800,
                        stage -> {
                            stage.playhead.at(
                                    new Place(1, 1),
                                    stage.session.groove().hitsInBar(1).subList(0, 1));
                            return pixels(stage.paint(), Inks.METAL.color());
                        });
        assertThat(struck)
                .as("the hi-hat is no longer as pale as a cymbal at rest")
                .isLessThan(quiet);
    }

    @ParameterizedTest
    @EnumSource(
            value = Theme.class,
            names = {"LIGHT", "DARK"})
    void aConflictIsSeenInTheGrid(Theme theme) throws Exception {
        long marked =
                with(
                        theme,
                        100,
                        1280,
                        800,
                        stage -> {
                            var recipe = stage.session.recipe();
                            stage.session.edit(
                                    "Move",
                                    recipe.with(
                                            recipe.voicing()
                                                    .withStroke(
                                                            0, recipe.kit().find("hi-hat.foot"))));
                            return pixels(stage.paint(), Inks.FAULT_SHADE.color());
                        });
        assertThat(marked).isGreaterThan(500);
    }
}
