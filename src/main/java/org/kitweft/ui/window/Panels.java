package org.kitweft.ui.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.beans.PropertyChangeEvent;
import java.beans.PropertyChangeListener;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.LayoutFocusTraversalPolicy;
import javax.swing.SwingUtilities;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.ui.explore.Exploring;
import org.kitweft.ui.explore.PossibilitiesPanel;
import org.kitweft.ui.explore.VariationPanel;
import org.kitweft.ui.explore.Weighing;
import org.kitweft.ui.groove.GrooveGrid;
import org.kitweft.ui.groove.LayerTable;
import org.kitweft.ui.groove.VoicingTable;
import org.kitweft.ui.kit.KitPanel;
import org.kitweft.ui.ladder.LadderPanel;
import org.kitweft.ui.lesson.LessonPanel;
import org.kitweft.ui.mix.MixerPanel;
import org.kitweft.ui.phrase.BandPanel;
import org.kitweft.ui.phrase.PhraseModel;
import org.kitweft.ui.phrase.PhrasePanel;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.practice.PracticePanel;
import org.kitweft.ui.search.SearchPanel;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.staff.StaffPanel;
import org.kitweft.ui.sticking.StickingBar;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.HighEnough;
import org.kitweft.ui.transport.TransportBar;

/**
 * How the panels come together: the sticking above, kit and groove side by side, counts, voicing
 * and layers below them, the lesson at the right, the transport at the foot. What is not seen at
 * first is made when it is first shown.
 */
final class Panels extends JPanel {
    private static final long serialVersionUID = 1;
    static final String POSSIBILITIES = "Possibilities";
    static final String PHRASE = "Phrase";
    static final String BAND = "Band";
    static final String SEARCH = "Search";
    static final String LADDER = "Ladder";
    static final String MIXER = "Mixer";
    static final String PRACTICE = "Practice";
    private static final String FOCUS_OWNER = "permanentFocusOwner";
    private static final Insets TAB_INSETS = new Insets(4, 9, 4, 9);
    private static final double KIT_SHARE = 0.36;
    private static final double UPPER_SHARE = 0.58;
    private static final double GROOVE_SHARE = 0.66;
    private static final double KIT_SHARE_LARGE = 0.42;
    private static final double LARGE = 1.7;
    private static final double LARGE_KIT = 1.25;

    /** Below this height, in pixels at 100 %, kit, groove and tabs scroll rather than shrink. */
    private static final int LEAST = 540;

    private static final int LEAST_LARGE = 320;

    private final transient SessionModel session;
    private final transient Notices notices;
    private final transient Playhead playhead;
    private final transient Supplier<Optional<Path>> midiFile;
    private final transient Tasks tasks;
    private final transient Weighing weighing = new Weighing();
    private final transient PlayModel play;
    private final transient PhraseModel phrase;
    private final StickingBar sticking;
    private final KitPanel kit;
    private final GrooveGrid groove;
    private final TransportBar transport;
    private final StatusBar status;
    private final JTabbedPane lower = new JTabbedPane();
    private final transient List<Supplier<Tab>> tabs = new ArrayList<>();
    private final transient Map<String, Tab> shownOnce = new HashMap<>();
    private final HighEnough middle = new HighEnough(new BorderLayout(), this::leastHeight);
    private final transient PropertyChangeListener focus = this::followFocus;
    private final StaffPanel staff;
    private final JSplitPane bars;
    private final JSplitPane sides;
    private final JSplitPane levels;
    private transient Supplier<LessonPanel> lesson;
    private transient Optional<Runnable> firstLook = Optional.empty();
    private boolean large;
    private int usualLevel;
    private int usualSide;

