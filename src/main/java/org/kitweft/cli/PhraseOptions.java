package org.kitweft.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.RoleVoicings;
import picocli.CommandLine.Option;

/** Whether a sticking becomes a whole phrase. */
final class PhraseOptions {
    @Option(
            names = "--phrase",
            paramLabel = "BARS",
            description =
                    "Make a phrase of so many bars, from 3: bars of time, one bar of fill over the drums, one bar of punch with one hand and the bass drum, all from this sticking. In place of --bars.")
    private @Nullable Integer bars;

    /** The phrase from a groove that keeps time, if one is asked for. */
    Optional<Phrase> phrase(Recipe time) {
        if (bars == null) {
            return Optional.empty();
        }
        if (time.bars().isPresent()) {
            throw new InputException(
                    "--bars is for a groove; with --phrase say how many bars there");
        }
        return Optional.of(
                PhrasePlan.ofOne(
                                time,
                                RoleVoicings.fill(time.voicing(), time.kit()),
                                RoleVoicings.punch(time.voicing(), time.kit()),
                                bars)
                        .weave());
    }
}
