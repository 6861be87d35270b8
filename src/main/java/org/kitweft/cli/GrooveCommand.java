package org.kitweft.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Recipe;
import org.kitweft.sound.Mix;
import org.kitweft.sound.PlayOut;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Player;
import org.kitweft.sound.live.LivePlayer;
import org.kitweft.sound.synth.Bank;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Weaves a groove: shows it, plays it, writes it to files. */
@Command(
        name = "groove",
        header = "Weave a sticking into a groove: show it, play it, write it to files.",
        abbreviateSynopsis = true,
        sortOptions = false,
        description = {
            "",
            "A SOUND is a surface or surface.sound of the kit, as in ride or ride.bell; the command"
                    + " kits lists them."
        },
        footer = {
            "",
            "Examples:",
            "  kitweft groove \"RLRR LRLL\"",
            "  kitweft groove \">R(L)RR >LR(L)(L)\" --on R=hi-hat --play --loops 4",
            "  kitweft groove RLRRL --on R=ride,floor-tom --resolve --midi fives.mid",
            "  kitweft groove RLLRLR --steps 3 --meter 3/4 --tacet L --png threes.png",
            "  kitweft groove \">RLRR >LRLL\" --double-accents R=bass-drum \\",
            "      --layer \"hi-hat.foot@2: - x - x\" --wav feet.wav",
            "  kitweft groove \"RLRR LRLL\" --chords \"Dm7 G7 | Cmaj7 %%\" --style swing \\",
            "      --without drums --loops 4 --count-in 1 --wav minus-drums.wav",
            "  kitweft groove \">RLRR >LRLL\" --phrase 8 --chords \"Am7 | D7\" --style bossa \\",
            "      --midi phrase.mid --pdf phrase.pdf",
            "",
            "--json answers with {sticking, meter, tempo, steps, bars, kit, hits: [{bar, step, start,"
                    + " limb, letter, surface, sound, channel, key, velocity, dynamic}], conflicts:"
                    + " [{kind, limb, sounds, places, reason}]}: bar, step and channel count from 1,"
                    + " start is in quarter notes as an exact fraction, letter is null for a layer. With --phrase also sections:"
                    + " [{role, bar, bars}], and bar counts through the phrase."
        })
final class GrooveCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin private RecipeOptions recipeOptions = new RecipeOptions();
    @Mixin private PlayOptions playOptions = new PlayOptions();
    @Mixin private BandOptions bandOptions = new BandOptions();
    @Mixin private PhraseOptions phraseOptions = new PhraseOptions();
    @Mixin private FileOptions fileOptions = new FileOptions();

    @Option(
            names = "--play",
            description =
                    "Play it and wait for its end. Start at a low volume: for your ears' sake.")
    private boolean play;

    @Option(names = "--json", description = "Answer with JSON instead of text.")
    private boolean json;

    GrooveCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        PlaySettings settings =
                playOptions.settings().withMix(Mix.DEFAULT.without(bandOptions.left()));
        if (play && playOptions.hasTempoSteps()) {
            throw new InputException(
                    "--tempo-steps is for --midi and --wav; --play plays one --tempo");
        }
        Recipe recipe = recipeOptions.recipe();
        if (recipe.grid().swing() != Grid.STRAIGHT && !recipe.grid().canSwing()) {
            terminal.err()
                    .println(
                            "swing has no effect on %d step%s a beat, only on 2, 4 or 8"
                                    .formatted(
                                            recipe.grid().stepsPerBeat(),
                                            recipe.grid().stepsPerBeat() == 1 ? "" : "s"));
        }
        Optional<Phrase> phrase = phraseOptions.phrase(recipe);
        Playable playable;
        Targets targets;
        String text;
        if (phrase.isPresent()) {
            playable = bandOptions.playable(phrase.get());
            targets =
                    fileOptions.targets(
                            playable, bandOptions.chart(), settings, playOptions::loadBank);
            text =
                    json
                            ? GrooveJson.of(phrase.get(), settings.tempo())
                            : PhraseText.of(phrase.get(), settings.tempo(), terminal.symbols());
        } else {
            Groove groove = bandOptions.fitting(recipe);
            playable = bandOptions.playable(Phrase.of(groove));
            targets =
                    fileOptions.targets(
                            groove, playable, bandOptions.chart(), settings, playOptions::loadBank);
            text =
                    json
                            ? GrooveJson.of(groove, settings.tempo())
                            : GrooveText.of(groove, settings.tempo(), terminal.symbols());
        }
        targets.check();
        terminal.out().print(text);
        terminal.out().flush();
        targets.write(terminal);
        if (play) {
            Bank bank = playOptions.loadBank();
            try (Player player = LivePlayer.open(() -> bank)) {
                Optional<String> fault = PlayOut.play(player, playable, settings);
                if (fault.isPresent()) {
                    throw new InputException(fault.get());
                }
            }
        }
        return 0;
    }
}
