package org.kitweft.explore.trellis;

import java.math.BigInteger;

/**
 * A beginning that knows which surfaces it has struck, read from {@link Completions}.
 *
 * @param depth how many strokes have been played
 * @param state the number of its state there
 */
record UseNode(Completions completions, int depth, int state) implements Node {
    @Override
    public long lowCount() {
        return completions.low(depth, state);
    }

    @Override
    public BigInteger count() {
        return completions.get(depth, state);
    }

    @Override
    public boolean isAlive() {
        return count().signum() != 0;
    }

    @Override
    public long lowCount(int surface) {
        int next = completions.next(depth, state, surface);
        return next == SurfaceUse.NONE ? 0 : completions.low(depth + 1, next);
    }

    @Override
    public boolean takeOff(Rest rest, int surface) {
        int next = completions.next(depth, state, surface);
        return next == SurfaceUse.NONE || completions.takeOff(rest, depth + 1, next);
    }

    @Override
    public boolean takeOff(Rest rest) {
        return completions.takeOff(rest, depth, state);
    }

    @Override
    public Node child(int surface) {
        int next = completions.next(depth, state, surface);
        return next == SurfaceUse.NONE ? DeadEnd.HERE : new UseNode(completions, depth + 1, next);
    }
}
