package org.kitweft.explore.trellis;

import java.math.BigInteger;

/**
 * A beginning of a plan with one chain and one set of surfaces, once nothing but the state decides
 * how it goes on: read from a closed table.
 *
 * @param depth how many strokes have been played
 * @param state where the limbs stand
 */
record ClosedNode(Table table, int depth, int state) implements Node {
    @Override
    public long lowCount() {
        return table.layer(depth).low(state);
    }

    @Override
    public BigInteger count() {
        return table.layer(depth).get(state);
    }

    @Override
    public boolean isAlive() {
        return !table.layer(depth).isZero(state);
    }

    @Override
    public long lowCount(int surface) {
        int next = next(surface);
        return next < 0 ? 0 : table.layer(depth + 1).low(next);
    }

    @Override
    public boolean takeOff(Rest rest, int surface) {
        int next = next(surface);
        return next < 0 || table.takeOff(rest, depth + 1, next);
    }

    @Override
    public Node child(int surface) {
        int next = next(surface);
        return next < 0 ? DeadEnd.HERE : new ClosedNode(table, depth + 1, next);
    }

    @Override
    public boolean takeOff(Rest rest) {
        return table.takeOff(rest, depth, state);
    }

    private int next(int surface) {
        return table.next(depth, state, surface);
    }
}
