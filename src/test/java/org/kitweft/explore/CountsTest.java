package org.kitweft.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class CountsTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");

    /**
     * Source: OEIS, by way of shared/reference/oeis-counts.csv, which says how each was checked.
     */
    static Stream<CSVRecord> published() throws IOException {
        try (var reader =
                Files.newBufferedReader(
                        Path.of("shared/reference/oeis-counts.csv"), StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .get()
                    .parse(reader)
                    .getRecords()
                    .stream()
                    .filter(r -> Set.of("stickings", "necklaces").contains(r.get("count")));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void agreesWithThePublishedTable(CSVRecord row) {
        int colours = Integer.parseInt(row.get("k"));
        int strokes = Integer.parseInt(row.get("n"));
        Counts counts = Counts.of(Sticking.parse("R".repeat(strokes)), sounds(colours));
        BigInteger expected = new BigInteger(row.get("value"));
        if (row.get("count").equals("stickings")) {
            assertThat(counts.placePerStroke()).isEqualTo(expected);
        } else {
            assertThat(counts.anyStickingUpToStart()).isEqualTo(expected);
            assertThat(counts.differentSoundUpToStart()).isEqualTo(expected);
        }
    }

    @Test
    void countsTheExampleOfTheDesign() {
        Choices choices =
                Choices.NONE
                        .with("R=snare,high-tom,mid-tom,floor-tom", KIT)
                        .with("L=snare,high-tom,mid-tom,floor-tom", KIT);
        // The five first: worked by hand. Necklaces: OEIS formula, rows k=8 and k=4, n=8.
        assertThat(Counts.of(Sticking.parse("RLRR LRLL"), choices))
                .isEqualTo(
                        new Counts(
                                8,
                                BigInteger.valueOf(256),
                                BigInteger.valueOf(16),
                                BigInteger.valueOf(65_536),
                                BigInteger.valueOf(16_777_216),
                                BigInteger.valueOf(65_536),
                                BigInteger.valueOf(2_097_684),
                                BigInteger.valueOf(8_230)));
    }

    @ParameterizedTest(name = "{0} strokes with two hands: {1} stickings")
    @CsvSource({"2, 4", "3, 8", "4, 16", "8, 256", "32, 4294967296"})
    void twoHandsGiveTheKnownNumbers(int strokes, BigInteger expected) {
        // Common practice, no source; 32 strokes are four bars of eight: 256 to the fourth power.
        Choices choices = Choices.NONE.with("R=snare", KIT).with("L=snare", KIT);
        Counts counts = Counts.of(Sticking.parse("R".repeat(strokes)), choices);
        assertThat(counts.stickings()).isEqualTo(expected);
        assertThat(BigInteger.valueOf(256).pow(4)).isEqualTo(new BigInteger("4294967296"));
    }

    @Test
    void agreesWithListingAllWordsAndTheirRotations() {
        for (int strokes = 1; strokes <= 6; strokes++) {
            for (int colours = 1; colours <= 4; colours++) {
                Set<List<Integer>> orbits = new HashSet<>();
                int words = (int) Math.pow(colours, strokes);
                for (int word = 0; word < words; word++) {
                    orbits.add(leastRotation(digits(word, colours, strokes)));
                }
                Counts counts = Counts.of(Sticking.parse("R".repeat(strokes)), sounds(colours));
                assertThat(counts.anySticking()).isEqualTo(words);
                assertThat(counts.anyStickingUpToStart()).isEqualTo(orbits.size());
            }
        }
    }

    @Test
    void restsAreNotCounted() {
        Choices choices = Choices.NONE.with("R=snare,ride", KIT).with("L=snare", KIT);
        assertThat(Counts.of(Sticking.parse("R - L -"), choices))
                .isEqualTo(Counts.of(Sticking.parse("RL"), choices));
        Counts silence = Counts.of(Sticking.parse("- -"), choices);
        assertThat(silence.strokes()).isZero();
        assertThat(silence.byName().values()).containsOnly(BigInteger.ONE);
    }

    @Test
    void bothHandsAreALetterOfTheirOwn() {
        Choices choices = Choices.NONE.with("R=snare,ride", KIT).with("B=snare,ride,crash", KIT);
        Counts counts = Counts.of(Sticking.parse("BRB"), choices);
        assertThat(counts.placePerStroke()).isEqualTo(3 * 2 * 3);
        assertThat(counts.onePlacePerLetter()).isEqualTo(2 * 3);
        assertThat(counts.anySticking()).isEqualTo(5 * 5 * 5);
        assertThat(counts.anyStickingDifferentSound()).isEqualTo(3 * 3 * 3);
    }

    @Test
    void namesTheLetterWithoutChoices() {
        Choices choices = Choices.NONE.with("R=snare", KIT);
        assertThatThrownBy(() -> Counts.of(Sticking.parse("RLRB"), choices))
                .hasMessage(
                        "letters L and B of the sticking have no choices: expected sounds for each,"
                                + " as in L=snare");
        assertThatThrownBy(() -> Counts.of(Sticking.parse("RL"), choices))
                .hasMessage(
                        "letter L of the sticking has no choices: expected sounds for it, as in"
                                + " L=snare");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            R                | expected a letter and its sounds, as in R=snare,high-tom
            X=snare          | expected a letter and its sounds, as in R=snare,high-tom
            RL=snare         | expected a letter and its sounds, as in R=snare,high-tom
            R=               | a sound is missing
            R=snare,,ride    | a sound is missing
            R=snare,snare    | sound "snare.head" is named twice
            R=snaer          | did you mean "snare"?
            R=hi-hat.opne    | did you mean "hi-hat.open"?
            """)
    void refusesFaultyChoices(String text, String message) {
        assertThatThrownBy(() -> Choices.NONE.with(text, KIT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void everyNameHasAnIdADefinitionAndASentence() {
        Counts counts = Counts.of(Sticking.parse("R"), sounds(1));
        for (CountName name : CountName.values()) {
            assertThat(name.id()).matches("[a-zA-Z]+");
            assertThat(name.definition()).isNotBlank();
            assertThat(name.words()).endsWith(".");
            assertThat(counts.byName().containsKey(name)).isEqualTo(name != CountName.UNDER_RULES);
        }
    }

    private static Choices sounds(int count) {
        return new Choices(
                Map.of(
                        Letter.R,
                        IntStream.rangeClosed(1, count)
                                .mapToObj(i -> new SoundName("drum-" + i, "head"))
                                .toList()));
    }

    private static List<Integer> digits(int word, int base, int length) {
        int rest = word;
        Integer[] digits = new Integer[length];
        for (int i = 0; i < length; i++) {
            digits[i] = rest % base;
            rest /= base;
        }
        return List.of(digits);
    }

    private static List<Integer> leastRotation(List<Integer> word) {
        List<Integer> least = word;
        for (int start = 1; start < word.size(); start++) {
            List<Integer> turned = new ArrayList<>(word.subList(start, word.size()));
            turned.addAll(word.subList(0, start));
            for (int i = 0; i < word.size(); i++) {
                int order = Integer.compare(turned.get(i), least.get(i));
                if (order != 0) {
                    least = order < 0 ? turned : least;
                    break;
                }
            }
        }
        return least;
    }
}
