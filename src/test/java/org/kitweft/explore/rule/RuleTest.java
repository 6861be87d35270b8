package org.kitweft.explore.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

class RuleTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");

    @Test
    void readsPinsAndRanges() {
        assertThat(Rule.Pin.parse("5=snare", KIT))
                .isEqualTo(new Rule.Pin(4, new SoundName("snare", "head")));
        assertThat(Rule.Pin.parse(" 1 = hi-hat.open ", KIT).words()).isEqualTo("pin 1=hi-hat.open");
        assertThat(Rule.Surfaces.parse("2..4")).isEqualTo(new Rule.Surfaces(2, 4));
        assertThat(Rule.Surfaces.parse("3")).isEqualTo(new Rule.Surfaces(3, 3));
    }

    @Test
    void namesItself() {
        assertThat(
                        List.of(
                                new Rule.Reach(60).words(),
                                new Rule.Reach(12.5).words(),
                                new Rule.AtTempo(new Tempo(100)).words(),
                                Rule.NoCrossing.usual().words(),
                                new Rule.NoCrossing(5).words(),
                                new Rule.Surfaces(2, 4).words(),
                                new Rule.Surfaces(3, 3).words(),
                                new Rule.Loop().words(),
                                new Rule.Allowed(Letter.R, List.of(KIT.find("snare"))).words()))
                .containsExactly(
                        "reach 60 cm",
                        "reach 12.5 cm",
                        "at tempo 100",
                        "no crossing",
                        "no crossing beyond 5 cm",
                        "surfaces 2..4",
                        "surfaces 3",
                        "loop",
                        "R on snare.head");
    }

    @ParameterizedTest(name = "pin {0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            snare     | pin "snare": expected a stroke and its sound, as in 5=snare
            x=snare   | pin "x=snare": expected a stroke and its sound, as in 5=snare
            0=snare   | pin on stroke 0: expected a stroke from 1 to 512
            513=snare | pin on stroke 513: expected a stroke from 1 to 512
            """)
    void refusesFaultyPins(String text, String message) {
        assertThatThrownBy(() -> Rule.Pin.parse(text, KIT)).hasMessage(message);
    }

    @Test
    void namesTheNearestSoundOfAPin() {
        assertThatThrownBy(() -> Rule.Pin.parse("5=snaer", KIT))
                .hasMessageContaining("did you mean \"snare\"?");
    }

    @ParameterizedTest(name = "surfaces {0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            5..2 | surfaces 5..2: expected a least and a most, 1 or more and in that order, as in 2..4
            0..2 | surfaces 0..2: expected a least and a most, 1 or more and in that order, as in 2..4
            -1   | surfaces -1..-1: expected a least and a most, 1 or more and in that order, as in 2..4
            two  | surfaces "two": expected a least and a most, as in 2..4
            2..  | surfaces "2..": expected a least and a most, as in 2..4
            """)
    void refusesFaultyRanges(String text, String message) {
        assertThatThrownBy(() -> Rule.Surfaces.parse(text)).hasMessage(message);
    }

    @Test
    void refusesNegativeLengths() {
        assertThatThrownBy(() -> new Rule.Reach(-1))
                .hasMessage("reach -1 cm: expected a number of centimetres, 0 or more");
        assertThatThrownBy(() -> new Rule.Reach(Double.NaN))
                .hasMessage("reach NaN cm: expected a number of centimetres, 0 or more");
        assertThatThrownBy(() -> new Rule.NoCrossing(-10))
                .hasMessage(
                        "crossing tolerance -10 cm: expected a number of centimetres, 0 or more");
    }
}
