package org.kitweft.sound.live;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Section;
import org.kitweft.sound.Course;
import org.kitweft.sound.Note;
import org.kitweft.sound.Part;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.TempoMap;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.Track;

/**
 * A phrase made ready to be played once or over and over. Immutable; making one may take
 * milliseconds, so it is not made on the sound thread.
 */
final class Pass {
    private final PlaySettings settings;
    private final TempoMap tempo;
    private final long ticks;
    private final long firstTick;
    private final List<Note> countIn;
    private final List<Note> notes;
    private final List<Cue> cues;
    private final long[] steps;
    private final Map<Part, List<Integer>> channels;

    /** Written ticks of the notes, ascending, and the first tick of all notes from there on. */
    private final long[] written;

    private final long[] firstTickFrom;

    Pass(Phrase phrase, PlaySettings settings) {
        this(Playable.of(phrase), settings);
    }

    Pass(Playable playable, PlaySettings settings) {
        Timeline once = Timeline.of(playable, settings.withLoops(1).withCourse(Course.STEADY));
        Phrase phrase = playable.phrase();
        this.channels =
                once.tracks().stream().collect(Collectors.toMap(Track::part, Track::channels));
        this.settings = settings;
        this.tempo = once.tempo();
        this.ticks = once.to();
        this.firstTick = once.firstTick();
        List<Note> all = once.notes();
        this.countIn = all.stream().filter(note -> note.written() < 0).toList();
        this.notes = all.stream().filter(note -> note.written() >= 0).toList();
        this.cues = Cues.of(phrase, settings);
        this.steps = steps(phrase);
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

    private static long[] steps(Phrase phrase) {
        long[] steps =
                new long
                        [phrase.sections().stream()
                                .map(Section::groove)
                                .mapToInt(g -> g.bars() * g.grid().stepsPerBar())
                                .sum()];
        int next = 0;
        long at = 0;
        for (Section section : phrase.sections()) {
            long end = at + section.groove().ticks();
            for (; at < end; at += section.groove().grid().stepTicks()) {
                steps[next++] = at;
            }
        }
        return steps;
    }

    PlaySettings settings() {
        return settings;
    }

    /** On which channels each part plays that is heard. */
    Map<Part, List<Integer>> channels() {
        return channels;
    }

    /** Ticks to seconds within the pass; the count-in before tick 0. */
    TempoMap tempo() {
        return tempo;
    }

    /** Its length. */
    long ticks() {
        return ticks;
    }

    /** Where it starts when it is played first: the count-in, or an early grace note. */
    long firstTick() {
        return firstTick;
    }

    /** The clicks of the count-in, in time. */
    List<Note> countIn() {
        return countIn;
    }

    /** All other notes, in time; ticks may be a little below 0. */
    List<Note> notes() {
        return notes;
    }

    /** The cues, in time. */
    List<Cue> cues() {
        return cues;
    }

    /**
     * The first step at or after a tick; the end of the pass counts as one.
     *
     * @param tick 0 to {@link #ticks()}
     */
    long stepFrom(long tick) {
        int found = Arrays.binarySearch(steps, tick);
        int index = found >= 0 ? found : -found - 1;
        return index < steps.length ? steps[index] : ticks;
    }

    /** The length of the first step: count-ins are divided by it. */
    long firstStepTicks() {
        return stepFrom(1);
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
