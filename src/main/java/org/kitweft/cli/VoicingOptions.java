package org.kitweft.cli;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;
import picocli.CommandLine.Option;

/** Who strikes what. */
final class VoicingOptions {
    @Option(
            names = "--on",
            paramLabel = "LETTER=SOUND[,SOUND...]",
            description =
                    "What a letter strikes; several sounds are a path, taken in turn. Default: the plainest, on a drum set both hands on the snare, K on the bass drum, H at the hi-hat pedal.")
    private List<String> on = new ArrayList<>();

    @Option(
            names = "--accent",
            paramLabel = "LETTER=SOUND[,SOUND...]",
            description = "What a letter's accents strike instead.")
    private List<String> accent = new ArrayList<>();

    @Option(
            names = "--ghost",
            paramLabel = "LETTER=SOUND[,SOUND...]",
            description = "What a letter's ghost strokes strike instead.")
    private List<String> ghost = new ArrayList<>();

    @Option(
            names = "--limb",
            paramLabel = "LETTER=LIMB",
            description = "Hand a letter over to right-hand, left-hand, right-foot or left-foot.")
    private List<String> limb = new ArrayList<>();

    @Option(
            names = "--tacet",
            paramLabel = "LETTER",
            description = "Silence a letter: its strokes become rests.")
    private List<String> tacet = new ArrayList<>();

    @Option(
            names = "--double",
            paramLabel = "LETTER=SOUND",
            description =
                    "Another limb strikes this together with the letter. Which limb: a free one that can; or say so, as in R=bass-drum by right-foot.")
    private List<String> doubling = new ArrayList<>();

    @Option(
            names = "--double-accents",
            paramLabel = "LETTER=SOUND",
            description = "The same with the letter's accents only.")
    private List<String> doubleAccents = new ArrayList<>();

    @Option(
            names = "--layer",
            paramLabel = "SOUND@STEPS: FIGURE",
            description =
                    "A figure that one limb repeats beside the sticking, at so many steps a beat (left out: those of --steps): x a stroke, >x accented, (x) ghost, - a rest. Which limb: a free one that can; or say so, as in \"hi-hat.foot by left-foot@2: - x - x\".")
    private List<String> layer = new ArrayList<>();

    @Option(
            names = "--stroke",
            paramLabel = "N=SOUND",
            description = "One stroke of the sticking, counted from 1, strikes this instead.")
    private List<String> stroke = new ArrayList<>();

    /**
     * The voicing that the options spell out.
     *
     * @throws IllegalArgumentException in one line, naming the option, if something cannot be
     */
    Voicing voicing(Sticking sticking, Kit kit, Grid grid) {
        VoicingBuilder builder = new VoicingBuilder(sticking, kit, grid);
        limb.forEach(text -> builder.limb("--limb " + text, text));
        on.forEach(text -> builder.on("--on " + text, text));
        accent.forEach(text -> builder.accents("--accent " + text, text));
        ghost.forEach(text -> builder.ghosts("--ghost " + text, text));
        tacet.forEach(text -> builder.tacet("--tacet " + text, text));
        doubling.forEach(text -> builder.doubling("--double " + text, text, false));
        doubleAccents.forEach(text -> builder.doubling("--double-accents " + text, text, true));
        stroke.forEach(text -> builder.stroke("--stroke " + text, text));
        layer.forEach(text -> builder.layer("--layer \"" + text + "\"", text));
        return builder.voicing();
    }
}
