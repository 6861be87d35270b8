package org.kitweft.groove;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Notehead;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;

/**
 * A voicing for each role from one voicing for time: a first proposal that a teacher edits. Common
 * practice, no source: a fill travels over the drums, a punch leaves one hand with the bass drum.
 */
public final class RoleVoicings {
    private static final int DRUMS_OF_A_FILL = 4;

    private RoleVoicings() {}

    /**
     * The hands travel over the kit's drums (its sounds with an oval notehead) in the kit's order,
     * four at most; layers of the hands fall silent, those of the feet go on.
     */
    public static Voicing fill(Voicing time, Kit kit) {
        Voicing fill = withoutHandLayers(time).withStrokes(new TreeMap<>());
        for (Letter letter : List.of(Letter.R, Letter.L)) {
            Optional<LetterVoicing> voiced = time.letter(letter);
            if (voiced.isPresent()) {
                List<SoundName> drums =
                        drums(kit, voiced.get().limb()).stream().limit(DRUMS_OF_A_FILL).toList();
                LetterVoicing there = voiced.get().withAccents(List.of()).withGhosts(List.of());
                fill = fill.with(letter, drums.isEmpty() ? there : there.withPath(drums));
            }
        }
        return fill;
    }

    /**
     * The left hand is tacet and the right hand plays its strokes on a crash cymbal, if the kit has
     * one, with the bass drum, if a foot can strike one: what stays is a syncopated figure.
     */
    public static Voicing punch(Voicing time, Kit kit) {
        Voicing punch = withoutHandLayers(time).withStrokes(new TreeMap<>());
        Optional<LetterVoicing> left = time.letter(Letter.L);
        if (left.isPresent()) {
            punch = punch.with(Letter.L, left.get().withTacet(true));
        }
        Optional<LetterVoicing> right = time.letter(Letter.R);
        if (right.isEmpty()) {
            return punch;
        }
        LetterVoicing struck =
                right.get()
                        .withTacet(false)
                        .withAccents(List.of())
                        .withGhosts(List.of())
                        .withDoublings(List.of());
        Limb hand = struck.limb();
        Optional<SoundName> crash =
                kit.soundsFor(hand).stream()
                        .filter(sound -> sound.surface().startsWith("crash"))
                        .findFirst();
        if (crash.isPresent()) {
            struck = struck.withPath(List.of(crash.get()));
        }
        Limb kick = Voicing.limbOf(Letter.K, kit);
        Optional<SoundName> bassDrum = kit.soundsFor(kick).stream().findFirst();
        if (bassDrum.isPresent() && hand != kick) {
            struck = struck.withDoublings(List.of(new Doubling(kick, bassDrum.get(), false)));
        }
        return punch.with(Letter.R, struck);
    }

    private static Voicing withoutHandLayers(Voicing voicing) {
        return voicing.withLayers(
                voicing.layers().stream().filter(layer -> !layer.limb().isHand()).toList());
    }

    private static List<SoundName> drums(Kit kit, Limb limb) {
        return kit.surfaces().stream()
                .filter(surface -> first(surface).notehead() == Notehead.NORMAL)
                .map(surface -> surface.nameOf(first(surface)))
                .filter(sound -> kit.canStrike(limb, sound))
                .toList();
    }

    private static Sound first(Surface surface) {
        return surface.sounds().get(0);
    }
}
