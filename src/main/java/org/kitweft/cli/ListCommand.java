package org.kitweft.cli;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.kitweft.explore.Choices;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.explore.reach.Travel;
import org.kitweft.explore.role.Reason;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.explore.role.RoleScore;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Contradiction;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.kit.SoundName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists variations: ways to put the strokes of a sticking on sounds. */
@Command(
        name = "list",
        header = "List variations of a sticking that keep your rules.",
        abbreviateSynopsis = true,
        sortOptions = false,
        description = {
            "List variations of a sticking: every stroke on one of the sounds its letter may choose"
                    + " from, so that all rules are kept.",
            "",
            "Travel and highest tempo are estimates for the limbs of the sticking: "
                    + "each move takes the time that published tapping data give for its distance"
                    + " and the size of its target. They are no verdict on a person."
        },
        footer = {
            "",
            "Examples:",
            "  kitweft list \"RLRR LRLL\" --choose R=ride,snare --choose L=snare,high-tom --best 5",
            "  kitweft list \"RLRR LRLL\" --reach 60 --loop --best 6 --as fill",
            "  kitweft list RLRRL --reach 60 --no-crossing --loop --sample 3 --seed 7",
            "  kitweft list RLRR --pin 1=crash --from 1000 --take 10 --json",
            "",
            "--json answers with {total, variations: [{index, sounds, travelCm, tempoCeiling,"
                    + " roles: {time, fill, punch}}]}. total and index, from 0, are strings of"
                    + " digits, since they can outgrow 2^53; sounds has one for each stroke that is"
                    + " played; tempoCeiling, in beats a minute, is null where nothing limits it;"
                    + " roles say from 0 to 1 how well it serves."
        })
final class ListCommand implements Callable<Integer> {
    private static final int REASONS = 3;

    private final Terminal terminal;

    @Mixin private RecipeOptions recipeOptions = new RecipeOptions();
    @Mixin private ChoiceOptions choiceOptions = new ChoiceOptions();
    @Mixin private RuleOptions ruleOptions = new RuleOptions();
    @Mixin private ListOptions listOptions = new ListOptions();

    @Option(names = "--json", description = "Answer with JSON instead of text.")
    private boolean json;

    ListCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Recipe recipe = recipeOptions.recipe();
        List<Rule> rules = ruleOptions.rules(recipe.kit());
        Choices choices = choiceOptions.choices(recipe, rules);
        Possibilities possibilities = Possibilities.of(recipe, choices, rules);
        Optional<Contradiction> contradiction = possibilities.contradiction();
        if (contradiction.isPresent()) {
            throw new InputException(contradiction.get().words());
        }
        ListOptions.Listed listed = listOptions.of(possibilities, terminal);
        // One at a time: there may be more of them than memory holds, and the first are there soon.
        Iterator<Variation> variations = listed.variations().iterator();
        if (json) {
            json(possibilities, variations);
        } else {
            text(possibilities, choiceOptions.words(recipe, choices), listed, variations);
        }
        return Cli.DONE;
    }

    /** Nobody reads on once the pipe is closed, as {@code head} does. */
    private boolean isRead() {
        return !terminal.out().checkError();
    }

    private static RoleFit roles(Possibilities possibilities, Variation variation) {
        return RoleFit.of(possibilities.recipe(variation).weave());
    }

    private void json(Possibilities possibilities, Iterator<Variation> variations) {
        JsonText.write(
                terminal.outWriter(),
                json -> {
                    json.writeStartObject();
                    json.writeStringField("total", possibilities.total().toString());
                    json.writeArrayFieldStart("variations");
                    while (variations.hasNext() && isRead()) {
                        Variation variation = variations.next();
                        Travel travel = possibilities.travel(variation.sounds());
                        RoleFit roles = roles(possibilities, variation);
                        json.writeStartObject();
                        json.writeStringField("index", variation.index().toString());
                        json.writeArrayFieldStart("sounds");
                        for (SoundName sound : variation.sounds()) {
                            json.writeString(sound.text());
                        }
                        json.writeEndArray();
                        json.writeNumberField("travelCm", tenths(travel.totalCm()));
                        OptionalInt ceiling = travel.tempoCeiling();
                        if (ceiling.isPresent()) {
                            json.writeNumberField("tempoCeiling", ceiling.getAsInt());
                        } else {
                            json.writeNullField("tempoCeiling");
                        }
                        json.writeObjectFieldStart("roles");
                        for (Role role : Role.values()) {
                            json.writeNumberField(role.id(), hundredths(roles.of(role).value()));
                        }
                        json.writeEndObject();
                        json.writeEndObject();
                    }
                    json.writeEndArray();
                    json.writeEndObject();
                });
    }

    private void text(
            Possibilities possibilities,
            String choices,
            ListOptions.Listed listed,
            Iterator<Variation> variations) {
        PrintStream out = terminal.out();
        out.print(possibilities.recipe().sticking().text() + "\n" + choices);
        out.print(
                "%s %s%s; listed: %s.\n"
                        .formatted(
                                GrooveText.exact(possibilities.total()),
                                possibilities.total().bitLength() == 1 ? "variation" : "variations",
                                possibilities.rules().isEmpty() ? "" : " under your rules",
                                listed.words()));
        while (variations.hasNext() && isRead()) {
            out.print(text(possibilities, variations.next(), listed.role()));
        }
        out.print(
                "\nTravel and tempo: %s%s\n"
                        .formatted(
                                ReachModel.CAVEAT.substring(0, 1).toLowerCase(Locale.ROOT),
                                ReachModel.CAVEAT.substring(1)));
    }

    private static String text(
            Possibilities possibilities, Variation variation, Optional<Role> asked) {
        Travel travel = possibilities.travel(variation.sounds());
        RoleFit roles = roles(possibilities, variation);
        Role shown = asked.orElse(roles.best());
        return """

                %s  %s
                  travels %d cm, %s
                  %s
                  as %s: %s
                """
                .formatted(
                        GrooveText.exact(variation.index()),
                        variation.sounds().stream()
                                .map(sound -> shortest(sound, possibilities))
                                .collect(Collectors.joining(" ")),
                        Math.round(travel.totalCm()),
                        travel.tempoCeiling().isPresent()
                                ? "up to about %d beats a minute (%s)"
                                        .formatted(
                                                travel.tempoCeiling().getAsInt(),
                                                travel.limit().orElseThrow().words())
                                : "no move limits the tempo",
                        percents(roles),
                        shown.id(),
                        reasons(roles.of(shown)));
    }

    private static String reasons(RoleScore score) {
        return score.reasons().isEmpty()
                ? "nothing speaks for it"
                : score.reasons().stream()
                        .limit(REASONS)
                        .map(ListCommand::words)
                        .collect(Collectors.joining("; "));
    }

    /** {@code 17 % back beat (2 and 4)}: how much of the score comes of it. */
    private static String words(Reason reason) {
        return "%d %% %s".formatted(Math.round(100 * reason.share()), reason.text());
    }

    private static String percents(RoleFit roles) {
        return Arrays.stream(Role.values())
                .map(role -> role.id() + " " + Math.round(100 * roles.of(role).value()) + " %")
                .collect(Collectors.joining(", "));
    }

    /** The surface alone where its first sound is meant. */
    private static String shortest(SoundName sound, Possibilities possibilities) {
        boolean first = possibilities.recipe().kit().find(sound.surface()).equals(sound);
        return first ? sound.surface() : sound.text();
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }

    private static double hundredths(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
