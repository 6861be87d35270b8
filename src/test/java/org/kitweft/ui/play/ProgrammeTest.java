package org.kitweft.ui.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.band.Backing;
import org.kitweft.band.BandNote;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.RoleVoicings;
import org.kitweft.kit.Limb;
import org.kitweft.sound.Playable;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class ProgrammeTest {
    private static final long BAR = Meter.COMMON.barTicks();

    private final SessionModel session = new SessionModel(Session.opening());

    private void band(Backing backing) {
        draft(session.session().draft().with(backing));
    }

    private void draft(PhraseDraft draft) {
        session.edit("Draft", session.session().with(draft));
    }

    private void phrase(int bars) {
        Recipe recipe = session.recipe();
        PhrasePlan plan =
                PhrasePlan.ofOne(
                        recipe,
                        RoleVoicings.fill(recipe.voicing(), recipe.kit()),
                        RoleVoicings.punch(recipe.voicing(), recipe.kit()),
                        bars);
        draft(session.session().draft().with(plan).withPlays(true));
    }

    private Programme programme() {
        return Programme.of(session);
    }

    @Test
    void withoutABandTheGroovePlaysAsItIs() {
        assertThat(programme().playable()).isEqualTo(Playable.of(session.phrase()));
    }

    @ParameterizedTest(name = "{0} in {1} on {2} steps a beat: {3} bars")
    @CsvSource(
            delimiter = ';',
            textBlock =
                    """
        # one bar of groove: until the chart has come round, four bars at least
        C                 ; rock  ; 4 ; 4
        C | F | G         ; rock  ; 4 ; 6
        C | F | G | C | F ; rock  ; 4 ; 5
        # a clave in eighths takes two bars of four, one in sixteenths a bar: the salsa file's text
        C | F | G | C | F ; salsa ; 2 ; 10
        C | F | G | C | F ; salsa ; 4 ; 5
        """)
    void aGrooveComesRoundUntilChartAndFiguresDo(String chords, String style, int steps, int bars) {
        session.edit(
                "Steps",
                session.recipe()
                        .with(session.recipe().grid().withStepsPerBeat(steps))
                        .withBars(OptionalInt.of(1)));
        band(Backing.DEFAULT.withOn(true).withChords(chords).withStyle(style));
        Playable playable = programme().playable();
        assertThat(playable.band()).hasSize(3);
        assertThat(playable.phrase().bars()).isEqualTo(bars);
        assertThat(programme().written(new Place(3, 5))).contains(new Place(1, 5));
    }

    @Test
    void aPhraseIsAsLongAsItIsAndALongerChartIsCut() {
        phrase(4);
        band(Backing.DEFAULT.withOn(true).withChords("C | F | G | C | F | G"));
        assertThat(programme().playable().phrase()).isEqualTo(session.phrase());
        assertThat(programme().playable().band()).hasSize(3);
        assertThat(session.session().draft().fault().orElseThrow().index())
                .as("the fifth bar of the chart")
                .isEqualTo("C | F | G | C | ".length());
        assertThat(programme().written(new Place(5, 1))).isEmpty();
    }

    @Test
    void thePunchesOfTheBandFollowTheHandThatStillSounds() {
        phrase(4);
        for (String style : List.of("rock", "funk", "swing", "samba", "salsa")) {
            band(Backing.DEFAULT.withOn(true).withStyle(style));
            Playable playable = programme().playable();
            Phrase punch = playable.phrase().bars(4, 4);
            List<Long> hand =
                    punch.sections().get(0).groove().hits().stream()
                            .filter(hit -> hit.limb() == Limb.RIGHT_HAND)
                            .map(Hit::start)
                            .distinct()
                            .toList();
            assertThat(
                            playable.band().get(2).notes().stream()
                                    .map(BandNote::tick)
                                    .filter(tick -> tick >= 3 * BAR)
                                    .map(tick -> tick - 3 * BAR)
                                    .distinct())
                    .as(style)
                    .containsExactlyElementsOf(hand);
        }
    }

    @Test
    void theGridShowsThePlayheadOnlyInTheSectionThatIsOpenThere() {
        phrase(8);
        assertThat(programme().inGrid(new Place(2, 3))).isEmpty();
        draft(session.session().draft().withOpen(OptionalInt.of(0)));
        assertThat(programme().inGrid(new Place(2, 3))).contains(new Place(1, 3));
        assertThat(programme().inGrid(new Place(7, 3))).isEmpty();
        draft(session.session().draft().withOpen(OptionalInt.of(1)));
        assertThat(programme().inGrid(new Place(7, 3))).contains(new Place(1, 3));
    }
}
