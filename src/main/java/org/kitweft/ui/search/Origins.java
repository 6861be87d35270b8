package org.kitweft.ui.search;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;
import org.kitweft.explore.search.Found;
import org.kitweft.explore.search.NoneCan;
import org.kitweft.explore.search.NoteReader;
import org.kitweft.explore.search.SearchOutcome;
import org.kitweft.explore.search.SearchSpace;
import org.kitweft.explore.search.StickingSearch;
import org.kitweft.explore.search.Strike;
import org.kitweft.explore.search.Target;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.pattern.Sticking;
import org.kitweft.sound.midi.NoteFile;
import org.kitweft.ui.count.Numbers;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/**
 * A search from a groove back to the stickings and voicings that produce it, off the event thread.
 * The groove is that of the grid, or comes from a MIDI file, laid on the grid and kit of the
 * session. For one thread.
 */
public final class Origins {
    private static final int MOST_PLACES = 8;

    /** What was taken, and what is to be said of it. */
    private record Taken(Target target, List<String> remarks) {}

    private record Answer(Taken taken, SearchOutcome outcome, BigInteger simplest) {}

    private final SessionModel session;
    private final Tasks tasks;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<Outlook> outlook = Optional.empty();
    private Tasks.Running running = () -> {};
    private Optional<Groove> asked = Optional.empty();
    private Optional<Found> found = Optional.empty();
    private Optional<NoneCan> forbidding = Optional.empty();
    private List<String> lines = List.of();
    private boolean fault;

    /** Searches for a session. */
    public Origins(SessionModel session, Tasks tasks) {
        this.session = session;
        this.tasks = tasks;
    }

    /** Is called when a search begins and when it ends. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /**
     * Takes the groove in the grid.
     *
     * @param strokes the length of the stickings sought; empty: that of the sticking now
     */
    public void takeGrid(OptionalInt strokes) {
        Groove groove = session.groove();
        int length =
                strokes.orElse(
                        Math.min(
                                session.recipe().sticking().size(),
                                groove.bars() * groove.grid().stepsPerBar()));
        search(
                Optional.of(groove),
                "the groove in the grid",
                OptionalInt.of(length),
                () -> new Taken(Target.of(groove), List.of()));
    }

    /**
     * Takes the notes of a MIDI file.
     *
     * @param strokes the length of the stickings sought; empty: after so many whole bars as the
     *     file repeats
     */
    public void takeFile(Path path, OptionalInt strokes) {
        Recipe recipe = session.recipe();
        search(
                Optional.empty(),
                String.valueOf(path.getFileName()),
                strokes,
                () -> read(path, recipe));
    }

    private static Taken read(Path path, Recipe recipe) throws IOException {
        NoteFile file = NoteFile.read(path);
        if (file.notes().isEmpty()) {
            throw new IOException("%s has no notes".formatted(path.getFileName()));
        }
        NoteReader.Read read =
                NoteReader.read(file.notes(), file.ticksPerQuarter(), recipe.kit(), recipe.grid());
        List<String> remarks = new ArrayList<>();
        if (!file.unread().isEmpty()) {
            remarks.add("Tracks not read: %s.".formatted(names(file.unread())));
        }
        if (read.emptyBars() > 0) {
            remarks.add(
                    read.emptyBars() == 1
                            ? "The empty bar at the start is left out; bar 1 is the first with a note."
                            : "The %d empty bars at the start are left out; bar 1 is the first with a note."
                                    .formatted(read.emptyBars()));
        }
        if (!read.leftOut().isEmpty()) {
            remarks.add(
                    "Left out, no surface of %s has them: %s."
                            .formatted(recipe.kit().name(), NoteReader.words(read.leftOut())));
        }
        if (!read.offTheGrid().isEmpty()) {
            remarks.add(
                    "Off the grid, drawn to the nearest step from up to %d %% of a step away: %s."
                            .formatted(
                                    Math.round(100 * read.furthest()), places(read.offTheGrid())));
        }
        return new Taken(read.target(), remarks);
    }

    private static String names(List<String> tracks) {
        return tracks.stream()
                .map(name -> name.isEmpty() ? "one without a name" : name)
                .collect(Collectors.joining(", "));
    }

    private static String places(List<Place> places) {
        List<String> first =
                new ArrayList<>(places.stream().limit(MOST_PLACES).map(Place::toString).toList());
        int more = places.size() - first.size();
        return String.join(", ", first) + (more > 0 ? " and %d more".formatted(more) : "");
    }

