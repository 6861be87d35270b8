package org.kitweft.cli;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.kitweft.band.Arrangement;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.band.ChordChart;
import org.kitweft.band.ClaveDirection;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.sound.Part;
import org.kitweft.sound.Playable;
import picocli.CommandLine.Option;

/** The band that plays along, and who is left out. */
final class BandOptions {
    @Option(
            names = "--chords",
            paramLabel = "CHART",
            description =
                    "Let a band play along: chords in bars, as in \"Dm7 G7 | Cmaj7 %%\". A chart shorter than the groove starts again; without --bars the groove lasts as long as a longer chart.")
    private @Nullable String chords;

    @Option(
            names = "--style",
            paramLabel = "NAME",
            defaultValue = "rock",
            description =
                    "How the band plays: rock, funk, swing, bossa, samba, salsa or ballad. Default: ${DEFAULT-VALUE}.")
    private String style = "rock";

    @Option(
            names = "--clave",
            paramLabel = "3-2|2-3",
            defaultValue = "3-2",
            description =
                    "Which side of the clave comes first, in styles that have one. Default: ${DEFAULT-VALUE}.")
    private String clave = "3-2";

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "0",
            description =
                    "For what the band varies: the same seed gives the same notes. Default: ${DEFAULT-VALUE}.")
    private long seed;

    @Option(
            names = "--without",
            split = ",",
            paramLabel = "PART",
            description =
                    "Leave parts out, to play them yourself: drums, click, bass, comping, punches; several with commas.")
    private List<String> without = List.of();

    /** The parts to leave out. */
    Set<Part> left() {
        Set<Part> left = EnumSet.noneOf(Part.class);
        without.stream().map(String::trim).map(Part::of).forEach(left::add);
        return left;
    }

    /**
     * The groove that the band plays with: where the bars are not asked for, as many as the chart
     * has if it is longer.
     */
    Groove fitting(Recipe recipe) {
        Groove groove = recipe.weave();
        int bars = chords == null ? 0 : ChordChart.parse(chords).bars().size();
        return recipe.bars().isEmpty() && bars > groove.bars()
                ? recipe.withBars(OptionalInt.of(bars)).weave()
                : groove;
    }

    /** The chart, if chords were given. */
    Optional<ChordChart> chart() {
        return Optional.ofNullable(chords).map(ChordChart::parse);
    }

    /** The phrase, with a band if chords were given. */
    Playable playable(Phrase phrase) {
        Arrangement arrangement = null;
        ClaveDirection direction =
                ClaveDirection.of(clave)
                        .orElseThrow(
                                () ->
                                        new InputException(
                                                "--clave %s: expected %s"
                                                        .formatted(clave, directions())));
        if (chords != null) {
            arrangement =
                    new Arrangement(
                            ChordChart.parse(chords, phrase.bars()),
                            BuiltInStyles.load(style),
                            direction,
                            seed);
        }
        return arrangement == null ? Playable.of(phrase) : Playable.of(phrase, arrangement);
    }

    private static String directions() {
        return String.join(
                " or ", Arrays.stream(ClaveDirection.values()).map(ClaveDirection::id).toList());
    }
}
