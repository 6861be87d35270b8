package org.kitweft.groove;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;

class StrokeAtTest {
    private static final Kit KIT = BuiltInKits.load(BuiltInKits.DEFAULT);

    @ParameterizedTest(name = "{0}, over the bar {1}: {2}")
    @CsvSource(
            textBlock =
                    """
        RLRLL,  false, 0123 4012 0123 4012
        RLRLL,  true,  0123 4012 3401 2340
        RL,     true,  0101 0101 0101 0101
        R-L,    false, 0120 1201 0120 1201
        """)
    void theStrokeOfEachStepIsTheOneWoven(String sticking, boolean over, String strokes) {
        Groove groove =
                Weaver.weave(
                        Sticking.parse(sticking),
                        KIT,
                        Voicing.plain(KIT),
                        new Grid(Meter.parse("2/4"), 4, 50, over),
                        2);
        String found =
                IntStream.rangeClosed(1, 2)
                        .boxed()
                        .flatMap(
                                bar -> IntStream.rangeClosed(1, 8).mapToObj(s -> new Place(bar, s)))
                        .map(place -> Integer.toString(groove.strokeAt(place)))
                        .collect(Collectors.joining());
        assertThat(found).isEqualTo(strokes.replace(" ", ""));
        assertThat(groove.hits())
                .allSatisfy(hit -> assertThat(hit.stroke()).hasValue(groove.strokeAt(hit.place())));
    }
}
