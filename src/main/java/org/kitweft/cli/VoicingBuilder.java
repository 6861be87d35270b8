package org.kitweft.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;
import org.kitweft.pattern.TextFormatException;

/**
 * Builds a voicing from the texts of options, on the plainest voicing of the kit. Refuses at once
 * what a limb cannot strike; each refusal begins with the option as it was typed.
 */
final class VoicingBuilder {
    private static final Pattern BY = Pattern.compile("(.+?)\\s+by\\s+(\\S+)\\s*");
    private static final Pattern LAYER = Pattern.compile("([^@:]+)(?:@([^:]*))?:(.*)");

    private final Sticking sticking;
    private final Kit kit;
    private final Grid grid;
    private Voicing voicing;

    VoicingBuilder(Sticking sticking, Kit kit, Grid grid) {
        this.sticking = sticking;
        this.kit = kit;
        this.grid = grid;
        this.voicing = Voicing.plain(kit);
    }

    Voicing voicing() {
        return voicing;
    }

    void limb(String option, String text) {
        Assignment assigned =
                Assignment.parse(option, text, "a letter and a limb, as in R=right-foot");
        Limb limb = limbOf(option, assigned.value());
        in(option, () -> voicing = voicing.handedOver(assigned.letter(), limb, kit));
    }

    void on(String option, String text) {
        Letter letter = letterOf(option, text);
        List<SoundName> path = sounds(option, text, letter);
        Limb limb =
                voicing.letter(letter).map(LetterVoicing::limb).orElse(Voicing.limbOf(letter, kit));
        voicing =
                voicing.with(
                        letter,
                        voicing.letter(letter)
                                .map(v -> v.withPath(path))
                                .orElse(LetterVoicing.on(limb, path)));
    }

    void accents(String option, String text) {
        Letter letter = letterOf(option, text);
        LetterVoicing before = voiced(option, letter);
        voicing = voicing.with(letter, before.withAccents(sounds(option, text, letter)));
    }

    void ghosts(String option, String text) {
        Letter letter = letterOf(option, text);
        LetterVoicing before = voiced(option, letter);
        voicing = voicing.with(letter, before.withGhosts(sounds(option, text, letter)));
    }

    void tacet(String option, String text) {
        Letter letter = Assignment.letter(option, text.strip(), "a letter, as in L");
        LetterVoicing before =
                voicing.letter(letter)
                        .orElse(
                                LetterVoicing.on(
                                        Voicing.limbOf(letter, kit),
                                        List.of(kit.soundNames().get(0))));
        voicing = voicing.with(letter, before.withTacet(true));
    }

    void doubling(String option, String text, boolean accentsOnly) {
        Assignment assigned =
                Assignment.parse(option, text, "a letter and a sound, as in R=bass-drum");
        LetterVoicing before = voiced(option, assigned.letter());
        Struck struck = struck(option, assigned.value(), before.limb());
        List<Doubling> more = new ArrayList<>(before.doublings());
        in(
                option,
                () -> {
                    more.add(new Doubling(struck.limb(), struck.sound(), accentsOnly));
                    voicing = voicing.with(assigned.letter(), before.withDoublings(more));
                });
    }

    void stroke(String option, String text) {
        int equals = text.indexOf('=');
        int number = equals < 0 ? 0 : number(option, text.substring(0, equals));
        if (equals < 0) {
            throw new InputException(option + ": expected a number and a sound, as in 5=crash");
        }
        if (number < 1 || number > sticking.size()) {
            throw new InputException(
                    "%s: the sticking has strokes 1 to %d".formatted(option, sticking.size()));
        }
        Optional<Stroke.Struck> stroke = sticking.strokes().get(number - 1).struck();
        if (stroke.isEmpty()) {
            throw new InputException("%s: stroke %d is a rest".formatted(option, number));
        }
        SoundName sound = sound(option, text.substring(equals + 1));
        checkCanStrike(option, stroke.get().letter(), sound);
        voicing = voicing.withStroke(number - 1, sound);
    }

