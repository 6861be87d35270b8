package org.kitweft.explore.trellis;

import java.math.BigInteger;

/** A beginning that breaks a rule: nothing completes it. */
enum DeadEnd implements Node {
    /** The only one. */
    HERE;

    @Override
    public long lowCount() {
        return 0;
    }

    @Override
    public BigInteger count() {
        return BigInteger.ZERO;
    }

    @Override
    public boolean isAlive() {
        return false;
    }

    @Override
    public long lowCount(int surface) {
        return 0;
    }

    @Override
    public Node child(int surface) {
        return this;
    }
}
