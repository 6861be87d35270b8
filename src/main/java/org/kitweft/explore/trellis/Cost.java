package org.kitweft.explore.trellis;

import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;

/**
 * What a variation costs: the sum over its strokes and over the moves of its limbs. The best have
 * the least cost; negative costs are rewards. Both methods must always answer the same, with
 * numbers of at most a billion; they are added exactly to the nearest millionth.
 */
public interface Cost {
    /** The way all limbs travel together, in centimetres. */
    Cost TRAVEL =
            new Cost() {
                @Override
                public double stroke(int index, SoundName sound) {
                    return 0;
                }

                @Override
                public double move(Limb limb, Surface from, Surface to, long ticks) {
                    return from.distanceTo(to);
                }
            };

    /**
     * What it costs to play a stroke on a sound.
     *
     * @param index of the stroke in the sticking, from 0, rests counted
     * @param sound what it strikes
     */
    double stroke(int index, SoundName sound);

    /**
     * What it costs a limb to get from one surface, maybe the same, to its next. In a loop the way
     * from its last stroke to its first counts too.
     *
     * @param limb who moves
     * @param from where it struck
     * @param to where it strikes next
     * @param ticks how long it has
     */
    double move(Limb limb, Surface from, Surface to, long ticks);
}
