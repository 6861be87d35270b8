package org.kitweft.lesson;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/**
 * Reads the voicing of a lesson's item. A full name of a sound is taken as it stands, on the kit or
 * not: what the kit lacks shows as a conflict, not as a lost lesson.
 */
final class VoicingReader {
    private final Kit kit;

    VoicingReader(Kit kit) {
        this.kit = kit;
    }

    Voicing voicing(Field voicing) {
        Map<Letter, LetterVoicing> letters = new EnumMap<>(Letter.class);
        for (Field letter : voicing.object().at("letters").fields()) {
            letters.put(letter(letter), letterVoicing(letter));
        }
        SortedMap<Integer, SoundName> strokes = new TreeMap<>();
        if (voicing.at("strokes").isPresent()) {
            for (Field stroke : voicing.at("strokes").fields()) {
                strokes.put(index(stroke), sound(stroke));
            }
        }
        List<Layer> layers = optional(voicing.at("layers"), "layer", this::layer);
        return voicing.checked(() -> new Voicing(letters, strokes, layers));
    }

    private static Letter letter(Field field) {
        for (Letter letter : Letter.values()) {
            if (letter.name().equals(field.name())) {
                return letter;
            }
        }
        throw field.fault("unknown letter, expected R, L, K, H or B");
    }

    private LetterVoicing letterVoicing(Field letter) {
        Limb limb = limb(letter.object().at("limb"));
        List<SoundName> path = letter.at("path").list("path").stream().map(this::sound).toList();
        List<SoundName> accents = optional(letter.at("accents"), "accents", this::sound);
        List<SoundName> ghosts = optional(letter.at("ghosts"), "ghosts", this::sound);
        List<Doubling> doublings = optional(letter.at("doublings"), "doubling", this::doubling);
        boolean tacet = letter.at("tacet").bool();
        return letter.checked(
                () -> new LetterVoicing(limb, path, accents, ghosts, doublings, tacet));
    }

    private Doubling doubling(Field doubling) {
        return new Doubling(
                limb(doubling.object().at("limb")),
                sound(doubling.at("sound")),
                doubling.at("accentsOnly").bool());
    }

    private Layer layer(Field layer) {
        Limb limb = limb(layer.object().at("limb"));
        SoundName sound = sound(layer.at("sound"));
        Field figure = layer.at("figure");
        return layer.checked(
                () ->
                        new Layer(
                                limb,
                                sound,
                                layer.at("steps").whole(),
                                figure.checked(() -> Figure.parse(figure.text()))));
    }

    private static <T> List<T> optional(Field list, String each, Function<Field, T> read) {
        return list.isPresent() ? list.list(each).stream().map(read).toList() : List.of();
    }

    private static Limb limb(Field limb) {
        return Limb.of(limb.text())
                .orElseThrow(
                        () ->
                                limb.expected(
                                        "a limb: right-hand, left-hand, right-foot or left-foot"));
    }

    private SoundName sound(Field sound) {
        String text = sound.text();
        int dot = text.indexOf('.');
        return sound.checked(
                () ->
                        dot < 0
                                ? kit.find(text)
                                : new SoundName(text.substring(0, dot), text.substring(dot + 1)));
    }

    private static int index(Field stroke) {
        try {
            return Math.subtractExact(Integer.parseInt(stroke.name()), 1);
        } catch (NumberFormatException | ArithmeticException e) {
            throw stroke.fault("expected the number of a stroke, counted from 1");
        }
    }
}
