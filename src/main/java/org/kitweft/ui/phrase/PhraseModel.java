package org.kitweft.ui.phrase;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Place;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Role;
import org.kitweft.sound.Stretch;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.Playing;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

/**
 * The phrase being built as the window works on it: which section is chosen, what can be done to
 * it, and which of it plays. What cannot be done is told in a line. For one thread.
 */
public final class PhraseModel {
    /** How long a new phrase is where nobody has said otherwise. */
    private static final int USUAL_BARS = 8;

    private final SessionModel session;
    private final PlayModel play;
    private final Notices notices;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private int selected;
    private int newBars = USUAL_BARS;

    /** The phrase of a session. */
    public PhraseModel(SessionModel session, PlayModel play, Notices notices) {
        this.session = session;
        this.play = play;
        this.notices = notices;
        session.addListener(this::changed);
        play.addListener(this::changed);
    }

    /** Is called after each change of session, choice or playing. */
    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    private void changed() {
        selected = Math.max(0, Math.min(selected, count() - 1));
        listeners.forEach(Runnable::run);
    }

    /** The session it belongs to. */
    SessionModel session() {
        return session;
    }

    private PhraseDraft draft() {
        return session.session().draft();
    }

    /** The sections; empty until there is one. */
    Optional<PhrasePlan> plan() {
        return draft().plan();
    }

    /** How many sections there are. */
    int count() {
        return plan().map(p -> p.sections().size()).orElse(0);
    }

    /** The chosen section, from 0; empty while there is none. */
    OptionalInt selected() {
        return count() == 0 ? OptionalInt.empty() : OptionalInt.of(selected);
    }

    /** Chooses a section; beyond the ends the first or last. */
    void select(int index) {
        selected = index;
        session.seal();
        changed();
    }

    /** The section that is open in the grid. */
    OptionalInt open() {
        return draft().open();
    }

    /** Whether the band plays along. */
    public boolean band() {
        return draft().backing().on();
    }

    /** Lets the band play along, or the drums alone. */
    public void band(boolean on) {
        session.edit(
                on ? "Band on" : "Band off",
                session.session().with(draft().with(draft().backing().withOn(on))));
    }

    /** Whether the phrase is what plays. */
    public boolean plays() {
        return draft().plays();
    }

    /** Whether a section is heard, if only some bars of it. */
    boolean isHeard(int index) {
        PhrasePlan plan = plan().orElseThrow();
        Stretch stretch = play.settings().stretch();
        return !plays()
                || (plan.firstBar(index) <= stretch.lastOf(plan.bars())
                        && plan.lastBar(index) >= stretch.firstOf(plan.bars()));
    }

    /** What cannot be played in a section, in one line. */
    Optional<String> conflict(int index) {
        return session.built()
                .map(p -> p.sections().get(index).groove().conflicts())
                .filter(found -> !found.isEmpty())
                .map(found -> found.get(0).line());
    }

    /** How many bars the phrase has, or would have if it were made now. */
    int bars(boolean whetherOrNot) {
        return plan().map(PhrasePlan::bars).orElse(whetherOrNot ? newBars : 0);
    }

    /** Makes a phrase of the sticking in the grid: bars of time, a fill, a punch. */
    public void makeOfOne() {
        edit("Make phrase", s -> PhraseEdits.ofOne(s, Math.max(3, bars(true))));
        select(0);
    }

    /** The groove in the grid as one more section. */
    void addGroove() {
        if (edit("Add section", PhraseEdits::addGroove)) {
            select(count() - 1);
        }
    }

    /** The groove of a lesson's item as one more section. */
    void addItem(int index) {
        if (edit("Add section", s -> PhraseEdits.addItem(s, index))) {
            select(count() - 1);
        }
    }

    /** Moves the chosen section by places: -1 is one to the left. */
    void move(int by) {
        selected().ifPresent(i -> moveTo(i, i + by));
    }

    /** Moves a section to a place, and chooses it. */
    void moveTo(int from, int to) {
        int target = Math.max(0, Math.min(count() - 1, to));
        if (edit("Move section", s -> PhraseEdits.move(s, from, target))) {
            select(target);
        }
    }

    /** Makes the chosen section longer, or shorter. */
    void lengthen(int by) {
        selected().ifPresent(i -> barsOf(i, plan().orElseThrow().sections().get(i).bars() + by));
    }

    /** Gives a section another number of bars; turning on joins the edit before. */
    void barsOf(int index, int bars) {
        keepEditing("Section length", s -> PhraseEdits.bars(s, index, bars));
    }

    /** Gives the whole phrase another length, or the one that is made next. */
    void length(int bars) {
        if (plan().isEmpty()) {
            newBars = bars;
            changed();
        } else if (!keepEditing("Phrase length", s -> PhraseEdits.length(s, bars))) {
            changed(); // whoever shows a length goes back to the one there is
        }
    }

