package org.kitweft.band;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Lays chords on keys so that the voices move as little as possible in all: a shortest way through
 * all voicings of all chords, exact. Of equal ways it takes the one nearest the middle of the
 * range, then the lowest.
 *
 * <p>Motion is the sum of the semitones each voice moves, voices counted from the lowest.
 */
final class VoicingSearch {
    /** Motion counts before all else, so it outweighs any distance from the middle. */
    private static final long MOTION = 100_000;

    /** A wide grip for two hands at the keyboard, close enough to blend. Our own choice. */
    private static final int WIDEST = 19;

    /** Below the third of this key close seconds growl. Common practice, no source. */
    private static final int GROWL = 52;

    private final StyleLine.Voices voices;
    private final int low;
    private final int high;

    VoicingSearch(StyleLine.Voices voices, int low, int high) {
        this.voices = voices;
        this.low = low;
        this.high = high;
    }

    /** A voicing for each chord, keys from low to high; all have the same number of voices. */
    List<List<Integer>> search(List<Chord> chords) {
        if (chords.isEmpty()) {
            return List.of();
        }
        List<List<List<Integer>>> choices = chords.stream().map(this::voicings).toList();
        List<int[]> from = new ArrayList<>();
        long[] cost = costs(choices.get(0));
        for (int i = 1; i < choices.size(); i++) {
            List<List<Integer>> before = choices.get(i - 1);
            List<List<Integer>> here = choices.get(i);
            long[] reached = costs(here);
            int[] best = new int[here.size()];
            for (int to = 0; to < here.size(); to++) {
                long least = Long.MAX_VALUE;
                for (int back = 0; back < before.size(); back++) {
                    long way = cost[back] + MOTION * motion(before.get(back), here.get(to));
                    if (way < least) {
                        least = way;
                        best[to] = back;
                    }
                }
                reached[to] += least;
            }
            from.add(best);
            cost = reached;
        }
        int at = 0;
        for (int i = 1; i < cost.length; i++) {
            at = cost[i] < cost[at] ? i : at;
        }
        List<List<Integer>> way = new ArrayList<>();
        for (int i = choices.size() - 1; i >= 0; i--) {
            way.add(choices.get(i).get(at));
            at = i > 0 ? from.get(i - 1)[at] : at;
        }
        Collections.reverse(way);
        return way;
    }

    /** Semitones that the voices move from one voicing to another of as many voices. */
    static int motion(List<Integer> one, List<Integer> other) {
        int sum = 0;
        for (int i = 0; i < one.size(); i++) {
            sum += Math.abs(one.get(i) - other.get(i));
        }
        return sum;
    }

    /** All voicings of a chord in the range; those that sound clear, if there are any. */
    List<List<Integer>> voicings(Chord chord) {
        List<List<Integer>> all = new ArrayList<>();
        extend(voices.kind().classes(chord, voices.count()), 0, new ArrayList<>(), all);
        List<List<Integer>> distinct = all.stream().distinct().toList();
        List<List<Integer>> clear = distinct.stream().filter(VoicingSearch::isClear).toList();
        return clear.isEmpty() ? distinct : clear;
    }

    private void extend(
            List<Integer> classes, int index, List<Integer> keys, List<List<Integer>> all) {
        if (index == classes.size()) {
            all.add(keys.stream().sorted().toList());
            return;
        }
        int first = low + Math.floorMod(classes.get(index) - low, 12);
        for (int key = first; key <= high; key += 12) {
            if (!keys.contains(key)) {
                keys.add(key);
                extend(classes, index + 1, keys, all);
                keys.remove(keys.size() - 1);
            }
        }
    }

    private static boolean isClear(List<Integer> keys) {
        int top = keys.size() - 1;
        boolean rubsOnTop = keys.get(top) - keys.get(top - 1) == 1;
        boolean growls = keys.get(0) < GROWL && keys.get(1) - keys.get(0) < 3;
        return !rubsOnTop && !growls && keys.get(top) - keys.get(0) <= WIDEST;
    }

    private long[] costs(List<List<Integer>> voicings) {
        long[] costs = new long[voicings.size()];
        Arrays.setAll(
                costs,
                i -> {
                    long twice = 2L * voicings.get(i).stream().mapToInt(k -> k).sum();
                    return Math.abs(twice - (long) voices.count() * (low + high));
                });
        return costs;
    }
}
