package org.kitweft.sound.live;

import java.util.List;
import java.util.function.ToLongFunction;
import org.kitweft.groove.Practice;
import org.kitweft.sound.Note;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.synth.NoteStream;

/**
 * A pass laid over and over on the frames of the sound stream, heard between two written ticks.
 * These ticks run on from pass to pass; tick 0 is where the first pass starts.
 *
 * @param pass what is played
 * @param origin the frame of tick 0, not rounded, so that no error adds up
 * @param passes how often, {@link Long#MAX_VALUE} without end
 * @param from the first written tick that is heard
 * @param to the first written tick that is not heard any more
 */
record Run(Pass pass, double origin, long passes, long from, long to) {

    /** From the beginning, its first note on a frame. */
    static Run starting(Pass pass, long frame) {
        double before = pass.seconds(0, pass.firstTick()) * NoteStream.RATE;
        return new Run(pass, frame - before, passes(pass, 0), Long.MIN_VALUE, Long.MAX_VALUE);
    }

    private static long passes(Pass pass, long begun) {
        int loops = pass.settings().loopsInAll();
        return loops == PlaySettings.ENDLESS ? Long.MAX_VALUE : Math.max(loops, begun);
    }

    /**
     * Another pass that goes on where this one is at a tick: at the same place of the same loop, or
     * where the new pass is shorter, at the same place after whole passes. Another course begins
     * with its first loop.
     */
    Run continuedBy(Pass next, long tick) {
        long loop = Math.max(0, Math.floorDiv(tick, pass.ticks()));
        boolean sameCourse = next.settings().course().equals(pass.settings().course());
        long nextLoop = sameCourse ? loop : 0;
        long there =
                tick < 0
                        ? tick
                        : nextLoop * next.ticks() + (tick - loop * pass.ticks()) % next.ticks();
        Run atZero = new Run(next, 0, passes(next, nextLoop + 1), there, Long.MAX_VALUE);
        return new Run(next, exact(tick) - atZero.exact(there), atZero.passes, there, atZero.to);
    }

    /** The same, heard up to a written tick only. */
    Run until(long tick) {
        return new Run(pass, origin, passes, from, tick);
    }

    private double exact(long tick) {
        long loop = Math.max(0, Math.floorDiv(tick, pass.ticks()));
        return exact(loop, tick - loop * pass.ticks());
    }

    private double exact(long loop, long tickInPass) {
        return origin + pass.seconds(loop, tickInPass) * NoteStream.RATE;
    }

    private long loopAt(long frame) {
        return pass.loopAt((frame - origin) / NoteStream.RATE);
    }

    /** The frame of a tick. */
    long frame(long tick) {
        return Math.round(exact(tick));
    }

    private long frame(long loop, long tickInPass) {
        return Math.round(exact(loop, tickInPass));
    }

    /** The frame where the last pass ends; {@link Long#MAX_VALUE} without end. */
    long endFrame() {
        return passes == Long.MAX_VALUE ? Long.MAX_VALUE : frame(passes, 0);
    }

    /** The first step at or after a frame. */
    long stepFrom(long frame) {
        long tick;
        if (frame <= origin) {
            long step = pass.firstStepTicks();
            tick = 0;
            while (exact(tick - step) >= frame && tick - step >= pass.firstTick()) {
                tick -= step;
            }
            return tick;
        }
        long loop = Math.max(0, loopAt(frame));
        tick = 0;
        while (frame(loop, tick) < frame && tick < pass.ticks()) {
            tick = pass.stepFrom(tick + 1);
        }
        return loop * pass.ticks() + tick;
    }

    /** The step after a step. */
    long stepAfter(long tick) {
        if (tick < 0) {
            return Math.min(0, tick + pass.firstStepTicks());
        }
        long loop = Math.floorDiv(tick, pass.ticks());
        return loop * pass.ticks() + pass.stepFrom(tick - loop * pass.ticks() + 1);
    }

    /**
     * The frame of the earliest note among those written at a tick or later.
     *
     * @return {@link Long#MAX_VALUE} if there is none
     */
    long firstFrameFrom(long tick) {
        long first = Long.MAX_VALUE;
        for (Note click : pass.countIn()) {
            if (click.written() >= tick) {
                first = Math.min(first, frame(0, click.tick()));
            }
        }
        long loop = Math.max(0, Math.floorDiv(tick, pass.ticks()));
        for (long in = loop; in <= loop + 1 && in < passes; in++) {
            long tickInPass = pass.firstTickFrom(in, tick - in * pass.ticks());
            if (tickInPass != Long.MAX_VALUE) {
                first = Math.min(first, frame(in, tickInPass));
            }
        }
        return first;
    }

    /** Something of the pass that falls on a frame. */
    @FunctionalInterface
    interface Taker<T> {
        void take(long frame, long loop, T what);
    }

    /** Gives all notes of some frames, the first included, the second not. */
    void notes(long first, long end, Taker<Note> taker) {
        give(pass.countIn(), Note::tick, Note::written, 0, first, end, taker);
        eachLoop(
                first,
                end,
                loop -> give(pass.notes(loop), Note::tick, Note::written, loop, first, end, taker));
    }

    /** Gives all cues of some frames, the first included, the second not. */
    void cues(long first, long end, Taker<Cue> taker) {
        eachLoop(
                first,
                end,
                loop -> give(pass.cues(), Cue::tick, Cue::written, loop, first, end, taker));
    }

    /** A cue that is reached: where the loop is silent, nothing is struck. */
    Playhead.Lit lit(long frame, long loop, Cue cue) {
        Practice.Loop how = pass.loop(loop);
        return new Playhead.Lit(frame, how.sounds() ? cue : cue.silent(), loop, how);
    }

    @FunctionalInterface
    private interface Loop {
        void at(long loop);
    }

    private void eachLoop(long first, long end, Loop body) {
        // One more on either side: grace notes come early, swung bounces may come late.
        long low = Math.max(0, loopAt(first) - 1);
        long high = loopAt(end) + 1;
        for (long loop = low; loop <= high && loop < passes; loop++) {
            body.at(loop);
        }
    }

    private <T> void give(
            List<T> all,
            ToLongFunction<T> tick,
            ToLongFunction<T> written,
            long loop,
            long first,
            long end,
            Taker<T> taker) {
        int low = 0;
        int high = all.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (frame(loop, tick.applyAsLong(all.get(middle))) < first) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        for (int i = low; i < all.size(); i++) {
            T what = all.get(i);
            long frame = frame(loop, tick.applyAsLong(what));
            if (frame >= end) {
                return;
            }
            long writtenTick = loop * pass.ticks() + written.applyAsLong(what);
            if (writtenTick >= from && writtenTick < to) {
                taker.take(frame, loop, what);
            }
        }
    }

    /** Frames that a note lasts. */
    long length(long loop, Note note) {
        return Math.max(1, frame(loop, note.end()) - frame(loop, note.tick()));
    }
}
