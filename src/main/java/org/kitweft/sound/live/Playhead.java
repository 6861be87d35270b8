package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.kitweft.groove.Practice;
import org.kitweft.sound.Note;
import org.kitweft.sound.synth.NoteStream;

/**
 * Where playing is: gives the notes and cues of the next frames, and takes edits in at the next
 * step. Knows no device, no thread and no clock: time is frames.
 *
 * <p>An edit is heard from a step on of which nothing has been given away yet, in the old phrase
 * and in the new: what is written before it still comes from the old one, the rest from the new. So
 * nothing sounds twice and nothing is left out, even where swing moves the notes between.
 */
final class Playhead {
    /** A note on its frame. */
    record Sounding(long frame, long endFrame, Note note) {}

    /**
     * A cue on its frame.
     *
     * @param loop in which loop, from 0
     * @param how what that loop is like
     */
    record Lit(long frame, Cue cue, long loop, Practice.Loop how) {}

    /** Notes and cues, each in time. */
    record Frames(List<Sounding> notes, List<Lit> cues) {}

    private final List<Run> runs = new ArrayList<>();
    private long given;

    /** At the beginning of a pass, its first note on a frame. */
    Playhead(Pass pass, long frame) {
        runs.add(Run.starting(pass, frame));
        given = frame;
    }

    /** The frame up to which notes were given: the first that an edit can change. */
    long given() {
        return given;
    }

    /** The frame where playing ends; {@link Long#MAX_VALUE} without end. */
    long endFrame() {
        return last().endFrame();
    }

    private Run last() {
        return runs.get(runs.size() - 1);
    }

    /** Goes on with another pass from the next step on. */
    void change(Pass next) {
        if (runs.size() > 1
                && last().frame(last().from()) >= given
                && last().firstFrameFrom(last().from()) >= given) {
            runs.remove(runs.size() - 1); // an edit that nobody has heard yet
            runs.add(runs.remove(runs.size() - 1).until(Long.MAX_VALUE));
        }
        Run now = last();
        long step = now.stepFrom(given);
        while (now.frame(step) < now.endFrame()) {
            Run then = now.continuedBy(next, step);
            if (step >= now.from()
                    && now.firstFrameFrom(step) >= given
                    && then.firstFrameFrom(then.from()) >= given) {
                runs.set(runs.size() - 1, now.until(step));
                runs.add(then);
                return;
            }
            step = now.stepAfter(step);
        }
    }

    /** All notes and cues up to a frame that were not given yet. */
    Frames advance(long end) {
        List<Sounding> notes = new ArrayList<>();
        List<Lit> cues = new ArrayList<>();
        for (Run run : runs) {
            run.notes(
                    given,
                    end,
                    (frame, loop, note) ->
                            notes.add(new Sounding(frame, frame + run.length(loop, note), note)));
            run.cues(given, end, (frame, loop, cue) -> cues.add(run.lit(frame, loop, cue)));
        }
        notes.sort(Comparator.comparingLong(Sounding::frame));
        cues.sort(Comparator.comparingLong(Lit::frame));
        given = Math.max(given, end);
        while (runs.size() > 1 && runs.get(0).frame(runs.get(0).to()) + NoteStream.RATE < given) {
            runs.remove(0);
        }
        return new Frames(notes, cues);
    }
}
