package org.kitweft.ui.window;

import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import javax.swing.WindowConstants;
import javax.swing.text.JTextComponent;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Voicing;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Player;
import org.kitweft.sound.synth.Bank;
import org.kitweft.ui.lesson.LessonDesk;
import org.kitweft.ui.mix.MixText;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.sticking.StickingChooser;
import org.kitweft.ui.task.SwingTasks;
import org.kitweft.ui.theme.Theme;

/** The window of the program. Start at {@link #open}. */
public final class MainWindow {
    private static final System.Logger LOG = System.getLogger(MainWindow.class.getName());

    private final JFrame frame = new JFrame("Kitweft");
    private final StatusBar status = new StatusBar();
    private final Commands commands = new Commands(status::settle);
    private final Playhead playhead = new Playhead();
    private final Looks looks;
    private final SwingTasks tasks;
    private final SessionModel session;
    private final PlayModel play;
    private final LessonDesk desk;
    private final FileDialogs files;
    private final LessonCommands lessons;
    private final ExportCommands exports;
    private final HandoutCommands handouts;
    private final KitCommands kits;
    private final Panels panels;
    private final HelpDialogs help;
    private final Path settingsFile;
    private WindowSettings settings;
    private boolean wasLarge;

    private MainWindow(
            SessionModel session, WindowSettings settings, Path settingsFile, Bank.Source bank) {
        this.settings = settings;
        this.settingsFile = settingsFile;
        looks = new Looks(settings.theme(), settings.zoom());
        tasks = new SwingTasks(status);
        this.session = session;
        // The first to hear of an edit: what others say about it stands.
        session.addListener(status::settle);
        Session first = session.session();
        session.begin(
                first.with(new Tempo(settings.tempo()))
                        .with(first.playing().with(MixText.parse(settings.mix()))));
        play = new PlayModel(session, playhead, EventQueue::invokeLater, status, tasks);
        desk = new LessonDesk(session);
        files = new FileDialogs(frame, settings.folder());
        lessons = new LessonCommands(frame, session, desk, files, tasks, status);
        exports = new ExportCommands(session, play, files, tasks, status, () -> heard(bank));
        handouts =
                new HandoutCommands(
                        frame,
                        session,
                        new HandoutPage(settingsFile.resolveSibling("handout.properties")),
                        files,
                        tasks,
                        status);
        kits = new KitCommands(session, files, tasks, status);
        help = new HelpDialogs(frame);
        panels =
                new Panels(
                        session,
                        playhead,
                        play,
                        status,
                        this::chooseSticking,
                        () -> files.toOpen("Read MIDI file", "MIDI file", "mid", "midi", "smf"),
                        settings.staff(),
                        tasks);
        panels.weighing().use(settings.weights());
        build();
    }

    /**
     * Opens the window. Returns at once; must not be called on the event thread.
     *
     * @param player makes the player, off the event thread, once the window is to be seen
     * @param bank the sounds that exported sound files are made with
     * @param lesson a lesson file to open, if one is wanted
     */
    public static void open(Supplier<Player> player, Bank.Source bank, Optional<Path> lesson) {
        Path file =
                WindowSettings.file(
                        System.getenv(),
                        System.getProperty("os.name", ""),
                        Path.of(System.getProperty("user.home", ".")));
        start(file, player, bank, lesson, window -> {});
    }

    /** As {@link #open}, with settings in a file; tells on the event thread when it stands. */
    static void start(
            Path settingsFile,
            Supplier<Player> player,
            Bank.Source bank,
            Optional<Path> lesson,
            Consumer<MainWindow> stands) {
        // Reading the kit and weaving take about as long as setting up the looks: side by side.
        // Nobody else knows the model yet; from then on it is the event thread's.
        CompletableFuture<SessionModel> first =
                CompletableFuture.supplyAsync(() -> new SessionModel(lastOrOpening(settingsFile)));
        EventQueue.invokeLater(
                () -> stands.accept(stand(first, settingsFile, player, bank, lesson)));
    }

