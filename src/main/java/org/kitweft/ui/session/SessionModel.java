package org.kitweft.ui.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.kitweft.band.Backing;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Section;
import org.kitweft.score.model.PlayedWith;

/**
 * The session of now, with undo and redo, and the groove woven from it. Panels show it and make
 * edits through it; each edit tells every listener.
 *
 * <p>For one thread: the event thread in the window, any one in tests.
 */
public final class SessionModel {
    private History<Session> history;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Recipe woven;
    private Groove groove;
    private Optional<PhrasePlan> planned = Optional.empty();
    private Optional<Phrase> phrase = Optional.empty();

    /** Starts with a session that has no past. */
    public SessionModel(Session first) {
        this.history = new History<>(first);
        this.woven = first.recipe();
        this.groove = woven.weave();
        weave();
    }

    /** Begins with another session that has no past; nobody is told. */
    public void begin(Session other) {
        history = new History<>(other);
        weave();
    }

    /** What is edited now. */
    public Session session() {
        return history.now();
    }

    /** What it is woven from. */
    public Recipe recipe() {
        return session().recipe();
    }

    /** The groove of now. */
    public Groove groove() {
        return groove;
    }

    /** The phrase being built, whether or not it plays; empty until there is one. */
    public Optional<Phrase> built() {
        return phrase;
    }

    /** What is to be heard and written now: the phrase where it is what plays, or the groove. */
    public Phrase phrase() {
        return phrase.filter(p -> session().draft().plays())
                .orElseGet(() -> new Phrase(List.of(new Section(session().role(), groove))));
    }

    /**
     * What is written over the staff: the tempo, and the chords where the band plays. Of a chart
     * longer than a phrase its first bars; none over a groove with a longer chart, which comes
     * round under other chords than those of its first time.
     */
    public PlayedWith playedWith() {
        PhraseDraft draft = session().draft();
        int bars = phrase().bars();
        return PlayedWith.at(session().tempo())
                .withChart(
                        Optional.of(draft.backing())
                                .filter(Backing::on)
                                .map(Backing::chart)
                                .filter(c -> draft.plays() || c.bars().size() <= bars)
                                .map(c -> c.first(bars)));
    }

    /** Is called after each change. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /**
     * Makes an edit that can be undone by itself. Nothing happens where nothing changes.
     *
     * @param name for people, e.g. {@code Move stroke}
     */
    public void edit(String name, Session next) {
        edit(name, next, false);
    }

    /** Edits the recipe, which can be undone by itself. */
    public void edit(String name, Recipe next) {
        edit(name, session().with(next));
    }

    /** Makes an edit that joins those of the same name just before it: typing, turning a knob. */
    public void keepEditing(String name, Session next) {
        edit(name, next, true);
    }

    /**
     * Puts something in the grid to be heard, not taken yet: what is saved with the lesson is what
     * was there before, until {@link #take} or an edit of the groove. Where a phrase plays that has
     * no section open in the grid, the groove plays instead. Joins as {@link #keepEditing} does.
     */
    public void hear(String name, Session next) {
        Session heard = next.heardOver(session());
        boolean elsewhere = heard.draft().plays() && heard.draft().open().isEmpty();
        edit(name, elsewhere ? heard.with(heard.draft().withPlays(false)) : heard, true);
    }

    /** Takes what is heard: it is the user's own from now on, and undone together with hearing. */
    public void take() {
        edit(undoName().orElse("Take what is heard"), session().taken(), true);
        seal();
    }

    private void edit(String name, Session next, boolean joins) {
        if (!next.equals(session())) {
            history.edit(name, next, joins);
            changed();
        }
    }

    /** Ends the typing or turning under way: what follows is undone for itself. */
    public void seal() {
        history.seal();
    }

    /** What {@link #undo()} would take back, in words. */
    public Optional<String> undoName() {
        return history.undoName();
    }

    /** What {@link #redo()} would bring back, in words. */
    public Optional<String> redoName() {
        return history.redoName();
    }

    /** Takes back the last edit, if there is one. */
    public void undo() {
        if (history.undo()) {
            changed();
        }
    }

    /** Brings back what was undone last, if anything was. */
    public void redo() {
        if (history.redo()) {
            changed();
        }
    }

    private void weave() {
        if (!woven.equals(recipe())) {
            woven = recipe();
            groove = woven.weave();
        }
        Optional<PhrasePlan> plan = session().draft().plan();
        if (!planned.equals(plan)) {
            phrase = plan.map(this::woven);
            planned = plan;
        }
    }

    /** Only what is new in it is woven anew. */
    private Phrase woven(PhrasePlan plan) {
        Map<PlannedSection, Section> known = new HashMap<>();
        for (int i = 0; i < phrase.map(p -> p.sections().size()).orElse(0); i++) {
            known.put(planned.orElseThrow().sections().get(i), phrase.get().sections().get(i));
        }
        return new Phrase(
                plan.sections().stream()
                        .map(section -> known.computeIfAbsent(section, PlannedSection::weave))
                        .toList());
    }

    private void changed() {
        weave();
        listeners.forEach(Runnable::run);
    }
}
