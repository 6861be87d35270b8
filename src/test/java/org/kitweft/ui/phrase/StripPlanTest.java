package org.kitweft.ui.phrase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.RoleVoicings;
import org.kitweft.groove.Voicing;
import org.kitweft.ui.session.Session;

class StripPlanTest {
    private static final StripPlan STRIP = new StripPlan(plan(8), 800, 0);

    private static PhrasePlan plan(int bars) {
        var recipe = Session.opening().recipe();
        Voicing punch = RoleVoicings.punch(recipe.voicing(), recipe.kit());
        return PhrasePlan.ofOne(recipe, punch, punch, bars);
    }

    @Test
    void sectionsAreAsWideAsTheyHaveBars() {
        assertThat(STRIP.x(1)).isEqualTo(600, within(1e-9));
        assertThat(STRIP.x(2)).isEqualTo(700, within(1e-9));
        assertThat(STRIP.x(3)).isEqualTo(800, within(1e-9));
        assertThat(STRIP.xOfBar(1)).isEqualTo(0);
        assertThat(STRIP.xOfBar(3.5)).isEqualTo(250, within(1e-9));
        assertThat(STRIP.xOfBar(7.5)).isEqualTo(650, within(1e-9));
    }

    @Test
    void aShortSectionBesideALongOneCanStillBeCaught() {
        StripPlan strip = new StripPlan(plan(512), 800, 70);
        assertThat(strip.x(3) - strip.x(2)).isGreaterThan(70);
        assertThat(strip.x(3)).isEqualTo(800, within(1e-9));
        StripPlan narrow = new StripPlan(plan(512), 90, 70);
        assertThat(narrow.x(3)).isEqualTo(90, within(1e-9));
    }

    @Test
    void findsSectionsEdgesAndPlaces() {
        assertThat(STRIP.at(599)).isEqualTo(OptionalInt.of(0));
        assertThat(STRIP.at(601)).isEqualTo(OptionalInt.of(1));
        assertThat(STRIP.at(801)).isEmpty();
        assertThat(STRIP.edgeAt(603, 6)).isEqualTo(OptionalInt.of(0));
        assertThat(STRIP.edgeAt(797, 6)).isEqualTo(OptionalInt.of(2));
        assertThat(STRIP.edgeAt(650, 6)).isEmpty();
        assertThat(STRIP.placeAt(-5)).isZero();
        assertThat(STRIP.placeAt(650)).isEqualTo(1);
        assertThat(STRIP.placeAt(900)).isEqualTo(2);
        assertThat(STRIP.bars(0, 200)).isEqualTo(2, within(1e-9));
    }
}
