package org.kitweft.explore.role;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.kitweft.kit.UnknownNameException;

/**
 * What a groove can have that makes it serve a role. Each is measured from 0 to 1; how much it
 * counts for which role stands in {@link RoleWeights}.
 */
public enum Feature {
    STEADY_EIGHTHS(
            "steady-eighths",
            "keeps eighths on one cymbal",
            "keeps no eighths on one cymbal",
            PulseFeatures::steadyEighths),
    STEADY_BEATS(
            "steady-beats",
            "strikes every beat on one surface",
            "strikes the beats on no one surface",
            PulseFeatures::steadyBeats),
    BACK_BEAT("back-beat", "back beat", "no back beat", PulseFeatures::backBeat),
    LOW_ON_ONE(
            "low-on-one",
            "begins the bar with a low drum",
            "begins the bar without a low drum",
            PulseFeatures::lowOnOne),
    REPEATS("repeats", "repeats itself", "does not repeat itself", PulseFeatures::repeats),
    SYNCOPATED(
            "syncopated",
            "what stands out is syncopated",
            "what stands out lies on strong steps",
            PulseFeatures::syncopated),
    ACCENTS_OFF_BEAT(
            "accents-off-beat",
            "accents off the beat",
            "no accents off the beat",
            PulseFeatures::accentsOffBeat),
    TRAVELS_DOWN(
            "travels-down",
            "travels down the toms",
            "does not travel down the toms",
            MotionFeatures::travelsDown),
    ROUND_THE_KIT(
            "round-the-kit",
            "goes round the kit",
            "stays in one place",
            MotionFeatures::roundTheKit),
    DENSE("dense", "fills the steps", "leaves steps free", MotionFeatures::dense),
    SPACE("space", "leaves space", "leaves no space", MotionFeatures::space),
    GROWS("grows", "grows toward the end", "does not grow", MotionFeatures::grows),
    ENDS_ON_MARK(
            "ends-on-mark",
            "ends on a cymbal with bass drum",
            "does not end on a cymbal",
            MotionFeatures::endsOnMark),
    MARKS_WITH_LOW(
            "marks-with-low",
            "marks with cymbal and bass drum together",
            "marks with no cymbal and bass drum together",
            MotionFeatures::marksWithLow),
    TOGETHER(
            "together",
            "limbs strike together",
            "limbs strike one by one",
            MotionFeatures::together),
    STRONG("strong", "strikes hard", "strikes few accents", MotionFeatures::strong);

    private final String id;
    private final String reason;
    private final String absence;

    // Only ever a reference to a static method, so without state.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<Reading, Optional<Finding>> measure;

    Feature(
            String id,
            String reason,
            String absence,
            Function<Reading, Optional<Finding>> measure) {
        this.id = id;
        this.reason = reason;
        this.absence = absence;
        this.measure = measure;
    }

    /**
     * The feature of an id.
     *
     * @throws UnknownNameException with the nearest id, if there is none such
     */
    public static Feature of(String id) {
        return Stream.of(values())
                .filter(feature -> feature.id.equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                new UnknownNameException(
                                        "feature",
                                        id,
                                        "the features of role fit",
                                        Stream.of(values()).map(Feature::id).toList()));
    }

    /** The name in commands and files, e.g. {@code back-beat}. */
    public String id() {
        return id;
    }

    /** What it means that a groove of a kit has it: where no cymbal is, none is spoken of. */
    String reason(KitTraits kit) {
        return switch (this) {
            case STEADY_EIGHTHS -> kit.pulseIsOnCymbals() ? reason : "keeps eighths on one surface";
            case ENDS_ON_MARK -> kit.hasCrash() ? reason : "ends strong on a low sound";
            case MARKS_WITH_LOW ->
                    kit.hasCrash() ? reason : "marks low sounds with an accent or another sound";
            default -> reason;
        };
    }

    /** What it means that a groove of a kit does not have it. */
    String absence(KitTraits kit) {
        return switch (this) {
            case STEADY_EIGHTHS ->
                    kit.pulseIsOnCymbals() ? absence : "keeps no eighths on one surface";
            case ENDS_ON_MARK -> kit.hasCrash() ? absence : "does not end strong on a low sound";
            case MARKS_WITH_LOW ->
                    kit.hasCrash() ? absence : "marks no low sound with an accent or another sound";
            default -> absence;
        };
    }

    /** What it means that a groove has it, on a kit with cymbals. */
    public String reason() {
        return reason;
    }

    /** What it means that a groove does not have it, on a kit with cymbals. */
    public String absence() {
        return absence;
    }

    /** Empty where the question makes no sense for the meter or the kit. */
    Optional<Finding> measure(Reading reading) {
        return measure.apply(reading);
    }
}
