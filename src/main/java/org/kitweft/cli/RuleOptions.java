package org.kitweft.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.Kit;
import picocli.CommandLine.Option;

/** Rules that every variation keeps. */
final class RuleOptions {
    @Option(
            names = "--pin",
            paramLabel = "N=SOUND",
            description = "Stroke N, counted from 1, is on this sound.")
    private List<String> pins = new ArrayList<>();

    @Option(
            names = "--reach",
            paramLabel = "CM",
            description =
                    "Two consecutive strokes of one limb are at most so many centimetres apart, centre to centre seen from above.")
    private @Nullable Double reach;

    @Option(
            names = "--at-tempo",
            paramLabel = "BPM",
            description =
                    "Every move is possible at this tempo, 20 to 400 beats a minute, by an estimate from published tapping data; no verdict on a person.")
    private @Nullable Integer atTempo;

    @Option(
            names = "--no-crossing",
            description = "The right hand is never more than 10 cm to the left of the left hand.")
    private boolean noCrossing;

    @Option(
            names = "--surfaces",
            paramLabel = "N|N..M",
            description = "So many different surfaces in the whole pattern, as in 2..4.")
    private @Nullable String surfaces;

    @Option(
            names = "--loop",
            description =
                    "Reach, tempo and crossing hold from the end back to the start too, as when the pattern is repeated.")
    private boolean loop;

    List<Rule> rules(Kit kit) {
        List<Rule> rules = new ArrayList<>();
        pins.forEach(pin -> rules.add(Rule.Pin.parse(pin, kit)));
        if (reach != null) {
            rules.add(new Rule.Reach(reach));
        }
        if (atTempo != null) {
            rules.add(new Rule.AtTempo(new Tempo(atTempo)));
        }
        if (noCrossing) {
            rules.add(Rule.NoCrossing.usual());
        }
        if (surfaces != null) {
            rules.add(Rule.Surfaces.parse(surfaces));
        }
        if (loop) {
            rules.add(new Rule.Loop());
        }
        return rules;
    }
}
