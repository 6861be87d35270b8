package org.kitweft.score.musicxml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.audiveris.proxymusic.DegreeTypeValue;
import org.audiveris.proxymusic.KindValue;
import org.kitweft.band.Chord;
import org.kitweft.band.ChordDegree;

/**
 * A chord as a kind of MusicXML and what the chord has otherwise.
 *
 * @param value the kind whose tones are most like the chord's
 * @param changes what makes the kind the chord
 */
record ChordKind(KindValue value, List<Change> changes) {
    /** The kinds and their tones: W3C MusicXML 4.0, type {@code kind-value}. */
    private static final List<Tones> KINDS =
            List.of(
                    tones(KindValue.MAJOR, "1 3 5"),
                    tones(KindValue.MINOR, "1 b3 5"),
                    tones(KindValue.AUGMENTED, "1 3 #5"),
                    tones(KindValue.DIMINISHED, "1 b3 b5"),
                    tones(KindValue.DOMINANT, "1 3 5 b7"),
                    tones(KindValue.MAJOR_SEVENTH, "1 3 5 7"),
                    tones(KindValue.MINOR_SEVENTH, "1 b3 5 b7"),
                    tones(KindValue.DIMINISHED_SEVENTH, "1 b3 b5 bb7"),
                    tones(KindValue.AUGMENTED_SEVENTH, "1 3 #5 b7"),
                    tones(KindValue.HALF_DIMINISHED, "1 b3 b5 b7"),
                    tones(KindValue.MAJOR_MINOR, "1 b3 5 7"),
                    tones(KindValue.MAJOR_SIXTH, "1 3 5 6"),
                    tones(KindValue.MINOR_SIXTH, "1 b3 5 6"),
                    tones(KindValue.DOMINANT_NINTH, "1 3 5 b7 9"),
                    tones(KindValue.MAJOR_NINTH, "1 3 5 7 9"),
                    tones(KindValue.MINOR_NINTH, "1 b3 5 b7 9"),
                    tones(KindValue.DOMINANT_11_TH, "1 3 5 b7 9 11"),
                    tones(KindValue.MAJOR_11_TH, "1 3 5 7 9 11"),
                    tones(KindValue.MINOR_11_TH, "1 b3 5 b7 9 11"),
                    tones(KindValue.DOMINANT_13_TH, "1 3 5 b7 9 11 13"),
                    tones(KindValue.MAJOR_13_TH, "1 3 5 7 9 11 13"),
                    tones(KindValue.MINOR_13_TH, "1 b3 5 b7 9 11 13"),
                    tones(KindValue.SUSPENDED_SECOND, "1 2 5"),
                    tones(KindValue.SUSPENDED_FOURTH, "1 4 5"),
                    tones(KindValue.POWER, "1 5"));

    private record Tones(KindValue value, SortedSet<ChordDegree> degrees) {}

    /**
     * One tone that differs.
     *
     * @param number its degree
     * @param alter semitones: of what is added against a dominant chord, else against the kind
     */
    record Change(int number, int alter, DegreeTypeValue type) {}

    ChordKind {
        changes = List.copyOf(changes);
    }

    private static Tones tones(KindValue value, String degrees) {
        SortedSet<ChordDegree> read = new TreeSet<>();
        Arrays.stream(degrees.split(" ", -1)).forEach(text -> read.add(degree(text)));
        return new Tones(value, read);
    }

    private static ChordDegree degree(String text) {
        int signs = 0;
        while (text.charAt(signs) == 'b' || text.charAt(signs) == '#') {
            signs++;
        }
        return new ChordDegree(
                Integer.parseInt(text.substring(signs)), text.startsWith("b") ? -signs : signs);
    }

    /** The kind with the fewest changes, of several the plainest. */
    static ChordKind of(Chord chord) {
        return KINDS.stream()
                .map(kind -> new ChordKind(kind.value(), changes(kind.degrees(), chord.degrees())))
                .min(Comparator.comparingInt(kind -> kind.changes().size()))
                .orElseThrow();
    }

    private static List<Change> changes(SortedSet<ChordDegree> kind, SortedSet<ChordDegree> chord) {
        SortedSet<ChordDegree> gone = new TreeSet<>(kind);
        gone.removeAll(chord);
        SortedSet<ChordDegree> added = new TreeSet<>(chord);
        added.removeAll(kind);
        List<Change> changes = new ArrayList<>();
        for (ChordDegree old : gone) {
            ChordDegree other =
                    added.stream()
                            .filter(degree -> degree.number() == old.number())
                            .findFirst()
                            .orElse(old);
            added.remove(other);
            int alter = other.alteration() - old.alteration();
            changes.add(
                    new Change(
                            old.number(),
                            alter,
                            alter == 0 ? DegreeTypeValue.SUBTRACT : DegreeTypeValue.ALTER));
        }
        for (ChordDegree degree : added) {
            int ofDominant = degree.number() == 7 ? -1 : 0;
            changes.add(
                    new Change(
                            degree.number(),
                            degree.alteration() - ofDominant,
                            DegreeTypeValue.ADD));
        }
        return changes;
    }
}
