package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;

/**
 * Writes the sounds that a letter strikes in turn as briefly as the voicing allows: paths that come
 * round, for accents and ghosts apart or not, and single strokes elsewhere.
 *
 * @param path for all strokes that have no path of their own
 * @param accents empty: as the path
 * @param ghosts empty: as the path
 * @param strokes single strokes elsewhere, by index
 * @param names how many sounds had to be named; a single stroke counts {@value #STROKE_COSTS}
 */
record Paths(
        List<SoundName> path,
        List<SoundName> accents,
        List<SoundName> ghosts,
        SortedMap<Integer, SoundName> strokes,
        int names) {
    private static final int STROKE_COSTS = 2;
    private static final int LONGEST_TRIED = 64;

    /**
     * One strike of a letter.
     *
     * @param free whether the stroke may be named by itself: it is on one sound in every pass
     */
    record Turn(int stroke, Dynamic dynamic, SoundName sound, boolean free) {}

    /**
     * The briefest writing.
     *
     * @param turns in time, at least one
     */
    static Paths of(List<Turn> turns) {
        List<Paths> all = new ArrayList<>();
        for (boolean accents : new boolean[] {false, true}) {
            for (boolean ghosts : new boolean[] {false, true}) {
                List<Turn> own = new ArrayList<>();
                List<Turn> accented = new ArrayList<>();
                List<Turn> ghosted = new ArrayList<>();
                for (Turn turn : turns) {
                    boolean apart =
                            (accents && turn.dynamic == Dynamic.ACCENT)
                                    || (ghosts && turn.dynamic == Dynamic.GHOST);
                    (!apart ? own : turn.dynamic == Dynamic.ACCENT ? accented : ghosted).add(turn);
                }
                if (!own.isEmpty()
                        && accents != accented.isEmpty()
                        && ghosts != ghosted.isEmpty()) {
                    all.add(joined(line(own), line(accented), line(ghosted)));
                }
            }
        }
        return all.stream().min(Comparator.comparingInt(Paths::names)).orElseThrow();
    }

    private record Line(List<SoundName> path, SortedMap<Integer, SoundName> strokes) {
        int names() {
            return path.size() + STROKE_COSTS * strokes.size();
        }
    }

    private static Paths joined(Line own, Line accented, Line ghosted) {
        SortedMap<Integer, SoundName> strokes = new TreeMap<>(own.strokes);
        strokes.putAll(accented.strokes);
        strokes.putAll(ghosted.strokes);
        return new Paths(
                own.path,
                accented.path,
                ghosted.path,
                strokes,
                own.names() + accented.names() + ghosted.names());
    }

    private static Line line(List<Turn> turns) {
        Line best = new Line(turns.stream().map(Turn::sound).toList(), new TreeMap<>());
        for (int length = 1; length < Math.min(turns.size(), LONGEST_TRIED + 1); length++) {
            List<Line> found = ofLength(turns, length);
            if (!found.isEmpty() && found.get(0).names() < best.names()) {
                best = found.get(0);
            }
        }
        return best;
    }

    /** The writing with a path of one length, or none. */
    private static List<Line> ofLength(List<Turn> turns, int length) {
        List<SoundName> path = new ArrayList<>();
        SortedMap<Integer, SoundName> strokes = new TreeMap<>();
        for (int start = 0; start < length; start++) {
            List<Turn> same = new ArrayList<>();
            for (int i = start; i < turns.size(); i += length) {
                same.add(turns.get(i));
            }
            SoundName sound = bestFor(same);
            for (Turn turn : same) {
                if (!turn.sound.equals(sound)) {
                    if (!turn.free) {
                        return List.of();
                    }
                    strokes.put(turn.stroke, turn.sound);
                }
            }
            path.add(sound);
        }
        return List.of(new Line(path, strokes));
    }

    /** The sound that has to be meant, or else that most turns strike, the first of equals. */
    private static SoundName bestFor(List<Turn> same) {
        Map<SoundName, Integer> counts = new HashMap<>();
        SoundName best = same.get(0).sound;
        for (Turn turn : same) {
            if (!turn.free) {
                return turn.sound;
            }
            if (counts.merge(turn.sound, 1, Integer::sum) > counts.getOrDefault(best, 0)) {
                best = turn.sound;
            }
        }
        return best;
    }
}
