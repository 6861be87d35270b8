package org.kitweft.sound.synth;

import java.util.ArrayList;
import java.util.List;

/** Finds where impulses stand among samples. */
public final class Onsets {
    /** Impulses closer than this are one: the interpolation spreads each over a few frames. */
    private static final int APART = 20;

    private Onsets() {}

    /** The frames where the left channel has a peak of at least a third of the highest. */
    public static List<Long> of(float[] samples) {
        float highest = 0;
        for (int i = 0; i < samples.length; i += NoteStream.CHANNELS) {
            highest = Math.max(highest, Math.abs(samples[i]));
        }
        List<Long> onsets = new ArrayList<>();
        long best = -1;
        for (int frame = 0; frame < samples.length / NoteStream.CHANNELS; frame++) {
            float size = Math.abs(samples[frame * NoteStream.CHANNELS]);
            if (size < highest / 3) {
                continue;
            }
            if (best >= 0 && frame - best < APART) {
                if (size > Math.abs(samples[(int) best * NoteStream.CHANNELS])) {
                    best = frame;
                    onsets.set(onsets.size() - 1, best);
                }
            } else {
                best = frame;
                onsets.add(best);
            }
        }
        return onsets;
    }
}
