package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.JCheckBox;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.band.BandNote;
import org.kitweft.band.BandPart;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.TempoSteps;
import org.kitweft.sound.Course;
import org.kitweft.sound.Part;
import org.kitweft.sound.Phrases;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Stretch;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.Track;
import org.kitweft.ui.theme.Theme;

class ExportChoicesTest {
    @BeforeAll
    static void theme() {
        Theme.LIGHT.install(100);
    }

    private static final Phrase PHRASE = Phrases.of("RLRR LRLL", 2);
    private static final PlaySettings HEARD = PlaySettings.DEFAULT.withTempo(new Tempo(60));

    @Test
    void whatIsHeardIsProposed() {
        PlaySettings heard =
                HEARD.withCountInBars(1).withMix(HEARD.mix().without(Set.of(Part.BASS)));
        ExportChoices proposed = ExportChoices.proposed(heard);
        assertThat(proposed)
                .isEqualTo(
                        new ExportChoices(
                                4, 1, EnumSet.of(Part.DRUMS, Part.COMPING, Part.PUNCHES)));
        assertThat(ExportChoices.proposed(HEARD.withLoops(7)).choruses()).isEqualTo(7);
    }

    @Test
    void theTrainerIsProposedUpToItsCeiling() {
        Practice practice = new Practice(new Tempo(60), 10, 3, new Tempo(90), false);
        assertThat(
                        ExportChoices.proposed(HEARD.withCourse(new Course.Practised(practice)))
                                .choruses())
                .isEqualTo(11);
    }

    @Test
    void whoIsNotInIsLeftOutEvenIfSoloAndWhoIsInIsHeardEvenIfMuted() {
        PlaySettings heard =
                HEARD.withMix(
                        HEARD.mix()
                                .with(Part.DRUMS, HEARD.mix().strip(Part.DRUMS).withSolo(true))
                                .with(Part.BASS, HEARD.mix().strip(Part.BASS).withMuted(true)));
        BandPart bass = new BandPart("bass", 2, 33, List.of(new BandNote(0, 100, 40, 90)));
        Timeline timeline =
                Timeline.of(
                        new Playable(PHRASE, List.of(bass)),
                        new ExportChoices(1, 0, Set.of(Part.BASS, Part.CLICK)).of(heard));
        assertThat(timeline.tracks())
                .extracting(Track::part)
                .containsExactly(Part.CLICK, Part.BASS);
    }

    @Test
    void withTempoStepsEachIsPlayedForAllChoruses() {
        PlaySettings heard =
                HEARD.withCourse(new Course.Stepped(TempoSteps.parse("60 120"), 1, false));
        ExportChoices choices = new ExportChoices(3, 1, Set.of(Part.DRUMS));
        Timeline timeline = Timeline.of(PHRASE, choices.of(heard));
        assertThat(timeline.to()).isEqualTo(6 * PHRASE.ticks());
        // A bar at 60 lasts 4 s: one to count in, 3 x 2 at 60, as many at 120.
        assertThat(choices.lengthText(PHRASE, heard)).isEqualTo("40 s");
        assertThat(
                        timeline.tempo().seconds(timeline.to())
                                - timeline.tempo().seconds(timeline.from()))
                .isEqualTo(40);
    }

    @Test
    void theLengthIsThatOfTheFile() {
        PlaySettings heard = HEARD.withStretch(new Stretch(2, 2, Feel.HALF_TIME));
        ExportChoices choices = new ExportChoices(9, 0, Set.of(Part.DRUMS));
        Timeline timeline = Timeline.of(PHRASE, choices.of(heard));
        assertThat(timeline.tempo().seconds(timeline.to())).isEqualTo(72);
        assertThat(choices.lengthText(PHRASE, heard)).isEqualTo("1 min 12 s");
    }

