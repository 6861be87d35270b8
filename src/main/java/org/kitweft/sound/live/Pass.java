package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;
import org.kitweft.pattern.Ornament;
import org.kitweft.sound.Course;
import org.kitweft.sound.Note;
import org.kitweft.sound.Part;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.Track;

/**
 * A phrase made ready to be played once or over and over, each loop at its tempo. Immutable; making
 * one may take milliseconds, so it is not made on the sound thread.
 */
final class Pass {
    private final PlaySettings settings;
    private final long ticks;
    private final long firstTick;
    private final List<Note> countIn;
    private final List<Cue> cues;
    private final long[] steps;
    private final Map<Part, List<Integer>> channels;
    private final List<Stage> stages = new ArrayList<>();

    Pass(Phrase phrase, PlaySettings settings) {
        this(Playable.of(phrase), settings);
    }

    Pass(Playable whole, PlaySettings settings) {
        this.settings = settings;
        Timeline once = once(whole, settings.loop(0).tempo());
        int bars = whole.phrase().bars();
        int first = settings.stretch().firstOf(bars);
        Phrase phrase = whole.phrase().bars(first, settings.stretch().lastOf(bars));
        this.channels =
                once.tracks().stream().collect(Collectors.toMap(Track::part, Track::channels));
        this.ticks = once.to();
        this.firstTick = once.firstTick();
        this.countIn = once.notes().stream().filter(note -> note.written() < 0).toList();
        this.cues = Cues.of(phrase, settings, first - 1);
        this.steps = steps(phrase, settings.stretch().feel());
        stages.add(new Stage(once, 0, 0));
        addStages(whole);
    }

    private void addStages(Playable whole) {
        boolean sameNotes =
                whole.phrase().sections().stream()
                        .flatMap(section -> section.groove().hits().stream())
                        .map(Hit::ornament)
                        .noneMatch(o -> o.graceNotes() > 0 || o == Ornament.BUZZ);
        Tempo tempo = settings.loop(0).tempo();
        int settled = settings.course().settled();
        for (int loop = 1; loop <= settled; loop++) {
            Tempo next = settings.loop(loop).tempo();
            if (!next.equals(tempo)) {
                Stage last = stages.get(stages.size() - 1);
                stages.add(
                        sameNotes
                                ? last.followedBy(next, loop, ticks)
                                : new Stage(once(whole, next), loop, last.seconds(loop, 0)));
                tempo = next;
            }
        }
    }

    private Timeline once(Playable whole, Tempo tempo) {
        return Timeline.of(whole, settings.withTempo(tempo).withLoops(1).withCourse(Course.STEADY));
    }

    private static long[] steps(Phrase phrase, Feel feel) {
        List<Long> steps = new ArrayList<>();
        long at = 0;
        for (int turn = 0; turn < feel.turns(); turn++) {
            for (Section section : phrase.sections()) {
                long end = at + feel.scaled(section.groove().ticks());
                for (; at < end; at += feel.scaled(section.groove().grid().stepTicks())) {
                    steps.add(at);
                }
            }
        }
        return steps.stream().mapToLong(Long::longValue).toArray();
    }

    PlaySettings settings() {
        return settings;
    }

    /** On which channels each part plays that is heard. */
    Map<Part, List<Integer>> channels() {
        return channels;
    }

    /**
     * The stage that a loop belongs to.
     *
     * @param loop from 0
     */
    Stage stage(long loop) {
        int low = 0;
        int high = stages.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (stages.get(middle).firstLoop() <= loop) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return stages.get(low);
    }

    /** Tempo and sounding of a loop, counted from 0. */
    Practice.Loop loop(long loop) {
        return settings.loop((int) Math.min(loop, Integer.MAX_VALUE));
    }

    /** Seconds from the start of loop 0 to a tick of a loop, the count-in before tick 0. */
    double seconds(long loop, long tick) {
        if (tick < 0 && loop > 0) {
            return seconds(loop - 1, tick + ticks); // a grace note before the seam
        }
        if (tick > ticks) {
            return seconds(loop + 1, tick - ticks); // what rings on beyond it
        }
        return stage(loop).seconds(loop, tick);
    }

    /** The loop that is playing so many seconds after loop 0 started; negative before it. */
    long loopAt(double seconds) {
        int low = 0;
        int high = stages.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (stages.get(middle).startSeconds() <= seconds) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return stages.get(low).loopAt(seconds);
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

    /** All other notes of a loop, in time; none where it is silent. */
    List<Note> notes(long loop) {
        return loop(loop).sounds() ? stage(loop).notes() : List.of();
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
     * The tick of the earliest note of a loop among those written at a tick of it or later.
     *
     * @return {@link Long#MAX_VALUE} if there is none
     */
    long firstTickFrom(long loop, long writtenTick) {
        return loop(loop).sounds() ? stage(loop).firstTickFrom(writtenTick) : Long.MAX_VALUE;
    }
}
