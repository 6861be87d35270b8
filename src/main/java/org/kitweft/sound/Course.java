package org.kitweft.sound;

import java.util.Objects;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;

/** How the loops of a phrase differ: their tempo, and whether they sound. Immutable. */
public sealed interface Course {
    /** All loops alike, at the tempo of the settings. */
    Course STEADY = new Steady();

    /**
     * How many loops are played in all.
     *
     * @param loops those of the settings, which may be {@link PlaySettings#ENDLESS}
     */
    int loopsInAll(int loops);

    /**
     * What a loop is like.
     *
     * @param index from 0
     * @param loops those of the settings
     * @param tempo that of the settings
     */
    Practice.Loop loop(int index, int loops, Tempo tempo);

    /** The first loop, from 0, from which on the tempo stays. */
    int settled();

    /** All loops alike, at the tempo of the settings. */
    record Steady() implements Course {
        @Override
        public int loopsInAll(int loops) {
            return loops;
        }

        @Override
        public Practice.Loop loop(int index, int loops, Tempo tempo) {
            return new Practice.Loop(tempo, true);
        }

        @Override
        public int settled() {
            return 0;
        }
    }

    /**
     * One tempo after the other; without end, the last one on and on. Loops may drop out as in
     * {@link Practice}.
     *
     * @param loopsEach how many loops each tempo lasts, 1 to {@value PlaySettings#MOST_LOOPS}
     * @param dropOut whether every other loop is silent
     */
    record Stepped(TempoSteps steps, int loopsEach, boolean dropOut) implements Course {
        public Stepped {
            Objects.requireNonNull(steps, "steps");
            if (loopsEach < 1 || loopsEach > PlaySettings.MOST_LOOPS) {
                throw new IllegalArgumentException(
                        "%d loops for each tempo: expected 1 to %d"
                                .formatted(loopsEach, PlaySettings.MOST_LOOPS));
            }
        }

        @Override
        public int loopsInAll(int loops) {
            return loops == PlaySettings.ENDLESS ? loops : loopsEach * steps.tempi().size();
        }

        @Override
        public Practice.Loop loop(int index, int loops, Tempo tempo) {
            int last = steps.tempi().size() - 1;
            return new Practice.Loop(
                    steps.tempi().get(Math.min(index / loopsEach, last)),
                    !dropOut || index % 2 == 0);
        }

        @Override
        public int settled() {
            return (steps.tempi().size() - 1) * loopsEach;
        }
    }

    /**
     * Faster and faster, or with loops that drop out: in these nothing sounds, not even the click,
     * while the places go on being told.
     */
    record Practised(Practice practice) implements Course {
        public Practised {
            Objects.requireNonNull(practice, "practice");
        }

        @Override
        public int loopsInAll(int loops) {
            return loops;
        }

        @Override
        public Practice.Loop loop(int index, int loops, Tempo tempo) {
            return practice.loop(index);
        }

        @Override
        public int settled() {
            return practice.settled();
        }
    }
}