    private void search(
            Optional<Groove> inGrid, String name, OptionalInt strokes, Callable<Taken> source) {
        running.stop();
        asked = inGrid;
        found = Optional.empty();
        forbidding = Optional.empty();
        fault = false;
        lines = List.of("Looking for what produces %s…".formatted(name));
        Outlook watch = new Outlook();
        outlook = Optional.of(watch);
        tell();
        running =
                tasks.run(
                        "",
                        progress -> {
                            Taken taken = source.call();
                            int length = strokes.orElse(repeatsAfter(taken.target()));
                            SearchOutcome outcome =
                                    StickingSearch.search(
                                            taken.target(),
                                            SearchSpace.WHOLE.withStrokes(length),
                                            watch.within(progress));
                            return new Answer(
                                    taken,
                                    outcome,
                                    outcome instanceof Found some
                                            ? some.countOfSimplest()
                                            : BigInteger.ZERO);
                        },
                        answer -> ended(name, answer),
                        this::failed);
    }

    /** Steps after which the groove repeats itself, in whole bars, as far as a sticking goes. */
    static int repeatsAfter(Target target) {
        List<List<Strike>> steps = target.steps();
        int perBar = target.grid().stepsPerBar();
        for (int length = perBar; length < steps.size(); length += perBar) {
            if (steps.size() % length == 0
                    && steps.subList(length, steps.size())
                            .equals(steps.subList(0, steps.size() - length))) {
                return Math.min(length, Sticking.MAX_STROKES);
            }
        }
        return Math.min(steps.size(), Sticking.MAX_STROKES);
    }

    private void ended(String name, Answer answer) {
        outlook = Optional.empty();
        List<String> said = new ArrayList<>();
        if (answer.outcome() instanceof Found some) {
            found = Optional.of(some);
            said.add(ways(name, some, answer.simplest()));
        } else if (answer.outcome() instanceof NoneCan none) {
            fault = true;
            // The grid may have been edited meanwhile; a file's steps are none of the grid's.
            forbidding =
                    Optional.of(none).filter(any -> asked.equals(Optional.of(session.groove())));
            said.add(
                    "No sticking produces %s%s."
                            .formatted(
                                    name,
                                    forbidding.isPresent() ? "; the hatched steps forbid it" : ""));
            none.obstacles().forEach(obstacle -> said.add(obstacle.line()));
        } else {
            said.add("Stopped before it was known.");
        }
        said.addAll(answer.taken().remarks());
        lines = said;
        tell();
    }

    private static String ways(String name, Found found, BigInteger count) {
        int additions = found.fewestAdditions();
        String with =
                additions == 0
                        ? "with each letter by its own limb"
                        : additions == 1
                                ? "with one addition"
                                : "with %d additions".formatted(additions);
        return "%s way%s to play %s %s; the easiest first%s."
                .formatted(
                        Numbers.brief(count),
                        count.equals(BigInteger.ONE) ? "" : "s",
                        name,
                        with,
                        additions < SearchSpace.MOST ? ", then those with more additions" : "");
    }

    private void failed(Exception failure) {
        outlook = Optional.empty();
        fault = true;
        lines =
                List.of(
                        failure instanceof NoSuchFileException missing
                                ? "%s: there is no such file".formatted(missing.getFile())
                                : failure.getMessage() == null
                                        ? "the groove cannot be read"
                                        : failure.getMessage());
        tell();
    }

    /** Ends the search; nothing is known then. */
    public void stop() {
        outlook.ifPresent(Outlook::stop);
    }

    /** How far the search is, from 0 to 1; empty while none is under way. */
    public Optional<Double> part() {
        return outlook.map(Outlook::part);
    }

    /** All ways to play the groove, once they are known and if there are any. */
    public Optional<Found> found() {
        return found;
    }

    /**
     * The steps of the groove in the grid that forbid every answer, if the last search was for that
     * groove and came to this.
     */
    public Optional<NoneCan> forbidding() {
        return forbidding;
    }

    /**
     * What is to be said: how many ways there are or which steps forbid the groove and why, then
     * which notes of a file were left out or lie off the grid. Empty before the first search.
     */
    public List<String> lines() {
        return lines;
    }

    /** Whether there is no way, or the groove could not be read. */
    public boolean isFault() {
        return fault;
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