    /** Says what the chosen section is for. */
    void role(Role role) {
        selected().ifPresent(i -> edit("Section role", s -> PhraseEdits.role(s, i, role)));
    }

    /** Takes the chosen section out. */
    void remove() {
        selected().ifPresent(i -> edit("Remove section", s -> PhraseEdits.remove(s, i)));
    }

    /** Opens the chosen section in the grid, or closes it if it is the one that is open. */
    void toggleOpen() {
        selected()
                .ifPresent(
                        i -> {
                            if (open().equals(OptionalInt.of(i))) {
                                edit("Close section", PhraseEdits::close);
                            } else {
                                edit("Open section", s -> PhraseEdits.open(s, i));
                            }
                        });
    }

    /** Lets the phrase play, or the groove. */
    public void plays(boolean phrase) {
        if (phrase && plan().isEmpty()) {
            notices.note("There is no phrase yet: make one in the Phrase tab.");
            changed();
            return;
        }
        if (phrase != plays()) {
            // All bars: those chosen were bars of the other.
            edit(
                    phrase ? "Play phrase" : "Play groove",
                    s -> stretched(PhraseEdits.plays(s, phrase), Stretch::ofAllBars));
        }
    }

    private void play(UnaryOperator<Stretch> stretch) {
        edit("Choose bars", s -> stretched(s, stretch));
    }

    private static Session stretched(Session session, UnaryOperator<Stretch> change) {
        Playing playing = session.playing();
        return session.with(playing.with(change.apply(playing.stretch())));
    }

    /** Plays from the chosen section to the end, from its first stroke. */
    void playFrom() {
        selected()
                .ifPresent(
                        i -> {
                            PhrasePlan plan = plan().orElseThrow();
                            int first = plan.firstBar(i);
                            play.stop();
                            plays(true);
                            play(
                                    stretch ->
                                            first == 1
                                                    ? stretch.ofAllBars()
                                                    : stretch.withBars(first, plan.bars()));
                            play.play();
                        });
    }

    /** Whether the chosen section is played alone. */
    boolean isLooped() {
        return plays()
                && selected().isPresent()
                && play.settings().stretch().isCut()
                && play.settings()
                        .stretch()
                        .equals(sectionAlone(selected().getAsInt(), play.settings().stretch()));
    }

    private Stretch sectionAlone(int index, Stretch stretch) {
        PhrasePlan plan = plan().orElseThrow();
        return stretch.withBars(plan.firstBar(index), plan.lastBar(index));
    }

    /** Plays the chosen section alone, or the whole phrase again. */
    void loop(boolean alone) {
        if (alone && selected().isPresent()) {
            plays(true);
            play(stretch -> sectionAlone(selected().getAsInt(), stretch));
        } else {
            play(Stretch::ofAllBars);
        }
    }

    /**
     * A note on the staff was clicked: its stroke is shown in the grid, or it is said to which
     * section it belongs.
     *
     * @param inGrid shows a stroke of the grid
     */
    public void clicked(Place written, Consumer<Place> inGrid) {
        if (!plays()) {
            inGrid.accept(written);
            return;
        }
        int index = plan().orElseThrow().sectionAt(written.bar());
        select(index);
        Optional<Place> there = play.inGrid(written);
        if (there.isPresent()) {
            inGrid.accept(there.get());
        } else {
            notices.note(
                    "This stroke is in %s: open the section in the Phrase tab to edit it."
                            .formatted(name(index)));
        }
    }

    /** A section in words: {@code section 2, fill}. */
    String name(int index) {
        PlannedSection section = plan().orElseThrow().sections().get(index);
        return "section %d, %s".formatted(index + 1, section.role().id());
    }

    /** How many bars, in words. */
    static String bars(int bars) {
        return bars == 1 ? "1 bar" : "%d bars".formatted(bars);
    }

    /** A role as a heading. */
    static String title(Role role) {
        String id = role.id();
        return id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
    }

    private boolean edit(String name, UnaryOperator<Session> change) {
        return change(change, next -> session.edit(name, next));
    }

    private boolean keepEditing(String name, UnaryOperator<Session> change) {
        return change(change, next -> session.keepEditing(name, next));
    }

    private boolean change(UnaryOperator<Session> change, Consumer<Session> use) {
        Session next;
        try {
            next = change.apply(session.session());
        } catch (IllegalArgumentException e) {
            String line = String.valueOf(e.getMessage());
            notices.fault(line.substring(0, 1).toUpperCase(Locale.ROOT) + line.substring(1));
            return false;
        }
        use.accept(next);
        return true;
    }
}
