package org.kitweft.explore.trellis;

import java.math.BigInteger;

/** The beginning of a variation and the number of ways to complete it. */
interface Node {
    /** The number of ways to complete it; its lowest 64 bits, so all of it if that is narrow. */
    long lowCount();

    /** The number of ways to complete it. */
    BigInteger count();

    /** Whether it can be completed. */
    boolean isAlive();

    /** The number of completions after the next stroke, on a surface; narrow. */
    long lowCount(int surface);

    /**
     * Takes the number of completions after the next stroke, on a surface, off a rest.
     *
     * @return whether there was as much; else the rest is left as it was
     */
    default boolean takeOff(Rest rest, int surface) {
        return child(surface).takeOff(rest);
    }

    /** Takes its own number of completions off a rest, if there is as much. */
    default boolean takeOff(Rest rest) {
        return rest.takeOff(count());
    }

    /** The beginning with one more stroke, on a surface that the stroke may choose. */
    Node child(int surface);
}
