package org.kitweft.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.kit.Limb;

class PlaySettingsTest {
    @Test
    void soundStartsLow() {
        assertThat(PlaySettings.DEFAULT.level()).isLessThanOrEqualTo(0.5);
    }

    @Test
    void soloLeavesOnlyTheSoloLimbsAndMuteWins() {
        PlaySettings settings =
                PlaySettings.DEFAULT
                        .withSolo(Set.of(Limb.RIGHT_HAND, Limb.LEFT_FOOT))
                        .withMuted(Set.of(Limb.LEFT_FOOT));
        assertThat(Limb.values()).filteredOn(settings::hears).containsExactly(Limb.RIGHT_HAND);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void levelOutsideZeroToOneIsRefused(double level) {
        assertThatThrownBy(() -> PlaySettings.DEFAULT.withLevel(level))
                .hasMessage("level %s: expected 0 to 1".formatted(level));
    }

    @ParameterizedTest
    @CsvSource({"-1, 0", "10001, 0", "1, -1", "1, 9"})
    void loopsAndCountInOutsideTheirRangeAreRefused(int loops, int countIn) {
        assertThatThrownBy(() -> PlaySettings.DEFAULT.withLoops(loops).withCountInBars(countIn))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected 0 to");
    }
}
