package org.kitweft.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.UnknownNameException;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.TextFormatException;

class BackingTest {
    private static final long BAR = Meter.COMMON.barTicks();

    private static Phrase phrase(int bars) {
        Recipe recipe =
                Recipe.plain(Sticking.parse("K R L R"), BuiltInKits.load(BuiltInKits.DEFAULT));
        return new PhrasePlan(List.of(new PlannedSection(Role.TIME, recipe, bars))).weave();
    }

    @Test
    void isAlwaysPlayable() {
        assertThatThrownBy(() -> Backing.DEFAULT.withChords("Dm7 | H7"))
                .isInstanceOf(TextFormatException.class);
        assertThatThrownBy(() -> Backing.DEFAULT.withStyle("polka"))
                .isInstanceOf(UnknownNameException.class);
        for (String style : BuiltInStyles.names()) {
            assertThat(Backing.DEFAULT.withStyle(style).arrangement(4).play(phrase(4)))
                    .extracting(BandPart::name)
                    .containsExactly("bass", "comping", "punches");
        }
    }

    @Test
    void aChartLongerThanThePhraseIsCut() {
        Backing backing = Backing.DEFAULT.withChords("C | F | G | C");
        assertThat(backing.arrangement(2).chart().text()).isEqualTo("C | F");
        assertThat(backing.arrangement(4).chart()).isEqualTo(backing.chart());
        assertThat(backing.arrangement(9).chart()).isEqualTo(backing.chart());
    }

    @Test
    void someBarsOfAPartAreItsNotesThereMovedToTheStart() {
        BandPart bass = Backing.DEFAULT.arrangement(4).play(phrase(4)).get(0);
        BandPart cut = bass.between(BAR, 3 * BAR);
        assertThat(cut.notes())
                .isNotEmpty()
                .allMatch(note -> note.tick() >= 0 && note.end() <= 2 * BAR);
        assertThat(cut.notes().stream().map(note -> note.tick() + BAR))
                .containsExactlyElementsOf(
                        bass.notes().stream()
                                .map(BandNote::tick)
                                .filter(tick -> tick >= BAR && tick < 3 * BAR)
                                .toList());
        assertThat(bass.between(0, 4 * BAR)).isEqualTo(bass);
    }
}
