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

    /**
     * A voicing for each chord, keys from low to high. Chords of too few tones for the range have
     * fewer voices than asked for.
     */
    List<List<Integer>> search(List<Chord> chords) {
        List<Chord> changes = new ArrayList<>();
        for (Chord chord : chords) {
            if (changes.isEmpty() || !chord.equals(changes.get(changes.size() - 1))) {
                changes.add(chord);
            }
        }
        List<List<Integer>> laid = changes.isEmpty() ? List.of() : shortestWay(changes);
        // A chord struck again keeps its voicing: no other way could move less.
        List<List<Integer>> all = new ArrayList<>();
        int change = -1;
        for (int i = 0; i < chords.size(); i++) {
            change += i == 0 || !chords.get(i).equals(chords.get(i - 1)) ? 1 : 0;
            all.add(laid.get(change));
        }
        return all;
    }

    private List<List<Integer>> shortestWay(List<Chord> chords) {
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

    /**
     * Semitones that the voices move from one voicing to another. Where one has fewer voices, each
     * voice of the fuller one is measured to the nearest of the other.
     */
    static int motion(List<Integer> one, List<Integer> other) {
        if (one.size() < other.size()) {
            return motion(other, one);
        }
        int sum = 0;
        for (int i = 0; i < one.size(); i++) {
            int key = one.get(i);
            sum +=
                    one.size() == other.size()
                            ? Math.abs(key - other.get(i))
                            : other.stream().mapToInt(k -> Math.abs(key - k)).min().orElseThrow();
        }
        return sum;
    }

    /** All voicings of a chord in the range; those that sound clear, if there are any. */
    List<List<Integer>> voicings(Chord chord) {
        boolean octaves = voices.kind() == VoicingKind.OCTAVES;
        List<Integer> classes =
                voices.kind().classes(chord, octaves ? voices.count() - 1 : voices.count());
        List<List<Integer>> all =
                octaves ? inOctaves(classes) : everywhere(doubled(classes, chord));
        if (all.isEmpty()) {
            all = everywhere(classes);
        }
        List<List<Integer>> clear = all.stream().filter(VoicingSearch::isClear).toList();
        return clear.isEmpty() ? all : clear;
    }

    /** Where a chord has too few tones the root comes twice first, the third last. */
    private List<Integer> doubled(List<Integer> classes, Chord chord) {
        List<Integer> again = new ArrayList<>();
        for (int number : new int[] {1, 5}) {
            chord.degree(number)
                    .map(degree -> degree.on(chord.root()).pitchClass())
                    .filter(classes::contains)
                    .ifPresent(again::add);
        }
        classes.stream().filter(tone -> !again.contains(tone)).forEach(again::add);
        List<Integer> doubled = new ArrayList<>(classes);
        for (int i = 0; doubled.size() < voices.count(); i++) {
            doubled.add(again.get(i % again.size()));
        }
        return doubled;
    }

    /** Each tone as the lowest and, an octave above, the highest; the others between. */
    private List<List<Integer>> inOctaves(List<Integer> classes) {
        List<List<Integer>> all = new ArrayList<>();
        for (int key = low; key + 12 <= high; key++) {
            if (classes.contains(key % 12)) {
                List<Integer> keys = new ArrayList<>(List.of(key, key + 12));
                for (int other : classes) {
                    if (other != key % 12) {
                        keys.add(key + Math.floorMod(other - key, 12));
                    }
                }
                all.add(keys.stream().sorted().toList());
            }
        }
        return all;
    }

    private List<List<Integer>> everywhere(List<Integer> classes) {
        List<List<Integer>> all = new ArrayList<>();
        extend(classes, 0, new ArrayList<>(), all);
        return all.stream().distinct().toList();
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
                    List<Integer> keys = voicings.get(i);
                    long twice = 2L * keys.stream().mapToInt(key -> key).sum();
                    return Math.abs(twice - (long) keys.size() * (low + high));
                });
        return costs;
    }
}
