package org.kitweft.score.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Voicing;
import org.kitweft.groove.Weaver;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;

class VoiceWriterTest {

    /** One beat of the snare as a drummer would write it (common practice, no source). */
    @ParameterizedTest(name = "{0} at {1} steps a beat: {2}")
    @CsvSource(
            textBlock =
                    """
                    RLRL,     4, SIXTEENTH SIXTEENTH SIXTEENTH SIXTEENTH
                    R--L,     4, EIGHTH. SIXTEENTH
                    -R--,     4, r-SIXTEENTH EIGHTH.
                    RRR---,   6, SIXTEENTH SIXTEENTH QUARTER
                    RR----,   6, SIXTEENTH SIXTEENTH r-EIGHTH r-EIGHTH
                    R-RL-L,   6, EIGHTH SIXTEENTH EIGHTH SIXTEENTH
                    R---LLL,  7, QUARTER SIXTEENTH SIXTEENTH SIXTEENTH
                    RR-----,  7, SIXTEENTH QUARTER.
                    RL---,    5, SIXTEENTH QUARTER
                    """)
    void writesABeat(String sticking, int steps, String expected) {
        Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
        Groove groove =
                Weaver.weave(
                        Sticking.parse(sticking.replaceFirst("^-", "- ")),
                        kit,
                        Voicing.plain(kit),
                        new Grid(new Meter(1, 4), steps, Grid.STRAIGHT, false));
        List<String> written =
                Notation.of(groove, NotationOptions.DEFAULT)
                        .measures()
                        .get(0)
                        .voices()
                        .get(0)
                        .events()
                        .stream()
                        .map(
                                event ->
                                        (event instanceof Rest ? "r-" : "")
                                                + event.value()
                                                + ".".repeat(event.dots()))
                        .toList();
        assertThat(String.join(" ", written)).isEqualTo(expected);
    }
}
