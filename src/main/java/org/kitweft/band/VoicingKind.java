package org.kitweft.band;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which tones of a chord a player of chords takes first. Only tones that the chart writes are
 * played. Common practice, no source.
 */
enum VoicingKind {
    /** Root and fifth: clear under distortion. */
    POWER,
    /** Root, third, fifth, then the seventh. */
    TRIAD,
    /** Third and seventh first, then the colours, without the root while others are left. */
    ROOTLESS,
    /** Third, seventh, root, fifth, then the colours: close harmony. */
    CLOSE,
    /** A close triad with its lowest tone again an octave above: pianists break it in octaves. */
    OCTAVES;

    static Optional<VoicingKind> of(String id) {
        for (VoicingKind kind : values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(id)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /**
     * Pitch classes for so many voices; where the chord has too few tones, the first come twice.
     */
    List<Integer> classes(Chord chord, int voices) {
        Set<ChordDegree> wanted = new LinkedHashSet<>();
        List<Integer> order =
                switch (this) {
                    case POWER -> List.of(1, 5);
                    case TRIAD, OCTAVES -> List.of(1, 3, 4, 2, 5, 7, 6, 9, 11, 13);
                    case ROOTLESS -> List.of(3, 4, 2, 7, 6, 9, 13, 11, 5, 1);
                    case CLOSE -> List.of(3, 4, 2, 7, 6, 1, 5, 9, 13, 11);
                };
        for (int number : order) {
            chord.degrees().stream()
                    .filter(degree -> degree.number() == number)
                    .filter(degree -> !clashes(degree, chord))
                    .forEach(wanted::add);
        }
        return wanted.stream()
                .map(degree -> degree.on(chord.root()).pitchClass())
                .distinct()
                .limit(voices)
                .toList();
    }

    /** An eleventh rubs against a major third; players leave it out. */
    private static boolean clashes(ChordDegree degree, Chord chord) {
        return degree.equals(new ChordDegree(11, 0))
                && chord.degrees().contains(new ChordDegree(3, 0));
    }
}