    @Test
    void whatOfPracticeGoesIntoTheFileIsSaid() {
        assertThat(ExportChoices.practice(HEARD, 8)).isEmpty();
        Practice practice = new Practice(new Tempo(60), 10, 3, new Tempo(90), true);
        assertThat(
                        ExportChoices.practice(
                                HEARD.withCourse(new Course.Practised(practice))
                                        .withStretch(new Stretch(2, 3, Feel.DOUBLE_TIME)),
                                8))
                .isEqualTo(
                        Map.of(
                                "Tempo", "60 to 90, 10 faster every 3 choruses",
                                "Drop out", "every other chorus is silent",
                                "Bars", "2 to 3 of 8",
                                "Drums", "double time"));
    }

    /** {@code Stretch}: bars beyond the end are cut off; a beginning beyond it is the whole. */
    @ParameterizedTest
    @CsvSource({"2, 30, 2 to 8 of 8", "8, 9, 8 of 8", "9, 12, 1 to 8 of 8", "3, 3, 3 of 8"})
    void barsAreNamedAsTheyAreInTheFile(int from, int to, String told) {
        PlaySettings heard = HEARD.withStretch(new Stretch(from, to, Feel.AS_WRITTEN));
        assertThat(ExportChoices.practice(heard, 8)).containsEntry("Bars", told);
    }

    @Test
    void partsOfTheBandAreOfferedOnlyWhereItPlays() {
        ExportDialog alone = new ExportDialog(PHRASE, HEARD, false);
        assertThat(alone.choices().parts()).doesNotContain(Part.BASS, Part.COMPING, Part.PUNCHES);
        ExportDialog together = new ExportDialog(PHRASE, HEARD, true);
        assertThat(together.choices().parts()).contains(Part.BASS, Part.COMPING, Part.PUNCHES);
        assertThat(offered(alone)).containsExactly("drums", "click");
        assertThat(offered(together))
                .containsExactly("drums", "click", "bass", "comping", "punches");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5000", "0", "-3", "2.5", "many", "", "99999999999"})
    void aNumberOfChorusesThatCannotBeIsToldAndStaysAsTyped(String typed) {
        ExportDialog dialog = new ExportDialog(PHRASE, HEARD, false);
        JFormattedTextField field = choruses(dialog);
        field.setText(typed);
        assertThat(dialog.fault()).contains("Choruses: 1 to 999");
        assertThat(texts(dialog)).contains("⚠ Choruses: 1 to 999");
        assertThat(field.getText()).isEqualTo(typed);
    }

    @Test
    void whatIsTypedCountsAtOnce() {
        ExportDialog dialog = new ExportDialog(PHRASE, HEARD, false);
        choruses(dialog).setText("5000");
        choruses(dialog).setText("12");
        assertThat(dialog.fault()).isEmpty();
        assertThat(dialog.choices().choruses()).isEqualTo(12);
        assertThat(texts(dialog))
                .contains(dialog.choices().lengthText(PHRASE, HEARD) + ", then ringing out");
    }

    private static JFormattedTextField choruses(ExportDialog dialog) {
        for (Component child : dialog.getComponents()) {
            if (child instanceof NumberField field) {
                return field.field();
            }
        }
        throw new AssertionError("no number can be typed");
    }

    private static List<String> texts(ExportDialog dialog) {
        return Arrays.stream(dialog.getComponents())
                .filter(child -> child instanceof JLabel)
                .map(child -> ((JLabel) child).getText())
                .toList();
    }

    private static List<String> offered(Container within) {
        List<String> names = new ArrayList<>();
        for (Component child : within.getComponents()) {
            if (child instanceof JCheckBox box && box.isEnabled()) {
                names.add(box.getText());
            } else if (child instanceof Container inner) {
                names.addAll(offered(inner));
            }
        }
        return names;
    }

    @Test
    void noChorusIsRefused() {
        assertThatThrownBy(() -> new ExportChoices(0, 0, Set.of()))
                .hasMessage("0 choruses: expected 1 to 999");
    }
}