    Panels(
            SessionModel session,
            Playhead playhead,
            PlayModel play,
            StatusBar status,
            Runnable chooser,
            Supplier<Optional<Path>> midiFile,
            NotationOptions written,
            Tasks tasks) {
        super(new BorderLayout());
        this.session = session;
        this.notices = status;
        this.status = status;
        this.playhead = playhead;
        this.midiFile = midiFile;
        this.tasks = tasks;
        this.play = play;
        this.phrase = new PhraseModel(session, play, status);
        sticking = new StickingBar(session, status, chooser);
        kit = new KitPanel(session, playhead, play::audition);
        groove = new GrooveGrid(session, playhead);
        groove.onWays(
                words -> {
                    status.settle();
                    status.hint(words);
                },
                status::hint);
        transport = new TransportBar(session, play, System::nanoTime);
        staff =
                new StaffPanel(
                        session,
                        playhead,
                        tasks,
                        written,
                        () -> new Engraver(Fonts.load()),
                        place -> phrase.clicked(place, p -> groove.goTo(p.bar(), p.step())));
        bars = new JSplitPane(JSplitPane.VERTICAL_SPLIT, groove, staff);
        bars.setResizeWeight(GROOVE_SHARE);
        sides = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, kit, bars);
        sides.setResizeWeight(KIT_SHARE);
        fillLower();
        levels = new JSplitPane(JSplitPane.VERTICAL_SPLIT, sides, lower);
        levels.setResizeWeight(UPPER_SHARE);
        for (JSplitPane split : new JSplitPane[] {bars, sides, levels}) {
            split.setBorder(BorderFactory.createEmptyBorder());
            split.setContinuousLayout(true);
            // Keys of split panes that are commands here: they would swallow them.
            split.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .put(KeyStroke.getKeyStroke("F6"), "none");
            split.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .put(KeyStroke.getKeyStroke("F8"), "none");
        }
        middle.add(sticking, BorderLayout.NORTH);
        middle.add(levels, BorderLayout.CENTER);
        JScrollPane all = scrolling(middle);
        all.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(all, BorderLayout.CENTER);
        JPanel foot = new JPanel(new BorderLayout());
        foot.add(transport, BorderLayout.CENTER);
        foot.add(status, BorderLayout.SOUTH);
        add(foot, BorderLayout.SOUTH);
        lesson = this::makeLesson;
        divideOnce();
    }

    /** Dividers can be put only when there is a size to divide. */
    private void divideOnce() {
        levels.addComponentListener(
                new ComponentAdapter() {
                    @Override
                    public void componentResized(ComponentEvent event) {
                        if (levels.getHeight() > 0) {
                            levels.removeComponentListener(this);
                            levels.setDividerLocation(UPPER_SHARE);
                            sides.setDividerLocation((int) (levels.getWidth() * KIT_SHARE));
                            bars.setDividerLocation(
                                    (int) (levels.getDividerLocation() * GROOVE_SHARE));
                        }
                    }
                });
    }

    /**
     * A lower tab.
     *
     * @param content what it shows
     * @param focus what takes the keys when one goes to it
     */
    private record Tab(JComponent content, Supplier<Component> focus) {

        /** The first part that can take the keys does. */
        static Tab of(JComponent content) {
            return new Tab(
                    scrolling(content),
                    () ->
                            Objects.requireNonNullElse(
                                    new LayoutFocusTraversalPolicy().getFirstComponent(content),
                                    content));
        }
    }

    /** Tabs are empty until they are shown; the first one until {@link #begin()}. */
    private void fillLower() {
        lower.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
        lower.putClientProperty("JTabbedPane.tabInsets", TAB_INSETS);
        lower.getAccessibleContext().setAccessibleName("What can be done with the groove");
        tab(POSSIBILITIES, this::possibilities);
        tab("Voicing", () -> Tab.of(new VoicingTable(session, notices)));
        tab("Layers", () -> Tab.of(new LayerTable(session, notices)));
        tab(PHRASE, this::phraseTab);
        tab(BAND, this::bandTab);
        tab(SEARCH, this::search);
        tab(LADDER, this::ladder);
        tab(MIXER, this::mixer);
        tab(PRACTICE, () -> Tab.of(new PracticePanel(session, play)));
        lower.addChangeListener(
                e -> {
                    make(lower.getSelectedIndex());
                    middle.bringIntoSight(lower);
                });
    }

    private void tab(String name, Supplier<Tab> content) {
        lower.addTab(name, new JPanel());
        tabs.add(content);
    }

    /** Makes what need not be there at the first look: the staff's notes and the possibilities. */
    void begin() {
        make(lower.getSelectedIndex());
        staff.begin();
    }

    private Tab make(int index) {
        return shownOnce.computeIfAbsent(
                lower.getTitleAt(index),
                name -> {
                    Tab tab = tabs.get(index).get();
                    lower.setComponentAt(index, tab.content());
                    return tab;
                });
    }

    /** Shows a lower tab and gives it the keys. */
    void goTo(String tab) {
        int index = lower.indexOfTab(tab);
        lower.setSelectedIndex(index);
        Tab shown = make(index);
        middle.bringIntoSight(lower);
        shown.focus().get().requestFocus();
    }

    private Tab phraseTab() {
        PhrasePanel panel = new PhrasePanel(phrase, playhead, this::keepPhrase);
        return new Tab(scrolling(panel), panel::focusTarget);
    }

    private Tab bandTab() {
        BandPanel panel = new BandPanel(session);
        return new Tab(scrolling(panel), panel::focusTarget);
    }

    private Tab search() {
        SearchPanel panel =
                new SearchPanel(
                        session,
                        playhead,
                        tasks,
                        notices,
                        System::nanoTime,
                        midiFile,
                        groove::showForbidding);
        return new Tab(panel, panel::focusTarget);
    }

    private Tab mixer() {
        MixerPanel panel = new MixerPanel(session, play);
        return new Tab(scrolling(panel), panel::focusTarget);
    }

    private Tab ladder() {
        LadderPanel panel = new LadderPanel(session, playhead, tasks, notices);
        return new Tab(panel, panel::focusTarget);
    }

    private Tab possibilities() {
        Exploring exploring = new Exploring(session, tasks);
        exploring.addListener(() -> groove.show(exploring.ways()));
        VariationPanel variations =
                new VariationPanel(
                        session, exploring, weighing, playhead, tasks, System::nanoTime, notices);
        return new Tab(new PossibilitiesPanel(session, variations), variations::focusTarget);
    }

    /** What counts for a role, as the user weighs it. */
    Weighing weighing() {
        return weighing;
    }

    private static JScrollPane scrolling(JComponent content) {
        JScrollPane scroll = new JScrollPane(content);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        return scroll;
    }

    private void keepPhrase() {
        showLesson(true);
        lesson().keepPhrase();
    }

    /** How the staff is written. */
    NotationOptions written() {
        return staff.options();
    }

    /** The phrase being built. */
    PhraseModel phrase() {
        return phrase;
    }

    private int leastHeight() {
        return sticking.getPreferredSize().height + UIScale.scale(large ? LEAST_LARGE : LEAST);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .addPropertyChangeListener(FOCUS_OWNER, focus);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .removePropertyChangeListener(FOCUS_OWNER, focus);
        super.removeNotify();
    }

    /** Where the window is too low for everything, what has the keys is in sight. */
    private void followFocus(PropertyChangeEvent event) {
        if (event.getNewValue() instanceof Component owner
                && SwingUtilities.isDescendingFrom(owner, middle)) {
            middle.bringIntoSight(owner);
        }
    }

    /** Is called once, when the panels have been seen for the first time. */
    void onFirstLook(Runnable body) {
        firstLook = Optional.of(body);
    }

    @Override
    public void paint(Graphics graphics) {
        super.paint(graphics);
        firstLook.ifPresent(EventQueue::invokeLater);
        firstLook = Optional.empty();
    }

    private LessonPanel makeLesson() {
        LessonPanel made = new LessonPanel(session);
        made.setVisible(false);
        middle.add(made, BorderLayout.EAST);
        lesson = () -> made;
        return made;
    }

    /** The lesson drawer, made if need be. */
    LessonPanel lesson() {
        return lesson.get();
    }

    /** Shows or hides the lesson drawer. */
    void showLesson(boolean shown) {
        if (shown || isLessonShown()) {
            lesson().setVisible(shown);
            revalidate();
        }
    }

    /** Whether the lesson drawer is shown. */
    boolean isLessonShown() {
        for (Component component : middle.getComponents()) {
            if (component instanceof LessonPanel) {
                return component.isVisible();
            }
        }
        return false;
    }

    /** Big grid and kit only, or everything. */
    void showLarge(boolean other) {
        large = other;
        sticking.showDetails(!large);
        status.setVisible(!large);
        if (large) {
            usualLevel = levels.getDividerLocation();
            usualSide = sides.getDividerLocation();
            showLesson(false);
            levels.setBottomComponent(null);
            sides.setDividerLocation(KIT_SHARE_LARGE);
        } else {
            levels.setBottomComponent(lower);
            // Only once everything has its size again does a divider stay where it is put.
            EventQueue.invokeLater(
                    () -> {
                        validate();
                        levels.setDividerLocation(usualLevel);
                        sides.setDividerLocation(usualSide);
                    });
        }
        kit.enlarge(large ? LARGE_KIT : 1);
        groove.enlarge(large ? LARGE : 1);
        staff.enlarge(large ? LARGE : 1);
        revalidate();
    }

    /** Whether only grid and kit are shown. */
    boolean isLarge() {
        return large;
    }

    StickingBar sticking() {
        return sticking;
    }

    KitPanel kit() {
        return kit;
    }

    GrooveGrid groove() {
        return groove;
    }

    TransportBar transport() {
        return transport;
    }
}
