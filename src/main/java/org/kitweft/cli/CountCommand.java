package org.kitweft.cli;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.kitweft.explore.Choices;
import org.kitweft.explore.CountName;
import org.kitweft.explore.Counts;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
            "Without --choose, each letter of the sticking may strike every sound of the kit that"
                    + " its limb can strike. With it, only the letters named have choices.",
            "",
            "Examples:",
            "  kitweft count \"RLRR LRLL\" --choose R=snare,ride --choose L=snare",
            "  kitweft count RLRRLL --kit hand-drums --json",
            "",
            "--json answers with {sticking, strokes, stickings, onePlacePerLetter, placePerStroke,"
                    + " anySticking, anyStickingDifferentSound, anyStickingUpToStart,"
                    + " differentSoundUpToStart}. strokes (rests are none) is a number; the counts"
                    + " are strings of digits, since they can outgrow 2^53."
        })
final class CountCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(
            index = "0",
            paramLabel = "STICKING",
            description = "The sticking, as for the command groove.")
    private String sticking = "";

    @Mixin private KitOptions kitOptions = new KitOptions();

    @Option(
            names = "--choose",
            paramLabel = "LETTER=SOUND[,SOUND...]",
            description = "The sounds that strokes of a letter may choose from.")
    private List<String> choose = new ArrayList<>();

    @Option(names = "--json", description = "Answer with JSON instead of text.")
    private boolean json;

    CountCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Sticking parsed = Sticking.parse(sticking);
        Choices choices = choices(parsed, kitOptions.kit());
        Counts counts = Counts.of(parsed, choices);
        terminal.out().print(json ? json(parsed, counts) : text(parsed, choices, counts));
        return 0;
    }

    private Choices choices(Sticking parsed, Kit kit) {
        if (choose.isEmpty()) {
            return Choices.everything(parsed, kit, Voicing.plain(kit));
        }
        Choices choices = Choices.NONE;
        for (String one : choose) {
            choices = choices.with(one, kit);
        }
        for (Letter letter : choices.letters()) {
            for (SoundName sound : choices.of(letter)) {
                Reach.check("--choose " + letter, letter, sound, kit);
            }
        }
        return choices;
    }

    private static String json(Sticking sticking, Counts counts) {
        return JsonText.of(
                json -> {
                    json.writeStartObject();
                    json.writeStringField("sticking", sticking.text());
                    json.writeNumberField("strokes", counts.strokes());
                    for (Map.Entry<CountName, BigInteger> count : counts.byName().entrySet()) {
                        json.writeStringField(count.getKey().id(), count.getValue().toString());
                    }
                    json.writeEndObject();
                });
    }

    private static String text(Sticking sticking, Choices choices, Counts counts) {
        StringBuilder text = new StringBuilder();
        text.append("%s: %d strokes\n".formatted(sticking.text(), counts.strokes()));
        for (Letter letter : choices.letters()) {
            List<SoundName> sounds = choices.of(letter);
            text.append(
                    "%s chooses from %d: %s\n"
                            .formatted(
                                    letter,
                                    sounds.size(),
                                    sounds.stream()
                                            .map(SoundName::text)
                                            .collect(Collectors.joining(", "))));
        }
        counts.byName()
                .forEach(
                        (name, count) ->
                                text.append("\n")
                                        .append(GrooveText.exact(count))
                                        .append("\n  ")
                                        .append(name.words())
                                        .append("\n"));
        return text.toString();
    }
}
