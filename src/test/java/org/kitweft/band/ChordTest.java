package org.kitweft.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.pattern.TextFormatException;

class ChordTest {

    /**
     * Tones of the qualities: W3C MusicXML 4.0, type kind-value (from memory), spelled out by
     * thirds; rows marked common have no source but common practice.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            quoteCharacter = '"',
            textBlock =
                    """
                    C,            C E G
                    Cm,           C Eb G
                    Cmi,          C Eb G
                    C-,           C Eb G
                    Cdim,         C Eb Gb
                    Co,           C Eb Gb
                    Caug,         C E G#
                    C+,           C E G#
                    C5,           C G
                    Csus2,        C D G
                    Csus4,        C F G
                    Csus,         C F G
                    C6,           C E G A
                    Cm6,          C Eb G A
                    C7,           C E G Bb
                    Cmaj7,        C E G B
                    CM7,          C E G B
                    CΔ,           C E G B
                    CΔ7,          C E G B
                    Cm7,          C Eb G Bb
                    C-7,          C Eb G Bb
                    Cmin7,        C Eb G Bb
                    Cm(maj7),     C Eb G B
                    CmMaj7,       C Eb G B
                    CmM7,         C Eb G B
                    C-Δ7,         C Eb G B
                    Cm7b5,        C Eb Gb Bb
                    Cø,           C Eb Gb Bb
                    Cø7,          C Eb Gb Bb
                    Cdim7,        C Eb Gb Bbb
                    C°7,          C Eb Gb Bbb
                    C+7,          C E G# Bb
                    C7#5,         C E G# Bb
                    Cmaj7#5,      C E G# B
                    C9,           C E G Bb D
                    Cmaj9,        C E G B D
                    Cm9,          C Eb G Bb D
                    C11,          C E G Bb D F
                    Cm11,         C Eb G Bb D F
                    C13,          C E G Bb D F A
                    Cmaj13,       C E G B D F A
                    Cm13,         C Eb G Bb D F A
                    C7sus4,       C F G Bb
                    C9sus4,       C F G Bb D
                    C69,          C E G A D
                    C6/9,         C E G A D
                    Cm69,         C Eb G A D
                    Cadd9,        C E G D
                    Cmadd9,       C Eb G D
                    Cm(add9),     C Eb G D
                    C7b9,         C E G Bb Db
                    C7#9,         C E G Bb D#
                    C7-9,         C E G Bb Db
                    C7b5,         C E Gb Bb
                    "C7(b9,#11)", C E G Bb Db F#
                    C7(b9#9),     C E G Bb Db D#
                    C13b9,        C E G Bb Db F A
                    Cmaj7#11,     C E G B F#
                    C7b13,        C E G Bb Ab
                    C7alt,        C E Bb Db D# Ab
                    Ebm7,         Eb Gb Bb Db
                    E♭m7,         Eb Gb Bb Db
                    F#m7b5,       F# A C E
                    F♯dim7,       F# A C Eb
                    G#7,          G# B# D# F#
                    Bbm(maj7),    Bb Db F A
                    Ab7b9,        Ab C Eb Gb Bbb
                    Gbmaj7,       Gb Bb Db F
                    Dbdim7,       Db Fb Abb Cbb
                    B7,           B D# F# A
                    Bmaj7#11,     B D# F# A# E#
                    C#maj7,       C# E# G# B#
                    Fbm7,         Fb Abb Cb Ebb
                    E+,           E G# B#
                    """)
    void isSpelledByItsDegrees(String symbol, String tones) {
        Chord chord = Chord.parse(symbol);
        assertThat(spelled(chord)).isEqualTo(tones);
        assertThat(Chord.parse(chord.text())).isEqualTo(chord);
    }

    @ParameterizedTest
    @CsvSource({"C/E, E, C/E", "Dm7/G, G, Dm7/G", "F#m7b5/C, C, F#m7b5/C", "C6/9/Bb, Bb, C6/9/Bb"})
    void aSlashNamesTheBass(String symbol, String bass, String text) {
        Chord chord = Chord.parse(symbol);
        assertThat(chord.bass().text()).isEqualTo(bass);
        assertThat(chord.text()).isEqualTo(text);
    }

    /** Position of the fault, from 0, and what was expected there. */
    @ParameterizedTest(name = "{0}: at {1}")
    @CsvSource(
            quoteCharacter = '"',
            textBlock =
                    """
                    "",       0, a chord root A to G
                    H7,       0, a chord root A to G
                    c,        0, a chord root A to G
                    Cx,       1, a quality such as
                    Cm8,      2, "5, 6, 69, 7, 9, 11 or 13"
                    C7b,      3, "5, 6, 9, 11 or 13"
                    C7b7,     3, "5, 6, 9, 11 or 13"
                    Cadd,     4, "2, 4, 6, 9, 11 or 13"
                    C7(b9,    2, "a ')' for this '('"
                    C/,       2, a bass A to G after the slash
                    C/H,      2, a bass A to G after the slash
                    C/Em,     3, the end of the chord after its bass
                    C5no5,    4, a chord of two tones at least
                    """)
    void anUnknownChordIsPointedAt(String symbol, int index, String expected) {
        TextFormatException fault =
                catchThrowableOfType(TextFormatException.class, () -> Chord.parse(symbol));
        assertThat(fault).isNotNull();
        assertThat(fault.expected()).startsWith(expected);
        assertThat(fault.index()).isEqualTo(index);
    }

