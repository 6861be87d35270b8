package org.kitweft.ui.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.band.Backing;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.engrave.Ink;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.PlacedSign;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

class EngravingTest {
    private final Engraver engraver = new Engraver(Fonts.load());

    private static Phrase phrase(String sticking) {
        return Phrase.of(Session.opening().typed(sticking).recipe().weave());
    }

    private Engraving engraving(String sticking, double width) {
        return engraving(phrase(sticking), PlayedWith.NOTHING, width, Room.NONE);
    }

    private Engraving engraving(Phrase phrase, PlayedWith with, double width, Room before) {
        return Engraving.of(phrase, with, NotationOptions.DEFAULT, engraver, width, before);
    }

    @Test
    void aStepOfEveryBarHasItsPlace() {
        Engraving engraving = engraving("RLRRLRLLRLRLRLRLRL RLRLRLRLRLRLRL", 100);
        double last = -1;
        for (int step = 1; step <= 16; step++) {
            Point2D at = engraving.at(new Place(1, step)).orElseThrow();
            assertThat(at.getX()).isGreaterThan(last);
            last = at.getX();
        }
        assertThat(engraving.at(new Place(99, 1))).isEmpty();
    }

    @Test
    void theNoteUnderTheMouseLeadsToItsStroke() {
        Engraving engraving = engraving("RLRL RLRL", 100);
        Point2D at = engraving.at(new Place(1, 2)).orElseThrow();
        assertThat(engraving.placeAt(at.getX(), at.getY() - 0.5)).contains(new Place(1, 2));
    }

    @Test
    void aBarTooDenseForTheWindowTakesTheWidthItNeeds() {
        assertThat(engraving("RLRL RLRL", 20).width()).isGreaterThan(20);
    }

    @Test
    void aNoteOfAPhraseLeadsToItsBarEvenWhereAGrooveComesTwice() {
        Groove groove = Session.opening().typed("RLRL RLRL").recipe().weave();
        Section section = new Section(Role.TIME, groove);
        Phrase twice = new Phrase(List.of(section, new Section(Role.FILL, groove), section));
        Engraving engraving = engraving(twice, PlayedWith.NOTHING, 60, Room.NONE);
        for (int bar = 1; bar <= 3; bar++) {
            Place place = new Place(bar, 2);
            Point2D at = engraving.at(place).orElseThrow();
            assertThat(engraving.placeAt(at.getX(), at.getY() - 0.5)).contains(place);
        }
        assertThat(engraving.at(new Place(4, 1))).isEmpty();
    }

    @Test
    void theStaffStaysWhereItIsWhenAccentsTempoAndFeetComeAndGo() {
        PlayedWith with = PlayedWith.at(new Tempo(120));
        Engraving before = engraving(phrase(">RLRL RLRL"), with, 150, Room.NONE);
        assertThat(before.room().above()).isGreaterThan(7);
        Room room = before.room();
        for (String sticking : List.of("RLRL RLRL", "(R)LRL RLRL", "RLRL RLRL RLRL RLRL")) {
            Engraving after =
                    engraving(phrase(sticking), PlayedWith.at(new Tempo(60)), 150, before.room());
            assertThat(after.middles()).isEqualTo(before.middles());
            assertThat(after.height()).isEqualTo(before.height());
            assertThat(after.room()).isEqualTo(room);
        }
    }

    /** What must be seen is never cut off, and paper that nobody uses is given back. */
    @Test
    void moreRoomIsTakenAtOnceAndMuchUnusedRoomGivenBack() {
        Room taken = new Room(8, 6);
        assertThat(taken.keptFor(new Room(9, 5))).isEqualTo(new Room(9, 6));
        assertThat(taken.keptFor(new Room(1.5, 6.5))).isEqualTo(new Room(1.5, 6.5));
        Engraving low = engraving(phrase("RLRL RLRL"), PlayedWith.NOTHING, 150, Room.NONE);
        Engraving high = engraving(phrase(">RLRL RLRL"), PlayedWith.NOTHING, 150, low.room());
        assertThat(high.middles().get(0) + high.score().systems().get(0).top())
                .isGreaterThanOrEqualTo(0);
        assertThat(high.height()).isGreaterThan(low.height());
    }

    @Test
    void tempoAndChordsAreWrittenAsTheSessionHasThem() {
        Session opening = Session.opening();
        SessionModel model = new SessionModel(opening);
        assertThat(words(model)).containsExactly("= " + opening.tempo().beatsPerMinute());
        Backing band = opening.draft().backing();
        model.edit(
                "band", opening.with(opening.draft().with(band.withChords("Dm7 G7").withOn(true))));
        assertThat(words(model)).contains("Dm7", "G7");
    }

    private List<String> words(SessionModel model) {
        return engraving(model.phrase(), model.playedWith(), 150, Room.NONE)
                .score()
                .systems()
                .stream()
                .flatMap(system -> system.signs().stream())
                .filter(s -> s.kind() == Kind.TEMPO || s.kind() == Kind.CHORD_SYMBOL)
                .map(PlacedSign::ink)
                .filter(Ink.OfText.class::isInstance)
                .map(ink -> ((Ink.OfText) ink).text())
                .toList();
    }
}
