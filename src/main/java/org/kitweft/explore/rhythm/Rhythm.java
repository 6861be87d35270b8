package org.kitweft.explore.rhythm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which steps of a cycle are struck, and nothing else: no sound, no dynamic. The cycle comes round:
 * after the last step the first follows.
 *
 * @param steps length of the cycle, at least 1
 * @param struck the struck steps, each 0 to {@code steps - 1}; may be empty
 */
public record Rhythm(int steps, SortedSet<Integer> struck) {

    public Rhythm {
        struck = Collections.unmodifiableSortedSet(new TreeSet<>(struck));
        if (steps < 1) {
            throw new IllegalArgumentException(
                    "a rhythm has at least 1 step, not %d".formatted(steps));
        }
        if (!struck.isEmpty() && (struck.first() < 0 || struck.last() >= steps)) {
            throw new IllegalArgumentException(
                    "struck step %d: expected 0 to %d"
                            .formatted(
                                    struck.first() < 0 ? struck.first() : struck.last(),
                                    steps - 1));
        }
    }

    /**
     * Reads {@code x..x..x.}: x struck, a dot or hyphen silent.
     *
     * @throws IllegalArgumentException naming the first other character
     */
    public static Rhythm of(String text) {
        SortedSet<Integer> struck = new TreeSet<>();
        for (int i = 0; i < text.length(); i++) {
            char found = text.charAt(i);
            if (found == 'x') {
                struck.add(i);
            } else if (found != '.' && found != '-') {
                throw new IllegalArgumentException(
                        "rhythm \"%s\", character %d: found '%c', expected x, . or -"
                                .formatted(text, i + 1, found));
            }
        }
        return new Rhythm(text.length(), struck);
    }

    /** Whether a step is struck; any whole number, the cycle coming round. */
    public boolean isStruck(int step) {
        return struck.contains(Math.floorMod(step, steps));
    }

    /** The struck steps in order. */
    public List<Integer> inOrder() {
        return List.copyOf(struck);
    }

    /**
     * Steps from each struck step to the next, the last one's over the end to the first: they sum
     * to the length of the cycle. Empty if nothing is struck.
     */
    public List<Integer> durations() {
        List<Integer> at = inOrder();
        List<Integer> durations = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            int next = i + 1 < at.size() ? at.get(i + 1) : at.get(0) + steps;
            durations.add(next - at.get(i));
        }
        return durations;
    }

    /** The text that reads back to this rhythm. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (int step = 0; step < steps; step++) {
            text.append(struck.contains(step) ? 'x' : '.');
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return text();
    }
}
