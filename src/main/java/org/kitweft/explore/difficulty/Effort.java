package org.kitweft.explore.difficulty;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;

/**
 * What it costs to strike from where the limbs stand, step by step, in whole points. A point is a
 * millisecond: travel costs what {@link ReachModel} says a move takes longer than striking the same
 * surface again, rounded, so that the kit's centimetres and the size of what is struck both count;
 * a move that is no longer than a repeated stroke costs nothing. Strokes in a row, crossing hands
 * and striking together have prices in the same unit, as hard as so many milliseconds of travel;
 * these are our own choice, no source. They order, they do not measure, and of travel {@link
 * ReachModel#CAVEAT} holds.
 *
 * <p>Stances and strikes are packed into a {@code long} each, so that a search can go through many
 * of them: 12 bits a limb for the surface (0 none), and for a stance 3 bits a limb for the strokes
 * in a row. A kit of more than {@value #MOST_SURFACES} surfaces does not fit.
 */
public final class Effort {
    /** Nobody has struck yet. */
    public static final long START = 0;

    /** The most surfaces of a kit. */
    public static final int MOST_SURFACES = 4095;

    /** Points for each limb beyond the first that strikes at one instant. */
    static final int TOGETHER = 10;

    /**
     * Points for going across: a stroke after which the right hand stands left of the left hand,
     * though it did not before. Staying there costs nothing, for the right hand on the hi-hat over
     * the left on the snare is how time is kept: common practice, no source.
     */
    static final int CROSSING = 60;

    /** How far hands may cross before it counts, in centimetres: design section 7. */
    static final double CROSSING_TOLERANCE_CM = 10;

    /** Points for the second, third, fourth and each further stroke in a row of a hand. */
    private static final int[] HAND_RUN = {0, 0, 5, 40, 80};

    /** The same of a foot: it does not bounce. */
    private static final int[] FOOT_RUN = {0, 0, 30, 60, 80};

    private static final int SURFACE_BITS = 12;
    private static final int RUN_BITS = 3;
    private static final int RUNS_AT = SURFACE_BITS * 4;
    private static final int LONGEST_RUN = HAND_RUN.length - 1;
    private static final Limb[] LIMBS = Limb.values();

    private final List<Surface> surfaces;
    private final Map<String, Integer> numbers;

    /** Points by limb, from and to. */
    private final int[][][] travel;

    /** The effort on a kit, with the published reach model. */
    public Effort(Kit kit) {
        this(kit, ReachModel.PUBLISHED);
    }

    /** The effort on a kit. */
    public Effort(Kit kit, ReachModel reach) {
        this.surfaces = kit.surfaces();
        if (surfaces.size() > MOST_SURFACES) {
            throw new IllegalArgumentException(
                    "kit \"%s\" has %d surfaces: expected at most %d"
                            .formatted(kit.name(), surfaces.size(), MOST_SURFACES));
        }
        this.numbers = new HashMap<>();
        for (int i = 0; i < surfaces.size(); i++) {
            numbers.put(surfaces.get(i).id(), i);
        }
        int[][] hands = travel(reach, Limb.RIGHT_HAND);
        int[][] feet = travel(reach, Limb.RIGHT_FOOT);
        this.travel = new int[LIMBS.length][][];
        for (Limb limb : LIMBS) {
            travel[limb.ordinal()] = limb.isHand() ? hands : feet;
        }
    }

    private int[][] travel(ReachModel reach, Limb limb) {
        int[][] points = new int[surfaces.size()][surfaces.size()];
        for (int i = 0; i < points.length; i++) {
            Surface from = surfaces.get(i);
            double repeat = reach.millis(limb, from, from);
            for (int j = 0; j < points.length; j++) {
                double longer = reach.millis(limb, from, surfaces.get(j)) - repeat;
                points[i][j] = Math.toIntExact(Math.round(longer));
            }
        }
        return points;
    }

    /**
     * Strikes with one more limb in them; a limb that strikes already stays where it is.
     *
     * @param strikes what else is struck at the instant; 0 nothing
     * @param sound on this kit; another sound is left out
     */
    public long with(long strikes, Limb limb, SoundName sound) {
        Integer number = numbers.get(sound.surface());
        return number == null || surfaceOf(strikes, limb) != 0
                ? strikes
                : strikes | ((long) (number + 1) << (limb.ordinal() * SURFACE_BITS));
    }

    /** Where the limbs stand after striking: who does not strike stays, and its run ends. */
    public long after(long stance, long strikes) {
        long after = 0;
        for (Limb limb : LIMBS) {
            int struck = surfaceOf(strikes, limb);
            int surface = struck == 0 ? surfaceOf(stance, limb) : struck;
            int run = struck == 0 ? 0 : Math.min(runOf(stance, limb) + 1, LONGEST_RUN);
            after |= (long) surface << (limb.ordinal() * SURFACE_BITS);
            after |= (long) run << (RUNS_AT + limb.ordinal() * RUN_BITS);
        }
        return after;
    }

    /** All points of striking from a stance. */
    public int points(long stance, long strikes) {
        return travel(stance, strikes)
                + runs(stance, strikes)
                + crossing(stance, strikes)
                + together(strikes);
    }

    int travel(long stance, long strikes) {
        int points = 0;
        for (Limb limb : LIMBS) {
            int from = surfaceOf(stance, limb);
            int to = surfaceOf(strikes, limb);
            points += from == 0 || to == 0 ? 0 : travel[limb.ordinal()][from - 1][to - 1];
        }
        return points;
    }

    int runs(long stance, long strikes) {
        int points = 0;
        for (Limb limb : LIMBS) {
            if (surfaceOf(strikes, limb) != 0) {
                int run = Math.min(runOf(stance, limb) + 1, LONGEST_RUN);
                points += limb.isHand() ? HAND_RUN[run] : FOOT_RUN[run];
            }
        }
        return points;
    }

    int crossing(long stance, long strikes) {
        int right = surfaceOf(strikes, Limb.RIGHT_HAND);
        int left = surfaceOf(strikes, Limb.LEFT_HAND);
        if (right == 0 && left == 0) {
            return 0;
        }
        int rightBefore = surfaceOf(stance, Limb.RIGHT_HAND);
        int leftBefore = surfaceOf(stance, Limb.LEFT_HAND);
        return !crossed(rightBefore, leftBefore)
                        && crossed(right == 0 ? rightBefore : right, left == 0 ? leftBefore : left)
                ? CROSSING
                : 0;
    }

    private boolean crossed(int right, int left) {
        return right != 0
                && left != 0
                && surfaces.get(right - 1).x() < surfaces.get(left - 1).x() - CROSSING_TOLERANCE_CM;
    }

    int together(long strikes) {
        int limbs = 0;
        for (Limb limb : LIMBS) {
            limbs += surfaceOf(strikes, limb) == 0 ? 0 : 1;
        }
        return Math.max(0, limbs - 1) * TOGETHER;
    }

    private static int surfaceOf(long packed, Limb limb) {
        return (int) (packed >>> (limb.ordinal() * SURFACE_BITS)) & MOST_SURFACES;
    }

    private static int runOf(long stance, Limb limb) {
        return (int) (stance >>> (RUNS_AT + limb.ordinal() * RUN_BITS)) & ((1 << RUN_BITS) - 1);
    }
}
