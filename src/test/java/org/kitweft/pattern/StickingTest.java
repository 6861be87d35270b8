package org.kitweft.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StickingTest {

    @Test
    void turnsBothWaysAndComesRound() {
        Sticking sticking = Sticking.parse(">RLRR");
        assertThat(sticking.rotated(1).text()).isEqualTo("L R R >R");
        assertThat(sticking.rotated(-1).text()).isEqualTo("R >R L R");
        assertThat(sticking.rotated(4)).isEqualTo(sticking);
    }

    @Test
    void swappingAndReversingTwiceGiveTheSameAgain() {
        RandomStickings.of(8, 500, 20)
                .forEach(
                        sticking -> {
                            assertThat(sticking.handsSwapped().handsSwapped()).isEqualTo(sticking);
                            assertThat(sticking.reversed().reversed()).isEqualTo(sticking);
                        });
    }

    @Test
    void countsRestsAsStepsButNotAsStruck() {
        Sticking sticking = Sticking.parse("R-LB");
        assertThat(sticking.size()).isEqualTo(4);
        assertThat(sticking.struckCount()).isEqualTo(3);
        assertThat(sticking.letters()).containsExactly(Letter.R, Letter.L, Letter.B);
    }

    @Test
    void refusesToBeEmptyAndToFlamAFoot() {
        assertThatThrownBy(() -> new Sticking(List.of()))
                .hasMessage("a sticking has 1 to 512 strokes, this one 0");
        assertThatThrownBy(() -> Stroke.of(Letter.K, Dynamic.PLAIN, Ornament.FLAM))
                .hasMessage("a flam needs a right or left hand, not K");
    }

    /** Families and runs: common practice, no source. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            textBlock =
                    """
                    RLRL,      singles,     1, 1
                    RRLL,      doubles,     2, 2
                    RLLR,      doubles,     2, 2
                    RLRR LRLL, paradiddles, 2, 2
                    RLRRL,     paradiddles, 2, 2
                    RRRL,      longer-runs, 3, 3
                    RLR,       singles,     1, 2
                    R-R,       singles,     1, 2
                    RRRR,      longer-runs, 4, 2147483647
                    """)
    void isOfAFamily(String text, String family, int longest, int longestOnRepeat) {
        Sticking sticking = Sticking.parse(text);
        assertThat(StickingTraits.family(sticking).id()).isEqualTo(family);
        assertThat(StickingTraits.longestRun(sticking)).isEqualTo(longest);
        assertThat(StickingTraits.longestRunOnRepeat(sticking)).isEqualTo(longestOnRepeat);
    }

    @Test
    void theParadiddleIsItsOwnMirrorImageHalfWayRound() {
        assertThat(StickingTraits.sameAfterSwappingHands(Sticking.parse("RLRR LRLL"))).isTrue();
        assertThat(StickingTraits.sameAfterSwappingHands(Sticking.parse("RLRR"))).isFalse();
    }
}
