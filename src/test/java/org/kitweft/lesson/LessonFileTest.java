package org.kitweft.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.band.Backing;
import org.kitweft.band.ClaveDirection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class LessonFileTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String SMALL =
            """
            {"format":"kitweft-lesson","version":1,"title":"T","items":[
              {"sticking":"RLRR LRLL","voicing":{"letters":{
                 "R":{"limb":"right-hand","path":["ride"]},
                 "L":{"limb":"left-hand","path":["snare.head"]}}}}]}
            """;

    private static final String WITH_PHRASE =
            """
            {"format":"kitweft-lesson","version":1,"title":"T","items":[],"phrases":[
              {"title":"P","band":{"chords":"Dm7 G7 | C","seed":9007199254740993},
               "sections":[{"role":"time","bars":3,"sticking":"RLRR LRLL","voicing":{"letters":{
                 "R":{"limb":"right-hand","path":["ride"]},
                 "L":{"limb":"left-hand","path":["snare.head"]}}}}]}]}
            """;

    @TempDir Path folder;

    @Test
    void everyLessonReadsBackEqual() {
        RandomLessons lessons = new RandomLessons(new Random(20260311));
        for (int i = 0; i < 500; i++) {
            Lesson lesson = lessons.lesson();
            String text = LessonFile.text(lesson);
            assertThat(LessonFile.parse(text, "again")).isEqualTo(lesson);
            assertThat(LessonFile.text(LessonFile.parse(text, "again"))).isEqualTo(text);
        }
    }

    @Test
    void everyCutIsRefusedWithItsPlace() {
        String text = LessonFile.text(LessonFile.parse(SMALL, "small"));
        String whole = text.strip();
        for (int end = 0; end < whole.length(); end++) {
            String cut = whole.substring(0, end);
            assertThatExceptionOfType(LessonFormatException.class)
                    .isThrownBy(() -> LessonFile.parse(cut, "cut.json"))
                    .withMessageMatching(
                            "lesson file cut\\.json: (line \\d+, column \\d+: it is not whole JSON text|it is not a lesson).*");
        }
    }

    @Test
    void whatIsMissingHasTheProgramsDefaults() {
        LessonItem item = LessonFile.parse(SMALL, "small").items().get(0);
        Recipe plain =
                Recipe.plain(Sticking.parse("RLRR LRLL"), BuiltInKits.load(BuiltInKits.DEFAULT));
        assertThat(item.role()).isEqualTo(Role.TIME);
        assertThat(item.tempo()).isEqualTo(Tempo.DEFAULT);
        assertThat(item.recipe().grid()).isEqualTo(plain.grid());
        assertThat(item.recipe().kit()).isEqualTo(plain.kit());
        assertThat(item.recipe().bars()).isEqualTo(OptionalInt.empty());
    }

    @Test
    void unknownFieldsAreKeptWhereTheyStood() throws IOException {
        String text =
                """
                {"format":"kitweft-lesson","version":1,"mood":{"sea":"calm","waves":[1,2.12345678901234567890]},
                 "items":[{"sticking":"RL","a/b~c":null,"voicing":{"sway":3,"letters":{
                   "R":{"limb":"right-hand","path":["snare.head"],"grip":"matched"}},
                   "layers":[{"limb":"left-foot","sound":"hi-hat.foot","steps":1,"figure":"x",
                   "heel":"up"}]}}]}
                """;
        Lesson lesson = LessonFile.parse(text, "other");
        LessonItem retitled = lesson.items().get(0).withTitle("new");
        String rewritten = LessonFile.text(lesson.withTitle("new").withItem(0, retitled));
        JsonNode again = MAPPER.readTree(rewritten);
        assertThat(again.at("/title").asText()).isEqualTo("new");
        assertThat(again.at("/mood/sea").asText()).isEqualTo("calm");
        assertThat(rewritten).contains("2.12345678901234567890");
        assertThat(again.at("/items/0/title").asText()).isEqualTo("new");
        assertThat(again.at("/items/0/a~1b~0c").isNull()).isTrue();
        assertThat(again.at("/items/0/voicing/sway").asInt()).isEqualTo(3);
        assertThat(again.at("/items/0/voicing/letters/R/grip").asText()).isEqualTo("matched");
        assertThat(again.at("/items/0/voicing/layers/0/heel").asText()).isEqualTo("up");
    }

    @Test
    void unknownFieldsOfALetterThatIsGoneGoWithIt() {
        Lesson lesson =
                LessonFile.parse(
                        SMALL.replace("\"path\":[\"ride\"]", "\"path\":[\"ride\"],\"grip\":1"),
                        "other");
        LessonItem item = lesson.items().get(0);
        Recipe without = item.recipe().with(item.recipe().voicing().without(Letter.R));
        Lesson changed = lesson.withItem(0, item.withRecipe(without));
        assertThat(LessonFile.text(changed)).doesNotContain("grip");
        assertThat(LessonFile.parse(LessonFile.text(changed), "again").items().get(0).recipe())
                .isEqualTo(without);
    }

    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        "version":1       | "version":2       | version: the lesson was saved by a newer Kitweft (version 2, this program reads up to 1) and was left as it is
        "version":1       | "version":0       | version: found 0, expected 1 or more
        "version":1       | "version":"1"     | version: found "1", expected a whole number
        kitweft-lesson    | recipe-book       | it is not a lesson, expected "format": "kitweft-lesson"
        "items"           | "things"          | items: it is missing, expected a list
        RLRR LRLL         | RLXR              | item 1, sticking: sticking, character 3: found 'X', expected R, L, K, H, B, a rest '-' or a repeat '['
        "RLRR LRLL"       | 7                 | item 1, sticking: found 7, expected a text
        "sticking"        | "stick"           | item 1, sticking: it is missing, expected a text
        "sticking"        | "bars":0,"sticking" | item 1: 0 bars: expected 1 to 512
        "sticking"        | "tempo":10000,"sticking" | item 1: tempo 10000: expected 20 to 400 beats a minute
        "sticking"        | "tempoSteps":[60,5],"sticking" | item 1: tempo step 5: expected 20 to 400 beats a minute
        "sticking"        | "role":"solo","sticking" | item 1, role: unknown role "solo", expected time, fill or punch
        "sticking"        | "grid":{"meter":"0/4"},"sticking" | item 1, grid: meter 0/4: expected 1 to 32 beats over 4 or 8, as in 4/4 or 6/8
        "sticking"        | "kit":"six-piece","sticking" | item 1, kit: kit "six-piece" is not in the built-in kits; did you mean "five-piece"? (five-piece, extended, hand-drums, marimba, vibraphone, timpani)
        "sticking"        | "kit":{"name":"x","surfaces":[]},"sticking" | item 1, kit: kit file in the lesson: surfaces: the kit has no surface
        right-hand        | third-hand        | item 1, voicing, letters, R, limb: found "third-hand", expected a limb: right-hand, left-hand, right-foot or left-foot
        "R"               | "Q"               | item 1, voicing, letters, Q: unknown letter, expected R, L, K, H or B
        "ride"            | "rido"            | item 1, voicing, letters, R, path 1: surface "rido" is not in kit "five-piece"; did you mean "ride"? (snare, high-tom, mid-tom, floor-tom, bass-drum, ride, crash, hi-hat)
        ["ride"]          | []                | item 1, voicing, letters, R: a letter needs at least one sound to strike; to silence it, make it tacet
        "letters"         | "strokes":{"0":"ride"},"letters" | item 1, voicing: a stroke's index lies between 1 and 512
        "letters"         | "strokes":{"two":"ride"},"letters" | item 1, voicing, strokes, two: expected the number of a stroke, counted from 1
        "letters"         | "layers":[{"limb":"left-foot","sound":"hi-hat.foot","steps":2,"figure":"- y"}],"letters" | item 1, voicing, layer 1, figure: layer, character 3: found 'y', expected x, >x, (x) or a rest '-'
        "letters"         | "layers":[{"limb":"left-foot","sound":"hi-hat.foot","steps":9,"figure":"x"}],"letters" | item 1, voicing, layer 1: 9 steps per beat: expected 1 to 8 or 12
        """)
    void aFaultIsNamedWithItsPlaceInOneLine(String was, String becomes, String fault) {
        assertThat(SMALL).contains(was);
        assertThatThrownBy(() -> LessonFile.parse(SMALL.replace(was, becomes), "a.json"))
                .isInstanceOf(LessonFormatException.class)
                .hasMessage("lesson file a.json: " + fault);
    }

    @Test
    void aPhraseIsReadWithWhatTheProgramSupposes() {
        LessonPhrase phrase = LessonFile.parse(WITH_PHRASE, "small").phrases().get(0);
        assertThat(phrase.plan().bars()).isEqualTo(3);
        assertThat(phrase.plan().sections().get(0).role()).isEqualTo(Role.TIME);
        assertThat(phrase.tempo()).isEqualTo(Tempo.DEFAULT);
        assertThat(phrase.band())
                .contains(
                        new Backing(
                                true,
                                "Dm7 G7 | C",
                                "rock",
                                ClaveDirection.THREE_TWO,
                                9007199254740993L));
    }

    @Test
    void aFileFromBeforePhrasesStaysAsItWas() {
        Lesson lesson = LessonFile.parse(SMALL, "small");
        assertThat(lesson.phrases()).isEmpty();
        assertThat(LessonFile.text(lesson)).doesNotContain("phrases");
    }

    @Test
    void unknownFieldsOfAPhraseAreKeptWhereTheyStood() throws IOException {
        String text =
                WITH_PHRASE
                        .replace("\"band\":{", "\"hall\":[1],\"band\":{\"leader\":\"Jo\",")
                        .replace("\"bars\":3", "\"bars\":3,\"colour\":null");
        Lesson lesson = LessonFile.parse(text, "other");
        LessonPhrase renamed = lesson.phrases().get(0).withTitle("new");
        JsonNode again =
                MAPPER.readTree(LessonFile.text(lesson.withPhrase(0, renamed))).at("/phrases/0");
        assertThat(again.at("/title").asText()).isEqualTo("new");
        assertThat(again.at("/hall/0").asInt()).isEqualTo(1);
        assertThat(again.at("/band/leader").asText()).isEqualTo("Jo");
        assertThat(again.at("/sections/0/colour").isNull()).isTrue();
    }

    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        "phrases":[       | "phrases":7,"x":[ | phrases: found 7, expected a list
        "sections"        | "parts"           | phrase 1, sections: it is missing, expected a list
        "bars":3          | "bars":0          | phrase 1, section 1: 0 bars: expected 1 to 512
        "bars":3,         |                   | phrase 1, section 1, bars: it is missing, expected a whole number
        "role":"time"     | "role":"solo"     | phrase 1, section 1, role: unknown role "solo", expected time, fill or punch
        RLRR LRLL         | RLXR              | phrase 1, section 1, sticking: sticking, character 3: found 'X', expected R, L, K, H, B, a rest '-' or a repeat '['
        "ride"            | "rido"            | phrase 1, section 1, voicing, letters, R, path 1: surface "rido" is not in kit "five-piece"; did you mean "ride"? (snare, high-tom, mid-tom, floor-tom, bass-drum, ride, crash, hi-hat)
        Dm7 G7            | Dm7 H7            | phrase 1, band, chords: chart, character 5: found 'H', expected a chord root A to G
        "chords"          | "chart"           | phrase 1, band, chords: it is missing, expected a text
        "seed":           | "clave":"3-3","seed": | phrase 1, band, clave: found "3-3", expected 3-2 or 2-3
        "seed":           | "style":"polka","seed": | phrase 1, band, style: style "polka" is not in the built-in styles; expected one of rock, funk, swing, bossa, samba, salsa, ballad
        9007199254740993  | 1.5               | phrase 1, band, seed: found 1.5, expected a whole number
        "title":"P"       | "tempoSteps":[5]  | phrase 1: tempo step 5: expected 20 to 400 beats a minute
        "title":"P"       | "tempo":10000     | phrase 1: tempo 10000: expected 20 to 400 beats a minute
        """)
    void aFaultInAPhraseIsNamedWithItsPlace(String was, @Nullable String becomes, String fault) {
        assertThat(WITH_PHRASE).contains(was);
        String text = WITH_PHRASE.replace(was, becomes == null ? "" : becomes);
        assertThatThrownBy(() -> LessonFile.parse(text, "a.json"))
                .isInstanceOf(LessonFormatException.class)
                .hasMessage("lesson file a.json: " + fault);
    }

    @Test
    void aFieldThatStandsTwiceIsRefused() {
        assertThatThrownBy(
                        () ->
                                LessonFile.parse(
                                        SMALL.replace("\"title\"", "\"version\":1,\"title\""),
                                        "a.json"))
                .hasMessageStartingWith("lesson file a.json: line 1, column");
    }

    @Test
    void anExistingFileIsKeptUnlessItMayBeReplaced() throws IOException {
        Path file = folder.resolve("lesson.json");
        Lesson first = new Lesson("first", "", List.of());
        Lesson second = first.withTitle("second");
        LessonFile.write(first, file, false);
        assertThatThrownBy(() -> LessonFile.write(second, file, false))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(LessonFile.read(file)).isEqualTo(first);
        LessonFile.write(second, file, true);
        assertThat(LessonFile.read(file)).isEqualTo(second);
        assertThat(LessonFile.read(folder.resolve("lesson.json~"))).isEqualTo(first);
    }

    @Test
    void aFileThatIsNotTextIsRefused() throws IOException {
        Path file = folder.resolve("noise.json");
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        assertThatThrownBy(() -> LessonFile.read(file))
                .isInstanceOf(LessonFormatException.class)
                .hasMessageEndingWith("it is not text in UTF-8");
        Files.write(file, "42".getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> LessonFile.read(file)).hasMessageContaining("it is not a lesson");
    }
}