    void layer(String option, String text) {
        Matcher matcher = LAYER.matcher(text);
        if (!matcher.matches()) {
            throw new InputException(
                    option
                            + ": expected a sound, its steps a beat and a figure, as in \"hi-hat.foot@2: - x - x\"");
        }
        int steps =
                matcher.group(2) == null ? grid.stepsPerBeat() : number(option, matcher.group(2));
        Figure figure = Figure.parse(matcher.group(3).strip());
        Struck struck = struck(option, matcher.group(1), null);
        in(
                option,
                () -> {
                    List<Layer> layers = new ArrayList<>(voicing.layers());
                    layers.add(new Layer(struck.limb(), struck.sound(), steps, figure));
                    voicing = voicing.withLayers(layers);
                });
    }

    private record Struck(Limb limb, SoundName sound) {}

    /**
     * A sound and, after {@code by}, its limb; else a free one that can, other than {@code not}.
     */
    private Struck struck(String option, String text, @Nullable Limb not) {
        Matcher by = BY.matcher(text);
        if (by.matches()) {
            SoundName sound = sound(option, by.group(1));
            Limb limb = limbOf(option, by.group(2));
            Reach.check(option, limb, sound, kit, "");
            return new Struck(limb, sound);
        }
        SoundName sound = sound(option, text);
        Limb free = voicing.limbFor(sound, sticking, kit);
        Limb limb =
                free != not
                        ? free
                        : kit.sound(sound).limbs().stream()
                                .filter(other -> other != not)
                                .findFirst()
                                .orElse(free);
        return new Struck(limb, sound);
    }

    private static Letter letterOf(String option, String text) {
        return Assignment.parse(option, text, "a letter and its sounds, as in R=ride").letter();
    }

    private List<SoundName> sounds(String option, String text, Letter letter) {
        List<SoundName> sounds = new ArrayList<>();
        String names = text.substring(text.indexOf('=') + 1);
        for (String name : names.split(",", -1)) {
            SoundName sound = sound(option, name);
            checkCanStrike(option, letter, sound);
            sounds.add(sound);
        }
        return sounds;
    }

    private SoundName sound(String option, String name) {
        if (name.isBlank()) {
            throw new InputException(option + ": a sound is missing, as in snare or ride.bell");
        }
        try {
            return kit.find(name.strip());
        } catch (IllegalArgumentException e) {
            throw new InputException(option + ": " + e.getMessage(), e);
        }
    }

    private LetterVoicing voiced(String option, Letter letter) {
        return voicing.letter(letter)
                .orElseThrow(
                        () ->
                                new InputException(
                                        "%1$s: say first what %2$s strikes, as in --on %2$s=%3$s"
                                                .formatted(
                                                        option, letter, kit.soundNames().get(0))));
    }

    private void checkCanStrike(String option, Letter letter, SoundName sound) {
        Limb limb =
                voicing.letter(letter).map(LetterVoicing::limb).orElse(Voicing.limbOf(letter, kit));
        Reach.check(option, limb, sound, kit, "; hand it over with --limb " + letter + "=%s");
        if (letter == Letter.B && limb.isHand()) {
            Reach.check(option, limb.opposite(), sound, kit, "");
        }
    }

    private static Limb limbOf(String option, String id) {
        return Limb.of(id.strip())
                .orElseThrow(
                        () ->
                                new InputException(
                                        "%s: found \"%s\", expected right-hand, left-hand, right-foot or left-foot"
                                                .formatted(option, id.strip())));
    }

    private static int number(String option, String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            throw new InputException(
                    "%s: found \"%s\", expected a number".formatted(option, text.strip()), e);
        }
    }

    private static void in(String option, Runnable change) {
        try {
            change.run();
        } catch (TextFormatException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new InputException(option + ": " + e.getMessage(), e);
        }
    }
}
