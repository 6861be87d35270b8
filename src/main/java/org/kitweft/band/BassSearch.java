package org.kitweft.band;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;

/**
 * Finds the keys of a bass line: a least-cost way, exact, through the keys that each note may have.
 * Notes of a figure have one key; walking tones and approaches have many, and the way joins them in
 * small steps. The weights are our own choice; where ways are equal, the seed decides.
 */
final class BassSearch {
    private static final int FORBIDDEN = 1_000;

    /** A line that goes on in its direction sounds led. */
    private static final int TURN = 4;

    private final StyleLine line;
    private final boolean walks;

    BassSearch(StyleLine line) {
        this.line = line;
        this.walks =
                line.figures().stream()
                        .flatMap(figure -> figure.steps().stream())
                        .anyMatch(step -> step.voice().equals("w"));
    }

    /** A key for each cue; all of them sound. The last leads into the first: phrases are looped. */
    List<Integer> search(List<Cue> cues, long seed) {
        if (cues.isEmpty()) {
            return List.of();
        }
        List<Cue> round = new ArrayList<>(cues);
        round.add(cues.get(0));
        return shortestWay(round, seed).subList(0, cues.size());
    }

    private List<Integer> shortestWay(List<Cue> cues, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<List<State>> choices = cues.stream().map(this::keys).map(BassSearch::states).toList();
        List<int[]> from = new ArrayList<>();
        int[] cost = own(cues, choices, 0, random);
        for (int i = 1; i < cues.size(); i++) {
            int[] reached = own(cues, choices, i, random);
            int[] best = new int[reached.length];
            for (int to = 0; to < reached.length; to++) {
                int least = Integer.MAX_VALUE;
                for (int back = 0; back < cost.length; back++) {
                    int way =
                            cost[back]
                                    + step(
                                            cues.get(i - 1),
                                            choices.get(i - 1).get(back),
                                            cues.get(i),
                                            choices.get(i).get(to));
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
        List<Integer> keys = new ArrayList<>();
        for (int i = cues.size() - 1; i >= 0; i--) {
            keys.add(choices.get(i).get(at).key());
            at = i > 0 ? from.get(i - 1)[at] : at;
        }
        Collections.reverse(keys);
        return keys;
    }

    /** The keys a cue may have. */
    private List<Integer> keys(Cue cue) {
        Chord chord = cue.chord().orElseThrow();
        int root = atOrAbove(line.low(), chord.bass().pitchClass());
        return switch (cue.step().voice()) {
            case "1" ->
                    walks && root + 12 <= line.high() ? List.of(root, root + 12) : List.of(root);
            case "8" -> List.of(root + 12 <= line.high() ? root + 12 : root);
            case ",5" -> {
                int fifth = toneClass(chord, 5);
                int below = root - Math.floorMod(root - fifth, 12);
                yield List.of(below >= line.low() ? below : atOrAbove(root, fifth));
            }
            case "w" -> scaleKeys(chord);
            case "a" -> allKeys();
            default -> {
                int tone = toneClass(chord, Integer.parseInt(cue.step().voice()));
                int above = atOrAbove(root, tone);
                yield walks && above - 12 >= line.low()
                        ? List.of(above, above - 12)
                        : List.of(above);
            }
        };
    }

    private static int atOrAbove(int key, int pitchClass) {
        return key + Math.floorMod(pitchClass - key, 12);
    }

    /** The chord's own degree, or the tone that stands for it. */
    private static int toneClass(Chord chord, int number) {
        List<Integer> inTurn =
                switch (number) {
                    case 3 -> List.of(3, 4, 2, 5);
                    case 6 -> List.of(6, 13, 5);
                    case 7 -> List.of(7, 6, 1);
                    default -> List.of(number);
                };
        for (int candidate : inTurn) {
            if (chord.degree(candidate).isPresent()) {
                return chord.degree(candidate).get().on(chord.root()).pitchClass();
            }
        }
        return new ChordDegree(number, 0).on(chord.root()).pitchClass();
    }

    private List<Integer> allKeys() {
        List<Integer> keys = new ArrayList<>();
        for (int key = line.low(); key <= line.high(); key++) {
            keys.add(key);
        }
        return keys;
    }

    private List<Integer> scaleKeys(Chord chord) {
        Set<Integer> scale = scale(chord);
        return allKeys().stream().filter(key -> scale.contains(key % 12)).toList();
    }

    /**
     * Chord tones, and the tones of the major scale between, seventh lowered unless it is major.
     */
    private static Set<Integer> scale(Chord chord) {
        Set<Integer> scale = chordClasses(chord);
        for (int number : new int[] {2, 4, 6}) {
            boolean written = chord.degree(number).or(() -> chord.degree(number + 7)).isPresent();
            if (!written) {
                scale.add(new ChordDegree(number, 0).on(chord.root()).pitchClass());
            }
        }
        return scale;
    }

    private static Set<Integer> chordClasses(Chord chord) {
        Set<Integer> classes = new TreeSet<>();
        chord.tones().forEach(tone -> classes.add(tone.pitchClass()));
        return classes;
    }

    /** A key, and whether the line comes to it from below or from above. */
    private record State(int key, int direction) {}

    private static List<State> states(List<Integer> keys) {
        List<State> states = new ArrayList<>();
        for (int key : keys) {
            states.add(new State(key, 1));
            states.add(new State(key, -1));
        }
        return states;
    }

    private int[] own(
            List<Cue> cues, List<List<State>> choices, int index, SplittableRandom random) {
        Cue cue = cues.get(index);
        List<State> states = choices.get(index);
        int[] costs = new int[states.size()];
        if (costs.length == 2) {
            return costs;
        }
        Set<Integer> tones = chordClasses(cue.chord().orElseThrow());
        int middle = (line.low() + line.high()) / 2;
        Arrays.setAll(
                costs,
                i -> {
                    int colour =
                            cue.step().voice().equals("w")
                                            && !tones.contains(states.get(i).key() % 12)
                                    ? 4
                                    : 0;
                    int middling = Math.abs(states.get(i).key() - middle) / 3;
                    return colour + middling + random.nextInt(4);
                });
        return costs;
    }

    /** What it costs to go from one note to the next. */
    private static int step(Cue from, State before, Cue to, State here) {
        int size = Math.abs(before.key() - here.key());
        if (size != 0 && Integer.signum(here.key() - before.key()) != here.direction()) {
            return FORBIDDEN * FORBIDDEN;
        }
        if (from.step().voice().equals("a")) {
            return size == 1 ? 0 : size == 2 ? 2 : FORBIDDEN * (1 + size);
        }
        boolean free = isFree(from) || isFree(to);
        if (!free) {
            return size;
        }
        if (size == 0) {
            return 14;
        }
        int turn = here.direction() == before.direction() ? 0 : TURN;
        return turn + leap(size);
    }

    private static int leap(int size) {
        return size <= 2 ? 0 : size <= 4 ? 2 : size <= 7 ? 6 : size <= 12 ? 18 : 60;
    }

    private static boolean isFree(Cue cue) {
        return cue.step().voice().equals("w") || cue.step().voice().equals("a");
    }
}
