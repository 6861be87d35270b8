package org.kitweft.cli;

import java.math.BigInteger;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.kitweft.explore.Choices;
import org.kitweft.explore.CountName;
import org.kitweft.explore.Counts;
import org.kitweft.explore.rule.Rule;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.groove.Recipe;
import org.kitweft.pattern.Sticking;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Counts in how many ways a sticking can be played. */
@Command(
        name = "count",
        header = "Count in how many ways a sticking can be played.",
        abbreviateSynopsis = true,
        sortOptions = false,
        description = {
            "Count in how many ways a sticking can be played on the sounds you choose, exactly at"
                    + " any size."
        },
        footer = {
            "",
            "Strokes of a letter that is tacet are rests, and not counted.",
            "",
            "Examples:",
            "  kitweft count \"RLRR LRLL\" --choose R=snare,ride --choose L=snare",
            "  kitweft count RLRRLL --kit hand-drums --json",
            "  kitweft count \"RLRR LRLL\" --pin 5=crash --reach 60 --no-crossing --loop",
            "",
            "--json answers with {sticking, strokes, stickings, onePlacePerLetter, placePerStroke,"
                    + " anySticking, anyStickingDifferentSound, anyStickingUpToStart,"
                    + " differentSoundUpToStart, underRules}. strokes (rests are none) is a number; the counts"
                    + " are strings of digits, since they can outgrow 2^53."
        })
final class CountCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin private RecipeOptions recipeOptions = new RecipeOptions();
    @Mixin private ChoiceOptions choiceOptions = new ChoiceOptions();
    @Mixin private RuleOptions ruleOptions = new RuleOptions();

    @Option(names = "--json", description = "Answer with JSON instead of text.")
    private boolean json;

    CountCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Recipe recipe = ChoiceOptions.withoutTacet(recipeOptions.recipe());
        List<Rule> rules = ruleOptions.rules(recipe.kit());
        Choices choices = choiceOptions.choices(recipe, rules);
        Counts counts = Counts.of(recipe.sticking(), choices);
        Possibilities under = Possibilities.of(recipe, choices, rules);
        Map<CountName, BigInteger> all = new EnumMap<>(counts.byName());
        all.put(CountName.UNDER_RULES, under.total());
        terminal.out()
                .print(
                        json
                                ? json(recipe.sticking(), counts.strokes(), all)
                                : text(recipe, counts.strokes(), choices, all));
        terminal.out().flush();
        under.contradiction().ifPresent(found -> terminal.err().println(found.words()));
        return Cli.DONE;
    }

    private static String json(Sticking sticking, int strokes, Map<CountName, BigInteger> counts) {
        return JsonText.of(
                json -> {
                    json.writeStartObject();
                    json.writeStringField("sticking", sticking.text());
                    json.writeNumberField("strokes", strokes);
                    for (Map.Entry<CountName, BigInteger> count : counts.entrySet()) {
                        json.writeStringField(count.getKey().id(), count.getValue().toString());
                    }
                    json.writeEndObject();
                });
    }

    private String text(
            Recipe recipe, int strokes, Choices choices, Map<CountName, BigInteger> counts) {
        StringBuilder text = new StringBuilder();
        text.append(
                "%s: %d %s\n"
                        .formatted(
                                recipe.sticking().text(),
                                strokes,
                                strokes == 1 ? "stroke" : "strokes"));
        text.append(choiceOptions.words(recipe, choices));
        counts.forEach(
                (name, count) ->
                        text.append("\n")
                                .append(GrooveText.exact(count))
                                .append("\n  ")
                                .append(name.words())
                                .append("\n"));
        return text.toString();
    }
}