    private static Session lastOrOpening(Path settingsFile) {
        try {
            return LastGroove.read(settingsFile).orElseGet(Session::opening);
        } catch (IOException e) {
            // The file stays as it is until the window closes; nobody can be told before it stands.
            LOG.log(System.Logger.Level.WARNING, "last groove not read: {0}", e.getMessage());
            return Session.opening();
        }
    }

    private static MainWindow stand(
            CompletableFuture<SessionModel> first,
            Path settingsFile,
            Supplier<Player> player,
            Bank.Source bank,
            Optional<Path> lesson) {
        WindowSettings settings = WindowSettings.FIRST;
        Optional<String> fault = Optional.empty();
        try {
            settings = WindowSettings.read(settingsFile);
        } catch (IOException e) {
            fault = Optional.of("settings not read: " + e.getMessage());
        }
        settings.theme().install(settings.zoom());
        MainWindow window = new MainWindow(first.join(), settings, settingsFile, bank);
        fault.ifPresent(window.status::fault);
        window.panels.onFirstLook(() -> window.begin(player, lesson));
        window.frame.setVisible(true);
        return window;
    }

    JFrame frame() {
        return frame;
    }

    SessionModel session() {
        return session;
    }

    ExportCommands exports() {
        return exports;
    }

    /** The bank that is heard: the user's own, if one was chosen. */
    private Bank.Source heard(Bank.Source builtIn) {
        String own = settings.bank();
        return own.isEmpty() ? builtIn : () -> Bank.read(Path.of(own));
    }

    /** The menus' commands and their keys. */
    private void fillMenus() {
        wire();
        JMenuBar bar = frame.getJMenuBar();
        commands.fill(bar);
        kits.addTo(bar.getMenu(Command.Group.KIT.ordinal()));
        new SoundMenu(play, tasks, files, status, file -> settings = settings.withBank(file))
                .addTo(bar.getMenu(Command.Group.PLAY.ordinal()));
        looks.onChange(commands::refresh);
        follow();
    }

    /** What need not be there before the first look. */
    private void begin(Supplier<Player> player, Optional<Path> lesson) {
        fillMenus();
        handouts.begin();
        panels.transport().focusTarget().requestFocusInWindow();
        if (status.text().isBlank()) {
            status.note("The space bar plays. F1 shows all keys.");
        }
        tasks.run(
                "",
                progress -> player.get(),
                opened -> {
                    play.attach(opened);
                    if (!settings.bank().isEmpty()) {
                        opened.useBank(Path.of(settings.bank()));
                    }
                },
                failure -> status.fault("no player: " + failure.getMessage()));
        panels.begin();
        panels.showLesson(settings.lessonDrawer());
        lesson.ifPresent(lessons::open);
        commands.refresh();
    }

