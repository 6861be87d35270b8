package org.kitweft.explore.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kitweft.groove.Groove;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

class ReachModelTest {
    private static final Kit KIT = BuiltInKits.load("five-piece");
    private static final ReachModel MODEL = ReachModel.PUBLISHED;

    private static List<CSVRecord> table(String name) throws IOException {
        try (var reader =
                Files.newBufferedReader(
                        Path.of("shared/reference", name), StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .setCommentMarker('#')
                    .get()
                    .parse(reader)
                    .getRecords();
        }
    }

    /** Rows on the verified data: fitts-regressions.csv, after MacKenzie 1992. */
    static List<CSVRecord> publishedLines() throws IOException {
        return table("fitts-regressions.csv").stream()
                .filter(row -> row.get("data").equals("1-oz"))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("publishedLines")
    void regressionOverFittsTableGivesThePublishedLine(CSVRecord line) throws IOException {
        SimpleRegression regression = regression(form(line.get("form")), line.get("width"));
        assertThat(regression.getIntercept())
                .isCloseTo(Double.parseDouble(line.get("intercept_ms")), within(0.006));
        assertThat(regression.getSlope())
                .isCloseTo(Double.parseDouble(line.get("slope_ms_per_bit")), within(0.006));
        assertThat(regression.getR()).isCloseTo(Double.parseDouble(line.get("r")), within(0.00006));
    }

    @Test
    void theModelsConstantsAreTheShannonLine() throws IOException {
        SimpleRegression regression = regression(ReachModel::bits, "nominal");
        assertThat(MODEL.interceptMillis()).isCloseTo(regression.getIntercept(), within(0.006));
        assertThat(MODEL.millisPerBit()).isCloseTo(regression.getSlope(), within(0.006));
    }

    private static DoubleBinaryOperator form(String name) {
        return switch (name) {
            case "Fitts" -> (a, w) -> Math.log(2 * a / w) / Math.log(2);
            case "Welford" -> (a, w) -> Math.log(a / w + 0.5) / Math.log(2);
            case "Shannon" -> ReachModel::bits;
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static SimpleRegression regression(DoubleBinaryOperator bits, String width)
            throws IOException {
        SimpleRegression regression = new SimpleRegression();
        String column = width.equals("nominal") ? "width_in" : "effective_width_in";
        for (CSVRecord row : table("fitts1954.csv")) {
            regression.addData(
                    bits.applyAsDouble(
                            Double.parseDouble(row.get("amplitude_in")),
                            Double.parseDouble(row.get(column))),
                    Double.parseDouble(row.get("movement_time_ms")));
        }
        return regression;
    }

    @Test
    void repeatedStrokesTakeTheLimitOfTheLimb() {
        Surface snare = KIT.surface("snare").orElseThrow();
        assertThat(MODEL.millis(Limb.LEFT_HAND, snare, snare)).isEqualTo(100);
        assertThat(MODEL.millis(Limb.RIGHT_FOOT, snare, snare)).isEqualTo(150);
    }

    @Test
    void fartherAndSmallerTargetsTakeLonger() {
        Surface snare = KIT.surface("snare").orElseThrow();
        Surface ride = KIT.surface("ride").orElseThrow();
        Surface floorTom = KIT.surface("floor-tom").orElseThrow();
        double toRide = MODEL.millis(Limb.RIGHT_HAND, snare, ride);
        // 27.69 + 111.54 log2(67.54 / 51 + 1) = 27.69 + 111.54 * 1.217, by hand.
        assertThat(toRide).isCloseTo(163.4, within(0.1));
        assertThat(MODEL.millis(Limb.RIGHT_HAND, snare, floorTom)).isLessThan(toRide);
        assertThat(MODEL.millis(Limb.RIGHT_HAND, ride, snare)).isGreaterThan(toRide);
    }

    @Test
    void oneHandPlaysSixteenthsUpTo150() {
        // Common practice, no source: the limit itself; here only that the arithmetic keeps it.
        Surface snare = KIT.surface("snare").orElseThrow();
        long sixteenth = Meter.COMMON.beatTicks() / 4;
        assertThat(MODEL.ceiling(Limb.RIGHT_HAND, snare, snare, sixteenth, Meter.COMMON))
                .isCloseTo(150, within(1e-9));
    }

    @Test
    void aGroovesTravelNamesTheMoveThatLimitsIt() {
        Recipe recipe = Recipe.plain(Sticking.parse("RLRL RLRL RLRL RLRL"), KIT);
        recipe =
                recipe.with(
                        recipe.voicing()
                                .with(
                                        Letter.R,
                                        LetterVoicing.on(
                                                Limb.RIGHT_HAND,
                                                List.of(KIT.find("snare"), KIT.find("ride")))));
        Groove groove = recipe.weave();
        Travel once = Travel.of(groove, false, MODEL);
        double step = Math.hypot(61, 29);
        assertThat(once.cm().get(Limb.RIGHT_HAND)).isCloseTo(7 * step, within(1e-9));
        assertThat(once.cm().get(Limb.LEFT_HAND)).isZero();
        assertThat(once.limit().orElseThrow().words())
                .isEqualTo("right hand from ride to snare, 68 cm");
        // An eighth in which the right hand goes from ride to snare: 60000 / (2 * millis).
        double millis =
                MODEL.millis(
                        Limb.RIGHT_HAND,
                        KIT.surface("ride").orElseThrow(),
                        KIT.surface("snare").orElseThrow());
        assertThat(once.tempoCeiling()).isEqualTo(OptionalInt.of((int) (60_000 / (2 * millis))));
        assertThat(Travel.of(groove, true, MODEL).totalCm()).isCloseTo(8 * step, within(1e-9));
    }

    @Test
    void aLimbThatStrikesOnceHasNoLimitUnlessItLoops() {
        Groove groove =
                Recipe.plain(Sticking.parse("R---"), KIT).withBars(OptionalInt.of(1)).weave();
        Groove once = Recipe.plain(Sticking.parse("R" + "-".repeat(15)), KIT).weave();
        assertThat(Travel.of(groove, false, MODEL).limit()).isPresent();
        assertThat(Travel.of(once, false, MODEL).tempoCeiling()).isEmpty();
        assertThat(Travel.of(once, true, MODEL).tempoCeiling()).hasValue(2400);
    }

    @Test
    void refusesConstantsThatAreNoTimes() {
        assertThatThrownBy(() -> new ReachModel(-1, 1, 1, 1))
                .hasMessage("intercept -1.0 ms: expected a number of 0 or more");
        assertThatThrownBy(() -> new ReachModel(1, 1, Double.NaN, 1))
                .hasMessage("repeat of a hand NaN ms: expected a number of 0 or more");
    }
}
