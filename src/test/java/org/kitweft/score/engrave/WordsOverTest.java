package org.kitweft.score.engrave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.band.ChordChart;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Voicing;
import org.kitweft.groove.Weaver;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.score.model.Score;
import org.kitweft.score.model.SwingMark;

class WordsOverTest {
    private final Engraver engraver = new Engraver(Fonts.load());

    private static Groove groove(int steps, int swing) {
        Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
        return Weaver.weave(
                Sticking.parse(">RLRR >LRLL"),
                kit,
                Voicing.plain(kit),
                new Grid(Meter.COMMON, steps, swing, false));
    }

    private static Phrase phrase() {
        return new Phrase(
                List.of(
                        new Section(Role.TIME, groove(4, 67)),
                        new Section(Role.FILL, groove(3, 67)),
                        new Section(Role.TIME, groove(4, 67)),
                        new Section(Role.FILL, groove(4, 50))));
    }

    @Test
    void swingIsSaidWhereItChanges() {
        assertThat(
                        Notation.of(phrase(), NotationOptions.DEFAULT).measures().stream()
                                .map(m -> m.marks().swing().map(SwingMark::words).orElse("")))
                .startsWith("swing 67 %, sixteenths")
                .endsWith("straight")
                .filteredOn(words -> !words.isEmpty())
                .hasSize(2);
        assertThat(
                        Notation.of(groove(2, 60), NotationOptions.DEFAULT)
                                .measures()
                                .get(0)
                                .marks()
                                .swing()
                                .map(SwingMark::words))
                .contains("swing 60 %");
    }

    /**
     * Two notes = two notes for eighths and sixteenths, the share in words where it is no triplet;
     * common practice, no source. How the notes look is in the golden pictures.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 67, 2, =",
        "2, 66, 2, =",
        "4, 67, 2, =",
        "2, 60, 2, = swing 60 %",
        "4, 75, 2, = swing 75 %",
        "8, 60, 0, 'swing 60 %, thirty-seconds'",
    })
    void swingIsDrawnAsAnEquationOfNotes(int steps, int swing, int drawn, String words) {
        Score score = Notation.of(groove(steps, swing), NotationOptions.DEFAULT);
        List<PlacedSign> signs =
                engraver.engrave(score, EngraveSettings.ofWidth(200)).systems().get(0).signs();
        List<PlacedSign> tempo = signs.stream().filter(s -> s.kind() == Kind.TEMPO).toList();
        assertThat(tempo.stream().map(PlacedSign::ink).filter(Ink.OfShape.class::isInstance))
                .hasSize(drawn);
        assertThat(
                        tempo.stream()
                                .map(PlacedSign::ink)
                                .filter(Ink.OfText.class::isInstance)
                                .map(ink -> ((Ink.OfText) ink).text())
                                .collect(Collectors.joining(" ")))
                .isEqualTo(words);
        double end = tempo.stream().mapToDouble(s -> s.bounds().getMaxX()).max().orElseThrow();
        double start = tempo.stream().mapToDouble(s -> s.bounds().getMinX()).min().orElseThrow();
        SwingMark mark = score.measures().get(0).marks().swing().orElseThrow();
        assertThat(end - start)
                .isCloseTo(
                        new SwingSign(mark, Measures.TEMPO_SIZE).width(engraver.fonts()),
                        within(0.05));
    }

    @Test
    void whereSwingEndsWordsSayIt() {
        EngravedScore engraved =
                engraver.engrave(
                        Notation.of(phrase(), NotationOptions.DEFAULT),
                        EngraveSettings.ofWidth(120));
        assertThat(
                        engraved.systems().stream()
                                .flatMap(system -> system.signs().stream())
                                .filter(s -> s.kind() == Kind.TEMPO)
                                .map(PlacedSign::ink)
                                .filter(Ink.OfText.class::isInstance)
                                .map(ink -> ((Ink.OfText) ink).text()))
                .containsExactly("=", "straight");
    }

    /** At several widths, so that lines break before other bars. */
    @Test
    void wordsOverTheStaffTouchNothing() {
        Score score =
                Notation.of(
                        phrase(),
                        NotationOptions.DEFAULT.withCounting(true),
                        PlayedWith.at(new Tempo(90))
                                .withChart(
                                        Optional.of(
                                                ChordChart.parse(
                                                        "C7(b9,#11) Ebmaj7/G Am7 N.C. | Dm7 | %"))));
        for (int width = 70; width <= 160; width += 30) {
            EngravedScore engraved = engraver.engrave(score, EngraveSettings.ofWidth(width));
            int symbols = 0;
            for (EngravedSystem system : engraved.systems()) {
                List<PlacedSign> words =
                        system.signs().stream()
                                .filter(
                                        s ->
                                                s.kind() == Kind.CHORD_SYMBOL
                                                        || s.kind() == Kind.TEMPO)
                                .toList();
                symbols += words.size();
                for (PlacedSign word : words) {
                    Rectangle2D box = word.bounds();
                    assertThat(box.getMaxX()).isLessThanOrEqualTo(system.width() + 0.01);
                    assertThat(system.signs())
                            .filteredOn(s -> !s.equals(word) && s.bounds().intersects(box))
                            .as("width %d, %s", width, word.ink())
                            .isEmpty();
                }
            }
            assertThat(symbols).isGreaterThan(8);
        }
    }

    /** So that {@code a} at the end of a beat and the next number do not read as one word. */
    @Test
    void countingSyllablesStandApart() {
        Score score = Notation.of(phrase(), NotationOptions.DEFAULT.withCounting(true));
        for (EngravedSystem system :
                engraver.engrave(score, EngraveSettings.ofWidth(110)).systems()) {
            List<Rectangle2D> counts =
                    system.signs().stream()
                            .filter(s -> s.kind() == Kind.COUNT)
                            .map(PlacedSign::bounds)
                            .toList();
            assertThat(counts).hasSizeGreaterThan(10);
            for (int i = 1; i < counts.size(); i++) {
                assertThat(counts.get(i).getMinX() - counts.get(i - 1).getMaxX())
                        .isGreaterThan(0.7);
            }
        }
    }
}