    private void wire() {
        commands.on(Command.NEW_LESSON, lessons::begin);
        commands.on(Command.OPEN_LESSON, lessons::open);
        commands.on(Command.SAVE_LESSON, lessons::save);
        commands.on(Command.SAVE_LESSON_AS, lessons::saveAs);
        commands.on(Command.ADD_GROOVE, this::addGroove);
        commands.on(Command.HANDOUT_PAGE, handouts::page);
        commands.on(Command.HANDOUT_PDF, handouts::pdf);
        commands.on(Command.PRINT_HANDOUT, handouts::print);
        commands.on(Command.EXPORT_MIDI, exports::midi);
        commands.on(Command.EXPORT_WAVE, exports::wave);
        commands.on(Command.EXPORT_PICTURE, () -> exports.picture(panels.groove()::picture));
        commands.on(Command.EXPORT_STAFF, exports::staff);
        commands.on(Command.QUIT, this::quit);
        commands.on(Command.UNDO, session::undo);
        commands.on(Command.REDO, session::redo);
        commands.on(Command.CHOOSE_STICKING, this::chooseSticking);
        commands.on(Command.SWAP_HANDS, () -> sticking("Swap hands", Sticking::handsSwapped));
        commands.on(Command.START_LATER, () -> sticking("Start later", s -> s.rotated(1)));
        commands.on(Command.START_EARLIER, () -> sticking("Start earlier", s -> s.rotated(-1)));
        commands.on(Command.STROKES_BACK, this::strokesBack);
        commands.on(Command.PLAIN_VOICING, this::plainVoicing);
        commands.on(Command.LEFT_HANDED, kits::toggleLeftHanded);
        commands.on(Command.MIRROR_KIT, kits::mirrorKit);
        commands.on(Command.OPEN_KIT, kits::open);
        commands.on(Command.PLAY, this::playUnlessTyping);
        commands.on(Command.PLAY_ALWAYS, play::toggle);
        commands.on(Command.TAP, panels.transport()::tap);
        commands.on(Command.FASTER, () -> tempo(2));
        commands.on(Command.SLOWER, () -> tempo(-2));
        commands.on(Command.CLICK, () -> play.change(s -> s.withClick(!s.click())));
        commands.on(Command.LOOP, () -> play.change(s -> s.withLoops(isLoop() ? 1 : 0)));
        commands.on(Command.PLAY_PHRASE, () -> panels.phrase().plays(!panels.phrase().plays()));
        commands.on(Command.BAND, () -> panels.phrase().band(!panels.phrase().band()));
        commands.on(Command.GO_PHRASE, () -> panels.goTo(Panels.PHRASE));
        commands.on(Command.GO_BAND, () -> panels.goTo(Panels.BAND));
        commands.on(Command.GO_STICKING, () -> panels.sticking().focusTarget().requestFocus());
        commands.on(Command.GO_KIT, () -> panels.kit().focusTarget().requestFocus());
        commands.on(Command.GO_GROOVE, () -> panels.groove().focusTarget().requestFocus());
        commands.on(Command.GO_POSSIBILITIES, () -> panels.goTo(Panels.POSSIBILITIES));
        commands.on(Command.GO_SEARCH, () -> panels.goTo(Panels.SEARCH));
        commands.on(Command.GO_LADDER, () -> panels.goTo(Panels.LADDER));
        commands.on(Command.GO_MIXER, () -> panels.goTo(Panels.MIXER));
        commands.on(Command.GO_PRACTICE, () -> panels.goTo(Panels.PRACTICE));
        commands.on(Command.LESSON_DRAWER, () -> panels.showLesson(!panels.isLessonShown()));
        commands.on(Command.LARGE_VIEW, this::toggleLarge);
        commands.on(Command.ZOOM_IN, looks::larger);
        commands.on(Command.ZOOM_OUT, looks::smaller);
        commands.on(Command.ZOOM_RESET, () -> looks.zoomTo(100));
        commands.on(Command.THEME_DESKTOP, () -> looks.use(Theme.DESKTOP));
        commands.on(Command.THEME_LIGHT, () -> looks.use(Theme.LIGHT));
        commands.on(Command.THEME_DARK, () -> looks.use(Theme.DARK));
        commands.on(Command.KEYS, help::keys);
        commands.on(Command.CARE, help::care);
        commands.on(Command.ABOUT, help::about);
        ask();
    }

    private void ask() {
        commands.enabledWhen(Command.UNDO, () -> session.undoName().isPresent());
        commands.enabledWhen(Command.REDO, () -> session.redoName().isPresent());
        commands.enabledWhen(
                Command.STROKES_BACK, () -> !session.recipe().voicing().strokes().isEmpty());
        commands.tickedWhen(Command.LEFT_HANDED, kits::isLeftHanded);
        commands.tickedWhen(Command.CLICK, () -> play.settings().click());
        commands.tickedWhen(Command.LOOP, this::isLoop);
        commands.tickedWhen(Command.PLAY_PHRASE, () -> panels.phrase().plays());
        commands.tickedWhen(Command.BAND, () -> panels.phrase().band());
        commands.tickedWhen(Command.LESSON_DRAWER, panels::isLessonShown);
        commands.tickedWhen(Command.LARGE_VIEW, panels::isLarge);
        commands.tickedWhen(Command.THEME_DESKTOP, () -> looks.theme() == Theme.DESKTOP);
        commands.tickedWhen(Command.THEME_LIGHT, () -> looks.theme() == Theme.LIGHT);
        commands.tickedWhen(Command.THEME_DARK, () -> looks.theme() == Theme.DARK);
        session.addListener(this::follow);
        play.addListener(commands::refresh);
    }

