package org.kitweft.ui.staff;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Keys;

/**
 * The groove, or the phrase where that plays, as engraved notation under its tempo, swing and
 * chords, live with every edit. Engraving happens off the event thread; what is out of date by then
 * is dropped. A click on a note tells its place.
 */
public final class StaffPanel extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final transient Playhead playhead;
    private final transient Tasks tasks;
    private final transient Supplier<Engraver> loader;
    private final transient AtomicReference<Engraver> engraver = new AtomicReference<>();
    private final StaffView view;
    private final JScrollPane scroll;
    private transient Tasks.Running running = () -> {};
    private transient Optional<Asked> asked = Optional.empty();
    private transient Room room = Room.NONE;
    private transient NotationOptions options;
    private boolean begun;

    /** What is written, for so many staff spaces. */
    private record Asked(Phrase phrase, PlayedWith with, double width) {}

    /**
     * A staff for the session.
     *
     * @param first how it is written at first
     * @param loader makes the engraver, off the event thread, when it is first needed
     * @param chosen gets the place, in what is written, of a note that is clicked
     */
    public StaffPanel(
            SessionModel session,
            Playhead playhead,
            Tasks tasks,
            NotationOptions first,
            Supplier<Engraver> loader,
            Consumer<Place> chosen) {
        super(new BorderLayout());
        this.session = session;
        this.playhead = playhead;
        this.tasks = tasks;
        this.options = first;
        this.loader = loader;
        view = new StaffView(playhead);
        view.getAccessibleContext().setAccessibleName("Staff");
        view.setToolTipText("Click a note to find its stroke; the menu key or a right click: view");
        StaffMenu menu = new StaffMenu(options, this::write);
        view.setComponentPopupMenu(menu);
        for (String key : List.of("CONTEXT_MENU", "shift F10")) {
            Keys.bind(view, key, () -> menu.show(view, view.getWidth() / 4, 0));
        }
        scroll = new JScrollPane(view);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
        session.addListener(this::engrave);
        playhead.addListener(this::followPlayhead);
        scroll.getViewport()
                .addComponentListener(
                        new ComponentAdapter() {
                            @Override
                            public void componentResized(ComponentEvent event) {
                                engrave();
                            }
                        });
        view.addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mousePressed(MouseEvent event) {
                        view.placeAt(event.getX(), event.getY()).ifPresent(chosen);
                    }
                });
    }

    /** How the staff is written now. */
    public NotationOptions options() {
        return options;
    }

    /** Writes the staff so from now on. */
    private void write(NotationOptions other) {
        options = other;
        engraveAnew();
    }

    /** Larger notes, for showing across the room. */
    public void enlarge(double factor) {
        view.enlarge(factor);
        engraveAnew();
    }

    private void engraveAnew() {
        asked = Optional.empty();
        room = Room.NONE;
        engrave();
    }

    /** Engraves from now on; until then the staff is empty, for the first look must be quick. */
    public void begin() {
        begun = true;
        engrave();
    }

    private void engrave() {
        int width = scroll.getViewport().getWidth();
        if (width <= 0 || !begun) {
            return;
        }
        Asked ask = new Asked(session.phrase(), session.playedWith(), view.spaces(width));
        if (asked.equals(Optional.of(ask))) {
            return;
        }
        asked = Optional.of(ask);
        NotationOptions now = options;
        Room before = room;
        running.stop();
        running =
                tasks.run(
                        "",
                        progress ->
                                Engraving.of(
                                        ask.phrase(),
                                        ask.with(),
                                        now,
                                        engraver(),
                                        ask.width(),
                                        before),
                        this::show,
                        failure -> view.fault("No staff: " + failure.getMessage()));
    }

    private void show(Engraving engraved) {
        room = engraved.room();
        view.show(engraved);
    }

    /** Two threads may both load it once; the engraver is immutable, either will do. */
    private Engraver engraver() {
        Engraver loaded = engraver.get();
        if (loaded == null) {
            loaded = loader.get();
            engraver.set(loaded);
        }
        return loaded;
    }

    private void followPlayhead() {
        view.repaint();
        playhead.written()
                .flatMap(view::lineOf)
                .filter(line -> view.getHeight() > scroll.getViewport().getHeight())
                .ifPresent(view::scrollRectToVisible);
    }
}
