package org.kitweft.ui.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * A value with all it was before and all that was undone. Values are immutable, so nothing is
 * copied.
 *
 * @param <S> the kind of value
 */
final class History<S> {
    /** More than anybody undoes; keeps a day's work from growing without bound. */
    private static final int MOST = 1000;

    private record Step<S>(String name, S value) {}

    private final Deque<Step<S>> before = new ArrayDeque<>();
    private final Deque<Step<S>> undone = new ArrayDeque<>();
    private S now;
    private boolean open;

    History(S now) {
        this.now = now;
    }

    S now() {
        return now;
    }

    /**
     * Moves on to another value.
     *
     * @param name of the edit, for people
     * @param joins whether it joins the edit before it, if that had the same name and was not
     *     {@linkplain #seal() sealed}: so a typed word is undone as one
     */
    void edit(String name, S next, boolean joins) {
        Step<S> last = before.peek();
        boolean joined = joins && open && last != null && last.name().equals(name);
        if (!joined) {
            before.push(new Step<>(name, now));
            if (before.size() > MOST) {
                before.removeLast();
            }
        }
        undone.clear();
        now = next;
        open = joins;
    }

    /** Ends the edit under way: the next one stands for itself. */
    void seal() {
        open = false;
    }

    Optional<String> undoName() {
        return Optional.ofNullable(before.peek()).map(Step::name);
    }

    Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(Step::name);
    }

    /** Back to the value before the last edit; false if there is none. */
    boolean undo() {
        return move(before, undone);
    }

    /** Forward again; false if nothing was undone. */
    boolean redo() {
        return move(undone, before);
    }

    private boolean move(Deque<Step<S>> from, Deque<Step<S>> to) {
        Step<S> step = from.poll();
        if (step == null) {
            return false;
        }
        to.push(new Step<>(step.name(), now));
        now = step.value();
        open = false;
        return true;
    }
}
