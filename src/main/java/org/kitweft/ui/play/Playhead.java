package org.kitweft.ui.play;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;

/** Where the player is and what it has just struck, for those who paint it. For one thread. */
public final class Playhead {

    /** Is told on the thread of the playhead. */
    public interface Listener {
        /** The player has come to another step. */
        void moved();
    }

    private final List<Listener> listeners = new CopyOnWriteArrayList<>();
    private Optional<Place> place = Optional.empty();
    private Optional<Place> written = Optional.empty();
    private List<Hit> struck = List.of();

    /** Is called after each move. */
    public void addListener(Listener listener) {
        listeners.add(listener);
    }

    /**
     * The step of the groove in the grid that sounds now; empty while nothing plays, or while
     * another section of the phrase does.
     */
    public Optional<Place> place() {
        return place;
    }

    /** The step that sounds now in what is written on the staff; empty while nothing plays. */
    public Optional<Place> written() {
        return written;
    }

    /** What was struck at it. */
    public List<Hit> struck() {
        return struck;
    }

    /** The player has come to a step of the groove in the grid, which is what is written too. */
    public void at(Place now, List<Hit> hits) {
        at(now, Optional.of(now), hits);
    }

    /**
     * The player has come to a step.
     *
     * @param inWritten where it is written
     * @param inGrid where it stands in the grid, if it does
     */
    public void at(Place inWritten, Optional<Place> inGrid, List<Hit> hits) {
        written = Optional.of(inWritten);
        place = inGrid;
        struck = List.copyOf(hits);
        listeners.forEach(Listener::moved);
    }

    /** The player has stopped. */
    public void gone() {
        place = Optional.empty();
        written = Optional.empty();
        struck = List.of();
        listeners.forEach(Listener::moved);
    }
}
