package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/** For each limb of a chain the surfaces that it stays within. Immutable. */
final class Bounds {
    /** For each limb, one after the other, as many words as the surfaces take. */
    private final long[] bits;

    private final int words;

    private Bounds(long[] bits, int words) {
        this.bits = bits;
        this.words = words;
    }

    /**
     * Puts limbs together.
     *
     * @param limbs for each limb its surfaces as bits
     * @param words how many each limb has
     */
    static Bounds of(long[][] limbs, int words) {
        long[] bits = new long[limbs.length * words];
        for (int d = 0; d < limbs.length; d++) {
            System.arraycopy(limbs[d], 0, bits, d * words, words);
        }
        return new Bounds(bits, words);
    }

    /** How many words so many surfaces take. */
    static int words(int surfaces) {
        return Math.max(1, (surfaces + Long.SIZE - 1) / Long.SIZE);
    }

    /** A set of surfaces in so many words. */
    static long[] bits(BitSet set, int words) {
        return Arrays.copyOf(set.toLongArray(), words);
    }

    /** Whether a limb, by its place in the chain, may be on a surface. */
    boolean has(int d, int surface) {
        return (bits[d * words + surface / Long.SIZE] >>> surface & 1) != 0;
    }

    /** Whether a limb may be on a surface; nowhere is always within. */
    boolean holds(int d, int surface) {
        return surface < 0 || has(d, surface);
    }

    /** The first surface from one on that a limb may be on; negative if there is none. */
    int next(int d, int surface) {
        for (int w = surface / Long.SIZE; w < words; w++) {
            long rest = bits[d * words + w];
            rest &= w == surface / Long.SIZE ? -1L << surface : -1L;
            if (rest != 0) {
                return w * Long.SIZE + Long.numberOfTrailingZeros(rest);
            }
        }
        return -1;
    }

    /** How many surfaces a limb may be on. */
    int size(int d) {
        int size = 0;
        for (int w = d * words; w < (d + 1) * words; w++) {
            size += Long.bitCount(bits[w]);
        }
        return size;
    }

    /** Those of some limbs, by their places in the chain. */
    Bounds part(int[] dimensions) {
        long[] mine = new long[dimensions.length * words];
        for (int d = 0; d < dimensions.length; d++) {
            System.arraycopy(bits, dimensions[d] * words, mine, d * words, words);
        }
        return new Bounds(mine, words);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Bounds bounds && Arrays.equals(bits, bounds.bits);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bits);
    }
}
