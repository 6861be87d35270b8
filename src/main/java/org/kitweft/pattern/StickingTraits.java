package org.kitweft.pattern;

import java.util.ArrayList;
import java.util.List;

/**
 * What a teacher asks of a sticking. Rests end a run; dynamics and ornaments do not count.
 *
 * <p>"On repeat" means that the sticking is played over and over, its end leading into its start.
 */
public final class StickingTraits {
    private static final int REST_CODE = Letter.values().length;

    private StickingTraits() {}

    /** The most strokes in a row by one letter, read once from start to end. */
    public static int longestRun(Sticking sticking) {
        return runs(sticking).stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    /**
     * The most strokes in a row by one letter on repeat; {@link Integer#MAX_VALUE} if one letter
     * plays everything, for then the run never ends.
     */
    public static int longestRunOnRepeat(Sticking sticking) {
        boolean oneLetter =
                sticking.letters().size() == 1 && sticking.struckCount() == sticking.size();
        if (oneLetter) {
            return Integer.MAX_VALUE;
        }
        return longestRun(startingAtARun(sticking));
    }

    /**
     * Whether the lead changes over on repeat: the last stroke is by the hand that played the
     * first, so that by alternation the other hand begins the next time. So a five-stroke roll
     * (RRLLR) changes over and a six-stroke roll (RLLRRL) does not; see {@code rudiments.csv}.
     */
    public static boolean leadChangesOnRepeat(Sticking sticking) {
        List<Stroke.Struck> struck = sticking.struck();
        return !struck.isEmpty()
                && struck.get(0).letter().isOneHand()
                && struck.get(0).letter() == struck.get(struck.size() - 1).letter();
    }

    /** What the sticking is made of. */
    public static StickingFamily family(Sticking sticking) {
        List<Integer> runs = runs(sticking);
        if (sticking.letters().size() == 2
                && runs(startingAtARun(sticking)).stream().allMatch(run -> run == 2)) {
            return StickingFamily.DOUBLES;
        }
        if (runs.stream().allMatch(run -> run <= 1)) {
            return StickingFamily.SINGLES;
        }
        if (runs.stream().allMatch(run -> run == 2)) {
            return StickingFamily.DOUBLES;
        }
        return runs.stream().allMatch(run -> run <= 2)
                ? StickingFamily.PARADIDDLES
                : StickingFamily.LONGER_RUNS;
    }

    /** Whether both are one cycle, entered at different strokes perhaps. */
    public static boolean sameCycle(Sticking one, Sticking other) {
        return one.size() == other.size()
                && smallestRotation(codes(one)).equals(smallestRotation(codes(other)));
    }

    /** Whether the sticking is its own mirror image, entered at another stroke: RLRR LRLL. */
    public static boolean sameAfterSwappingHands(Sticking sticking) {
        return sameCycle(sticking, sticking.handsSwapped());
    }

    /** Whether the sticking comes first among all that are the same cycle (R before L). */
    public static boolean firstOfItsCycle(Sticking sticking) {
        List<Integer> codes = codes(sticking);
        return smallestRotation(codes).equals(codes);
    }

    /** Whether the sticking comes before, or is, the one with the hands swapped (R before L). */
    public static boolean firstOfItsSwap(Sticking sticking) {
        return compare(codes(sticking), codes(sticking.handsSwapped())) <= 0;
    }

    /** Whether the sticking comes first among all that are its cycle, hands swapped or not. */
    public static boolean firstOfItsCycleAndSwap(Sticking sticking) {
        return firstOfItsCycle(sticking)
                && compare(codes(sticking), smallestRotation(codes(sticking.handsSwapped()))) <= 0;
    }

    /** The lengths of the runs, in order. */
    private static List<Integer> runs(Sticking sticking) {
        List<Integer> runs = new ArrayList<>();
        int length = 0;
        int running = REST_CODE;
        for (int code : codes(sticking)) {
            if (code == running && code != REST_CODE) {
                length++;
            } else {
                if (length > 0) {
                    runs.add(length);
                }
                length = code == REST_CODE ? 0 : 1;
                running = code;
            }
        }
        if (length > 0) {
            runs.add(length);
        }
        return runs;
    }

    /** The same cycle, entered where a run begins, so that no run crosses the end. */
    private static Sticking startingAtARun(Sticking sticking) {
        List<Integer> codes = codes(sticking);
        for (int i = 0; i < codes.size(); i++) {
            if (!codes.get(i).equals(codes.get(Math.floorMod(i - 1, codes.size())))) {
                return sticking.rotated(i);
            }
        }
        return sticking;
    }

    private static List<Integer> codes(Sticking sticking) {
        return sticking.strokes().stream()
                .map(s -> s.struck().map(struck -> struck.letter().ordinal()).orElse(REST_CODE))
                .toList();
    }

    private static List<Integer> smallestRotation(List<Integer> codes) {
        List<Integer> best = codes;
        for (int i = 1; i < codes.size(); i++) {
            List<Integer> turned = new ArrayList<>(codes.subList(i, codes.size()));
            turned.addAll(codes.subList(0, i));
            if (compare(turned, best) < 0) {
                best = turned;
            }
        }
        return best;
    }

    private static int compare(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = one.get(i).compareTo(other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
