package org.kitweft.groove;

import java.util.Objects;

/**
 * How a phrase is practised over many loops: it gets faster, and it may drop out to test the pulse.
 *
 * @param start the tempo of the first loop
 * @param rise beats a minute by which it gets faster, 0 to 50; 0: it stays
 * @param loopsPerTempo loops before it rises, 1 to 100
 * @param ceiling the fastest tempo, not below the start
 * @param dropOut whether every other loop is silent, the click too: does the pulse hold?
 */
public record Practice(Tempo start, int rise, int loopsPerTempo, Tempo ceiling, boolean dropOut) {

    /** One loop of practice. */
    public record Loop(Tempo tempo, boolean sounds) {}

    public Practice {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(ceiling, "ceiling");
        checkRange("rise", rise, 0, 50);
        checkRange("loops per tempo", loopsPerTempo, 1, 100);
        if (ceiling.beatsPerMinute() < start.beatsPerMinute()) {
            throw new IllegalArgumentException(
                    "the ceiling %d lies below the start %d"
                            .formatted(ceiling.beatsPerMinute(), start.beatsPerMinute()));
        }
    }

    private static void checkRange(String what, int value, int from, int to) {
        if (value < from || value > to) {
            throw new IllegalArgumentException(
                    "%s %d: expected %d to %d".formatted(what, value, from, to));
        }
    }

    /** A steady tempo, everything sounding. */
    public static Practice steady(Tempo tempo) {
        return new Practice(tempo, 0, 1, tempo, false);
    }

    /**
     * What a loop is like. A tempo that is to drop out is first heard: the first loop sounds, the
     * second does not.
     *
     * @param index from 0
     */
    public Loop loop(int index) {
        if (index < 0) {
            throw new IllegalArgumentException("loop %d: they count from 0".formatted(index));
        }
        long risen = start.beatsPerMinute() + (long) rise * (index / loopsPerTempo);
        Tempo tempo = new Tempo((int) Math.min(risen, ceiling.beatsPerMinute()));
        return new Loop(tempo, !dropOut || index % 2 == 0);
    }

    /** The first loop, from 0, from which on the tempo stays. */
    public int settled() {
        int way = ceiling.beatsPerMinute() - start.beatsPerMinute();
        return rise == 0 ? 0 : (way + rise - 1) / rise * loopsPerTempo;
    }
}
