package org.kitweft.band;

import java.util.List;

/** How long the notes of a line last. */
final class Lengths {
    private static final int CLIPPED_PERCENT = 55;

    private Lengths() {}

    /**
     * The length of a cue's note in ticks: to the next cue, not into another chord, and shortened
     * as the line plays.
     *
     * @param cues of the line, in time
     * @param index of the cue
     */
    static long of(List<Cue> cues, int index, StyleLine line, PhraseTime time) {
        Cue cue = cues.get(index);
        long next = time.end();
        for (int i = index + 1; i < cues.size(); i++) {
            if (cues.get(i).start() > cue.start()) {
                next = cues.get(i).start();
                break;
            }
        }
        long until = Math.min(Math.min(next, cue.chordEnd()), time.end());
        long whole = Math.max(1, until - cue.start());
        if (cue.step().clipped()) {
            return Math.max(1, Math.min(whole, cue.stepTicks() * CLIPPED_PERCENT / 100));
        }
        return Math.max(1, whole * line.length() / 100);
    }
}
