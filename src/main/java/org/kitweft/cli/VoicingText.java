package org.kitweft.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/** A voicing as the options that {@link VoicingOptions} reads, to be typed after a sticking. */
final class VoicingText {
    private final Kit kit;
    private final List<String> options = new ArrayList<>();

    private VoicingText(Kit kit) {
        this.kit = kit;
    }

    /** Names and values in turn; letters that do not occur, or are as plain as can be, left out. */
    static List<String> options(Recipe recipe) {
        VoicingText text = new VoicingText(recipe.kit());
        Voicing plain = Voicing.plain(recipe.kit());
        for (Letter letter : recipe.sticking().letters()) {
            recipe.voicing()
                    .letter(letter)
                    .filter(voiced -> !plain.letter(letter).equals(Optional.of(voiced)))
                    .ifPresent(voiced -> text.letter(letter, voiced));
        }
        recipe.voicing()
                .strokes()
                .forEach((i, sound) -> text.add("--stroke", (i + 1) + "=" + text.name(sound)));
        for (Layer layer : recipe.voicing().layers()) {
            text.add(
                    "--layer",
                    "%s by %s@%d: %s"
                            .formatted(
                                    text.name(layer.sound()),
                                    layer.limb().id(),
                                    layer.stepsPerBeat(),
                                    layer.figure().text()));
        }
        return List.copyOf(text.options);
    }

    private void letter(Letter letter, LetterVoicing voiced) {
        if (voiced.limb() != Voicing.limbOf(letter, kit)) {
            add("--limb", letter + "=" + voiced.limb().id());
        }
        add("--on", letter + "=" + names(voiced.path()));
        if (!voiced.accents().isEmpty()) {
            add("--accent", letter + "=" + names(voiced.accents()));
        }
        if (!voiced.ghosts().isEmpty()) {
            add("--ghost", letter + "=" + names(voiced.ghosts()));
        }
        if (voiced.tacet()) {
            add("--tacet", letter.toString());
        }
        for (Doubling doubling : voiced.doublings()) {
            add(
                    doubling.accentsOnly() ? "--double-accents" : "--double",
                    "%s=%s by %s".formatted(letter, name(doubling.sound()), doubling.limb().id()));
        }
    }

    private void add(String name, String value) {
        options.add(name);
        options.add(value);
    }

    private String names(List<SoundName> sounds) {
        return sounds.stream().map(this::name).collect(Collectors.joining(","));
    }

    /** The surface alone where its first sound is meant. */
    private String name(SoundName sound) {
        return kit.find(sound.surface()).equals(sound) ? sound.surface() : sound.text();
    }

    /** Options in one line, those with spaces in quotes. */
    static String line(List<String> options) {
        return options.stream()
                .map(option -> option.contains(" ") ? "\"" + option + "\"" : option)
                .collect(Collectors.joining(" "));
    }
}
