package org.kitweft.ui.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Fonts;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.ui.session.Session;

class EngravingTest {
    private final Engraver engraver = new Engraver(Fonts.load());

    private Engraving engraving(String sticking, double width) {
        Groove groove = Session.opening().typed(sticking).recipe().weave();
        return Engraving.of(Phrase.of(groove), NotationOptions.DEFAULT, engraver, width);
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
        Engraving engraving = Engraving.of(twice, NotationOptions.DEFAULT, engraver, 60);
        for (int bar = 1; bar <= 3; bar++) {
            Place place = new Place(bar, 2);
            Point2D at = engraving.at(place).orElseThrow();
            assertThat(engraving.placeAt(at.getX(), at.getY() - 0.5)).contains(place);
        }
        assertThat(engraving.at(new Place(4, 1))).isEmpty();
    }
}
