package org.kitweft.band;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class VoicingSearchTest {
    private static final String[] CHORDS = {
        "Dm7", "G7", "Cmaj7", "A7b9", "F#m7b5", "Ebmaj9", "E5", "Bbsus4", "G13"
    };

    /** All ways through four chords, one by one. */
    @ParameterizedTest
    @EnumSource(VoicingKind.class)
    void noOtherWayMovesLess(VoicingKind kind) {
        Random random = new Random(3);
        for (int round = 0; round < 8; round++) {
            List<Chord> chords =
                    IntStream.range(0, 4)
                            .mapToObj(i -> Chord.parse(CHORDS[random.nextInt(CHORDS.length)]))
                            .toList();
            VoicingSearch search = new VoicingSearch(new StyleLine.Voices(kind, 3), 50, 73);
            List<List<Integer>> found = search.search(chords);
            assertThat(motion(found)).isEqualTo(least(search, chords, 0, List.of()));
        }
    }

    @Test
    void octavesHaveTheSameToneBelowAndAbove() {
        VoicingSearch search =
                new VoicingSearch(new StyleLine.Voices(VoicingKind.OCTAVES, 4), 57, 79);
        List<Chord> chords =
                List.of("Cm7", "Fm7", "G7", "E5", "Bbsus4").stream().map(Chord::parse).toList();
        for (List<Integer> voicing : search.search(chords)) {
            assertThat(voicing.get(voicing.size() - 1) - voicing.get(0)).isEqualTo(12);
            assertThat(voicing).doesNotHaveDuplicates();
        }
    }

    @Test
    void chordsOfFewTonesAreDoubledWhereTheRangeHasRoom() {
        List<Chord> power = List.of(Chord.parse("E5"));
        StyleLine.Voices four = new StyleLine.Voices(VoicingKind.POWER, 4);
        assertThat(new VoicingSearch(four, 40, 63).search(power).get(0))
                .containsExactly(40, 47, 52, 59);
        assertThat(new VoicingSearch(four, 53, 70).search(power).get(0)).hasSize(2);
    }

    /** A third twice sounds thick: common practice, no source. */
    @Test
    void theRootIsDoubledRatherThanTheThird() {
        List<Integer> keys =
                new VoicingSearch(new StyleLine.Voices(VoicingKind.CLOSE, 4), 48, 71)
                        .search(List.of(Chord.parse("C")))
                        .get(0);
        assertThat(keys.stream().map(key -> key % 12)).containsExactlyInAnyOrder(0, 0, 4, 7);
    }

    private static int least(
            VoicingSearch search, List<Chord> chords, int index, List<Integer> before) {
        if (index == chords.size()) {
            return 0;
        }
        int least = Integer.MAX_VALUE;
        for (List<Integer> voicing : search.voicings(chords.get(index))) {
            int step = before.isEmpty() ? 0 : VoicingSearch.motion(before, voicing);
            least = Math.min(least, step + least(search, chords, index + 1, voicing));
        }
        return least;
    }

    private static int motion(List<List<Integer>> voicings) {
        return IntStream.range(1, voicings.size())
                .map(i -> VoicingSearch.motion(voicings.get(i - 1), voicings.get(i)))
                .sum();
    }

    /** Thirds and sevenths of a II-V-I change places by steps: common practice, no source. */
    @Test
    void aTwoFiveOneMovesByStepsOnly() {
        List<List<Integer>> way =
                new VoicingSearch(new StyleLine.Voices(VoicingKind.ROOTLESS, 2), 50, 74)
                        .search(List.of("Dm7", "G7", "Cmaj7").stream().map(Chord::parse).toList());
        assertThat(motion(way)).isEqualTo(2);
        assertThat(way.get(0).stream().map(key -> key % 12)).containsExactlyInAnyOrder(5, 0);
        assertThat(way.get(1).stream().map(key -> key % 12)).containsExactlyInAnyOrder(5, 11);
        assertThat(way.get(2).stream().map(key -> key % 12)).containsExactlyInAnyOrder(4, 11);
    }

    @ParameterizedTest(name = "{0} {1}: {3}")
    @CsvSource({
        "ROOTLESS, C13,   4, 4 10 2 9",
        "ROOTLESS, Dm7,   4, 5 0 9 2",
        "ROOTLESS, C11,   4, 4 10 2 7",
        "POWER,    Am,    3, 9 4",
        "TRIAD,    Gsus4, 3, 7 0 2",
        "CLOSE,    F#m7b5, 4, 9 4 6 0"
    })
    void takesTheTonesThatMatterFirst(VoicingKind kind, String chord, int voices, String classes) {
        assertThat(kind.classes(Chord.parse(chord), voices))
                .isEqualTo(List.of(classes.split(" ", -1)).stream().map(Integer::valueOf).toList());
    }
}
