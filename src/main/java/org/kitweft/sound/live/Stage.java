package org.kitweft.sound.live;

import java.util.Comparator;
import java.util.List;
import org.kitweft.groove.Tempo;
import org.kitweft.sound.Note;
import org.kitweft.sound.Pace;
import org.kitweft.sound.TempoMap;
import org.kitweft.sound.Timeline;

/**
 * The loops of a pass that follow each other at one tempo. Immutable.
 *
 * <p>The notes are those of one loop without its count-in. They can differ from tempo to tempo:
 * grace notes and bounces need their time.
 */
final class Stage {
    private final long firstLoop;
    private final double startSeconds;
    private final double loopSeconds;
    private final TempoMap tempo;
    private final List<Note> notes;

    /** Written ticks of the notes, ascending, and the first tick of all notes from there on. */
    private final long[] written;

    private final long[] firstTickFrom;

    /**
     * @param once one loop, laid out at the tempo of the stage
     * @param startSeconds when the first of its loops starts, counted from the start of loop 0
     */
    Stage(Timeline once, long firstLoop, double startSeconds) {
        this(
                once.notes().stream().filter(note -> note.written() >= 0).toList(),
                once.tempo(),
                firstLoop,
                startSeconds,
                once.tempo().seconds(once.to()));
    }

    private Stage(
            List<Note> notes,
            TempoMap tempo,
            long firstLoop,
            double startSeconds,
            double loopSeconds) {
        this.notes = notes;
        this.tempo = tempo;
        this.firstLoop = firstLoop;
        this.startSeconds = startSeconds;
        this.loopSeconds = loopSeconds;
        List<Note> asWritten =
                notes.stream().sorted(Comparator.comparingLong(Note::written)).toList();
        this.written = asWritten.stream().mapToLong(Note::written).toArray();
        this.firstTickFrom = new long[written.length];
        long first = Long.MAX_VALUE;
        for (int i = written.length - 1; i >= 0; i--) {
            first = Math.min(first, asWritten.get(i).tick());
            firstTickFrom[i] = first;
        }
    }

    /** The next stage with the same notes at another tempo. */
    Stage followedBy(Tempo other, long from, long loopTicks) {
        TempoMap next =
                new TempoMap(
                        tempo.paces().stream()
                                .map(pace -> new Pace(pace.tick(), pace.meter(), other))
                                .toList());
        return new Stage(notes, next, from, seconds(from, 0), next.seconds(loopTicks));
    }

    /** The first of its loops, counted from 0. */
    long firstLoop() {
        return firstLoop;
    }

    /** When that starts, in seconds from the start of loop 0. */
    double startSeconds() {
        return startSeconds;
    }

    /** Seconds from the start of loop 0 to a tick of one of its loops, or of the next. */
    double seconds(long loop, long tick) {
        return startSeconds + (loop - firstLoop) * loopSeconds + tempo.seconds(tick);
    }

    /** The loop that is playing so many seconds after loop 0 started, if all were of this stage. */
    long loopAt(double seconds) {
        return firstLoop + (long) Math.floor((seconds - startSeconds) / loopSeconds);
    }

    /** The notes, in time; ticks may be a little below 0. */
    List<Note> notes() {
        return notes;
    }

    /**
     * The tick of the earliest note among those written at a tick or later.
     *
     * @return {@link Long#MAX_VALUE} if there is none
     */
    long firstTickFrom(long writtenTick) {
        int low = 0;
        int high = written.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (written[middle] < writtenTick) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low < written.length ? firstTickFrom[low] : Long.MAX_VALUE;
    }
}
