package org.kitweft.explore.trellis;

import java.math.BigInteger;

/**
 * A beginning that knows which surfaces it has struck, read from a {@link Blend}.
 *
 * @param depth how many strokes have been played
 * @param state where the limbs stand
 * @param held what has been struck
 */
record BlendNode(Blend blend, int depth, int state, Blend.Held held) implements Node {
    @Override
    public long lowCount() {
        return held.low(depth, state);
    }

    @Override
    public BigInteger count() {
        return held.get(depth, state);
    }

    @Override
    public boolean isAlive() {
        return count().signum() != 0;
    }

    @Override
    public boolean takeOff(Rest rest) {
        return held.takeOff(rest, depth, state);
    }

    @Override
    public long lowCount(int surface) {
        int next = blend.ground.next(depth, state, surface);
        return next == Ground.NONE ? 0 : held.lowAfter(depth, surface, next);
    }

    @Override
    public boolean takeOff(Rest rest, int surface) {
        int next = blend.ground.next(depth, state, surface);
        return next == Ground.NONE || held.takeOffAfter(rest, depth, surface, next);
    }

    @Override
    public Node child(int surface) {
        int next = blend.ground.next(depth, state, surface);
        return next == Ground.NONE
                ? DeadEnd.HERE
                : new BlendNode(blend, depth + 1, next, held.after(depth, surface, next));
    }
}
