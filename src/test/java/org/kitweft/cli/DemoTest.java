package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.band.Backing;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;
import org.kitweft.kit.Limb;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonFile;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;
import org.kitweft.pattern.Dynamic;

class DemoTest {
    /** The row bembe of shared/reference/syncopation-12.csv, x.x.xx.x.x.x, counted from 1. */
    private static final List<Integer> BELL = List.of(1, 3, 5, 6, 8, 10, 12);

    @TempDir Path folder;

    static List<LessonItem> items() throws IOException {
        return DemoLesson.load().items();
    }

    @Test
    void itsFileStandsAsTheProgramWouldWriteIt() throws IOException {
        Path file = Path.of("demo", DemoLesson.FILE);
        assertThat(LessonFile.text(LessonFile.read(file))).isEqualTo(Files.readString(file));
    }

    @ParameterizedTest
    @MethodSource("items")
    void everyGrooveCanBePlayedAndComesRound(LessonItem item) {
        Groove groove = item.recipe().weave();
        assertThat(groove.conflicts()).isEmpty();
        assertThat(groove.comesRound()).isTrue();
        assertThat(groove.bars()).isLessThanOrEqualTo(5);
        assertThat(item.remarks()).isNotBlank();
        assertThat(item.tempoSteps()).isSorted().contains(item.tempo().beatsPerMinute());
    }

    @Test
    void allRolesAndThreeKitsAppear() throws IOException {
        assertThat(items()).extracting(LessonItem::role).contains(Role.values());
        assertThat(items())
                .extracting(item -> item.recipe().kit().name())
                .contains("five-piece", "extended", "hand-drums");
    }

    @ParameterizedTest
    @MethodSource("backBeats")
    void timeGroovesHaveTheirBackBeatOnTwoAndFour(LessonItem item) {
        Set<Integer> struck =
                item.recipe().weave().hits().stream()
                        .filter(hit -> hit.sound().text().equals("snare.head"))
                        .filter(hit -> hit.dynamic() == Dynamic.ACCENT)
                        .map(hit -> hit.place().step())
                        .collect(Collectors.toSet());
        assertThat(struck).contains(5, 13);
    }

    static Stream<LessonItem> backBeats() throws IOException {
        return items().stream()
                .filter(i -> i.title().matches("The same strokes.*|Five, five.*|What.*"));
    }

    @Test
    void theBellPatternIsTheSevenOfTwelve() throws IOException {
        Groove groove = item("A bell").recipe().weave();
        assertThat(groove.hits().stream().filter(hit -> hit.sound().surface().endsWith("cowbell")))
                .extracting(hit -> hit.place().step())
                .containsExactlyElementsOf(BELL);
    }

    @Test
    void theLineOfFivesAndSixesNeverMeetsItself() throws IOException {
        List<Hit> strokes =
                item("Five, five").recipe().weave().hits().stream()
                        .filter(hit -> hit.source() == HitSource.STROKE)
                        .toList();
        assertThat(strokes).extracting(Hit::start).doesNotHaveDuplicates().hasSize(16);
        assertThat(strokes)
                .extracting(Hit::limb)
                .contains(Limb.RIGHT_HAND, Limb.LEFT_HAND, Limb.RIGHT_FOOT);
    }

    @Test
    void thePhraseLeadsFromTimeByAFillToAPunchWithTheBand() throws IOException {
        LessonPhrase phrase = DemoLesson.load().phrases().get(0);
        Phrase woven = phrase.plan().weave();
        assertThat(woven.bars()).isEqualTo(8);
        assertThat(woven.sections())
                .extracting(Section::role)
                .containsExactly(Role.TIME, Role.FILL, Role.PUNCH);
        assertThat(woven.sections()).allMatch(s -> s.groove().conflicts().isEmpty());
        Backing band = phrase.playingBand().orElseThrow();
        assertThat(band.chart().bars()).hasSize(8);
        assertThat(band.arrangement(8).play(woven)).allMatch(part -> !part.notes().isEmpty());
        assertThat(phrase.tempoSteps()).isSorted().contains(phrase.tempo().beatsPerMinute());
    }

    private static LessonItem item(String start) throws IOException {
        return items().stream().filter(i -> i.title().startsWith(start)).findFirst().orElseThrow();
    }

    @Test
    void itIsWrittenWhole() throws IOException {
        Path target = folder.resolve("harbour");
        Run run = Run.of("demo", target.toString());
        assertThat(run.code()).as(run.err()).isZero();
        Lesson lesson = LessonFile.read(target.resolve(DemoLesson.FILE));
        assertThat(lesson).isEqualTo(DemoLesson.load());
        assertThat(Files.readString(target.resolve("harbour-class.txt")))
                .contains("local rules and a\nclinician or audiologist come first")
                .contains(lesson.items().stream().map(LessonItem::title).toList());
        int grooves = lesson.items().size();
        int phrases = lesson.phrases().size();
        Map<String, Integer> counts =
                Map.of(
                        ".mid", grooves + phrases,
                        ".wav", grooves + phrases,
                        ".png", grooves,
                        ".musicxml", grooves + phrases,
                        ".pdf", 1 + phrases);
        for (String kind : counts.keySet()) {
            assertThat(target)
                    .isDirectoryContaining(file -> file.toString().endsWith(kind))
                    .satisfies(
                            dir -> {
                                try (Stream<Path> files = Files.list(dir)) {
                                    assertThat(files.filter(f -> f.toString().endsWith(kind)))
                                            .hasSize(counts.get(kind));
                                }
                            });
        }
        assertThat(startOf(target.resolve("8-hands-on-skins.mid"))).isEqualTo("MThd");
        assertThat(startOf(target.resolve("10-eight-bars-to-the-ferry.pdf"))).isEqualTo("%PDF");
        assertThat(startOf(target.resolve("8-hands-on-skins.wav"))).isEqualTo("RIFF");
        Run again = Run.of("demo", target.toString());
        assertThat(again.code()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(again.err()).contains("exists already and was not replaced");
    }

    private static String startOf(Path file) throws IOException {
        return new String(Files.readAllBytes(file), 0, 4, StandardCharsets.US_ASCII);
    }
}
