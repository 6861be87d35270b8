package org.kitweft.explore.role;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Role;

class RoleWeightsTest {
    @Test
    void theDefaultsAreAnEmptyText() {
        assertThat(RoleWeights.DEFAULT.text()).isEmpty();
        assertThat(RoleWeights.parse("")).isEqualTo(RoleWeights.DEFAULT);
        assertThat(RoleWeights.parse("  ")).isEqualTo(RoleWeights.DEFAULT);
    }

    @Test
    void whatDiffersIsWrittenAndReadBack() {
        RoleWeights own =
                RoleWeights.DEFAULT
                        .with(Role.FILL, Feature.GROWS, 1)
                        .with(Role.TIME, Feature.REPEATS, -0.5)
                        .with(Role.TIME, Feature.BACK_BEAT, 0)
                        .with(Role.PUNCH, Feature.DENSE, 0.1 + 0.2);
        assertThat(own.text())
                .isEqualTo(
                        "time.back-beat=0 time.repeats=-0.5 fill.grows=1"
                                + " punch.dense=0.30000000000000004");
        assertThat(RoleWeights.parse(own.text())).isEqualTo(own);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    solo.grows=1 | weight "solo.grows=1": expected a role, a feature and a number
                    fill.grows=x | weight "fill.grows=x": expected a role, a feature and a number
                    fill.grows=2 | weight of grows for fill: expected -1 to 1, not 2.0
                    fill.grow=1  | grows
                    """)
    void whatCannotBeReadIsNamed(String text, String words) {
        assertThatThrownBy(() -> RoleWeights.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words);
    }
}