    /** Worked examples, common practice, no source: a fourth, a whole tone, a half tone up. */
    @ParameterizedTest(name = "{0} by {1}: {2}")
    @CsvSource({
        "Cm7, 5, Fm7", "F#m7b5, 2, G#m7b5", "Bb7/D, 2, C7/E", "Ebmaj7, 1, Emaj7", "Am7, 3, Cm7",
        "G7, -2, F7", "D#m7, 4, Gm7", "C, 12, C", "Dm7, -12, Dm7", "Abmaj7, 4, Cmaj7"
    })
    void isTransposed(String symbol, int semitones, String expected) {
        assertThat(Chord.parse(symbol).transposed(semitones).text()).isEqualTo(expected);
    }

    static Stream<String> roots() {
        return "CDEFGAB"
                .chars()
                .mapToObj(letter -> String.valueOf((char) letter))
                .flatMap(letter -> Stream.of(letter + "b", letter, letter + "#"));
    }

    @ParameterizedTest
    @MethodSource("roots")
    void transposedItKeepsItsTonesOnEveryRoot(String root) {
        for (String suffix : List.of("", "m7b5", "dim7", "7(b9,#9)", "maj7#11", "m13", "7alt")) {
            Chord chord = Chord.parse(root + suffix);
            IntStream.rangeClosed(-24, 24)
                    .forEach(
                            by -> {
                                Chord moved = chord.transposed(by);
                                assertThat(Math.abs(moved.root().alteration())).isLessThan(2);
                                assertThat(classes(moved))
                                        .isEqualTo(
                                                classes(chord).stream()
                                                        .map(pc -> Math.floorMod(pc + by, 12))
                                                        .toList());
                            });
        }
    }

    @ParameterizedTest
    @CsvSource({
        "F, -2, Eb",
        "E, 1, F",
        "C, -1, B",
        "D, 1, D#",
        "B, 2, C#",
        "E, 2, F#",
        "C, -2, Bb",
        "G, 2, A",
        "D, -1, Db"
    })
    void aNameIsSimplified(char letter, int alteration, String simple) {
        assertThat(new PitchName(letter, alteration).simplified().text()).isEqualTo(simple);
    }

    private static List<Integer> classes(Chord chord) {
        return chord.tones().stream().map(PitchName::pitchClass).toList();
    }

    private static String spelled(Chord chord) {
        return chord.tones().stream().map(PitchName::text).collect(Collectors.joining(" "));
    }
}