    private void build() {
        frame.setJMenuBar(commands.menuBar());
        frame.setContentPane(panels);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(
                new WindowAdapter() {
                    @Override
                    public void windowClosing(WindowEvent event) {
                        quit();
                    }
                });
        Rectangle screen = frame.getGraphicsConfiguration().getBounds();
        frame.setSize(
                Math.min(settings.width(), screen.width),
                Math.min(settings.height(), screen.height));
        frame.setLocationRelativeTo(null);
        if (settings.maximised()) {
            frame.setExtendedState(Frame.MAXIMIZED_BOTH);
        }
    }

    private void follow() {
        commands.text(Command.UNDO, session.undoName().orElse(""));
        commands.text(Command.REDO, session.redoName().orElse(""));
        commands.refresh();
        String name =
                desk.file()
                        .map(f -> String.valueOf(f.getFileName()))
                        .orElse(session.session().lesson().title());
        frame.setTitle(name.isBlank() ? "Kitweft" : name + " – Kitweft");
    }

    private boolean isLoop() {
        return play.settings().loops() == PlaySettings.ENDLESS;
    }

    /** The space bar belongs to text while text is typed. */
    private void playUnlessTyping() {
        boolean typing =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
                                instanceof JTextComponent text
                        && text.isEditable();
        if (!typing) {
            play.toggle();
        }
    }

    private void tempo(int by) {
        int now = session.session().tempo().beatsPerMinute() + by;
        int next = Math.max(Tempo.SLOWEST, Math.min(Tempo.FASTEST, now));
        session.keepEditing("Tempo", session.session().with(new Tempo(next)));
    }

    private void sticking(String name, UnaryOperator<Sticking> change) {
        Recipe recipe = session.recipe();
        session.edit(name, recipe.with(change.apply(recipe.sticking())));
    }

    private void strokesBack() {
        Recipe recipe = session.recipe();
        session.edit(
                "Bring strokes back", recipe.with(recipe.voicing().withStrokes(new TreeMap<>())));
    }

    private void plainVoicing() {
        Recipe recipe = session.recipe();
        session.edit("Plain voicing", recipe.with(Voicing.plain(recipe.kit())));
    }

    private void addGroove() {
        panels.showLesson(true);
        panels.lesson().addGroove();
    }

    private void chooseSticking() {
        new StickingChooser(
                        frame,
                        tasks,
                        sticking ->
                                session.edit("Choose sticking", session.session().fresh(sticking)))
                .dialog()
                .setVisible(true);
    }

    private void toggleLarge() {
        boolean large = !panels.isLarge();
        if (large) {
            wasLarge = frame.getExtendedState() == Frame.MAXIMIZED_BOTH;
            frame.setExtendedState(Frame.MAXIMIZED_BOTH);
        } else if (!wasLarge) {
            frame.setExtendedState(Frame.NORMAL);
        }
        panels.showLarge(large);
    }

    private void quit() {
        if (!lessons.mayLeave()) {
            return;
        }
        boolean maximised = frame.getExtendedState() == Frame.MAXIMIZED_BOTH;
        settings =
                settings.withTheme(looks.theme())
                        .withZoom(looks.zoom())
                        .withTempo(session.session().tempo().beatsPerMinute())
                        .withLessonDrawer(panels.isLessonShown())
                        .with(panels.weighing().weights())
                        .withStaff(panels.written())
                        .withFolder(files.folder())
                        .withMix(MixText.print(play.settings().mix()))
                        .withWindow(
                                maximised ? settings.width() : frame.getWidth(),
                                maximised ? settings.height() : frame.getHeight(),
                                maximised);
        try {
            settings.write(settingsFile);
            LastGroove.write(settingsFile, session.session());
        } catch (IOException e) {
            // Nothing that was saved is lost; the log is where a search would begin.
            LOG.log(System.Logger.Level.WARNING, "settings not kept: {0}", e.getMessage());
        }
        play.close();
        frame.dispose();
    }
}
