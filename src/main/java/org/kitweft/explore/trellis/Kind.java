package org.kitweft.explore.trellis;

import java.util.Arrays;
import java.util.List;

/**
 * What strokes of one kind have in common, so that it is worked out once: who plays them, where to,
 * and which moves are allowed. Compared by identity; a {@link Plan} makes each kind once.
 */
final class Kind {
    private final int[] limbs;
    private final List<Moves> moves;
    private final int[] targets;
    private final int[] sounds;

    /**
     * @param limbs ordinals of the limbs, one or two
     * @param moves for each of the limbs which moves are allowed
     * @param targets the surfaces it may strike, ascending, each once
     * @param sounds for each target how many of its sounds may be struck
     */
    Kind(int[] limbs, List<Moves> moves, int[] targets, int[] sounds) {
        this.limbs = limbs;
        this.moves = moves;
        this.targets = targets;
        this.sounds = sounds;
    }

    int[] limbs() {
        return limbs;
    }

    List<Moves> moves() {
        return moves;
    }

    int[] targets() {
        return targets;
    }

    int[] sounds() {
        return sounds;
    }

    /** How many sounds there are to strike. */
    int breadth() {
        return Arrays.stream(sounds).sum();
    }

    /** Which moves from surface to surface are allowed. Compared by identity. */
    static final class Moves {
        /** No move is refused. */
        static final Moves ALL = new Moves(new boolean[0][]);

        private final boolean[][] allowed;

        /** An empty array allows all. */
        Moves(boolean[][] allowed) {
            this.allowed = allowed;
        }

        boolean allows(int from, int to) {
            return allowed.length == 0 || allowed[from][to];
        }
    }
}
