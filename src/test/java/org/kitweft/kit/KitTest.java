package org.kitweft.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitTest {
    private final Kit kit = BuiltInKits.load("five-piece");

    @Test
    void aBareSurfaceMeansItsFirstSound() {
        assertThat(kit.find("hi-hat").text()).isEqualTo("hi-hat.closed");
        assertThat(kit.find("ride.bell")).isEqualTo(new SoundName("ride", "bell"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            textBlock =
                    """
                    snair,        surface "snair" is not in kit "five-piece"; did you mean "snare"?
                    ride.bel,     sound "ride.bel" is not in kit "five-piece"; did you mean "ride.bell"?
                    ride.,        sound "ride." is not in kit "five-piece"; expected one of ride.bow
                    .bell,        surface "" is not in kit "five-piece"; expected one of
                    gong,         surface "gong" is not in kit "five-piece"; expected one of snare
                    """)
    void anUnknownNameIsAnsweredWithTheNearestIfItCanBeMeant(String asked, String message) {
        assertThatThrownBy(() -> kit.find(asked))
                .isInstanceOf(UnknownNameException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void onlyTheFootPlaysTheHiHatPedal() {
        SoundName foot = kit.find("hi-hat.foot");
        assertThat(kit.canStrike(Limb.LEFT_FOOT, foot)).isTrue();
        assertThat(kit.canStrike(Limb.RIGHT_HAND, foot)).isFalse();
        assertThat(kit.soundsFor(Limb.RIGHT_FOOT)).containsExactly(kit.find("bass-drum"));
        assertThat(kit.soundsFor(Limb.LEFT_HAND)).doesNotContain(foot);
    }

    @Test
    void mirroredTheRideStandsLeftAndTheLeftFootKicks() {
        Kit mirrored = kit.forOtherHand();
        assertThat(mirrored.leftHanded()).isTrue();
        assertThat(mirrored.surface("ride").orElseThrow().x())
                .isEqualTo(-kit.surface("ride").orElseThrow().x());
        assertThat(mirrored.canStrike(Limb.LEFT_FOOT, kit.find("bass-drum"))).isTrue();
        assertThat(mirrored.canStrike(Limb.RIGHT_FOOT, kit.find("bass-drum"))).isFalse();
    }

    /** Distance in x and y only (design section 7), here a triangle of 3, 4, 5. */
    @Test
    void distanceIsMeasuredOnTheFloor() {
        Surface one = at(0, 0, 0);
        assertThat(one.distanceTo(at(30, 40, 100))).isEqualTo(50);
    }

    @Test
    void aCentreAtMinusZeroIsAtZero() {
        Kit odd = new Kit("odd", false, List.of(at(-0.0, 10, 10)));
        assertThat(odd.forOtherHand().forOtherHand()).isEqualTo(odd);
    }

    private Surface at(double x, double y, double z) {
        Surface snare = kit.surface("snare").orElseThrow();
        return new Surface(
                "snare", "Snare", x, y, z, snare.diameter(), snare.limbs(), snare.sounds());
    }
}
