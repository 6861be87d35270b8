package org.kitweft.ui.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Stroke;

/** What can be done to the way a letter is played: from one recipe to the next. */
public final class VoicingEdits {
    private VoicingEdits() {}

    /**
     * The limb that plays a letter once it is placed on a surface: its own if that can strike
     * there, else the other of its kind, else any that can.
     */
    public static Limb limbOn(Recipe recipe, Letter letter, Surface surface) {
        Limb own = limb(recipe, letter);
        return Stream.concat(Stream.of(own, own.opposite()), surface.limbs().stream().sorted())
                .filter(limb -> surface.limbs().contains(limb))
                .findFirst()
                .orElseThrow();
    }

    /** The first sound of a surface that a limb can strike. */
    public static SoundName firstSound(Surface surface, Limb limb) {
        return soundsOf(surface, limb).get(0);
    }

    /** The sounds of a surface that a limb can strike, at least one if it reaches the surface. */
    public static List<SoundName> soundsOf(Surface surface, Limb limb) {
        return surface.sounds().stream()
                .filter(sound -> sound.limbs().contains(limb))
                .map(surface::nameOf)
                .toList();
    }

    /** Places a letter on a surface, see {@link #limbOn}. */
    public static Recipe place(
            Recipe recipe, Letter letter, Surface surface, Target target, boolean add) {
        Limb limb = limbOn(recipe, letter, surface);
        return place(recipe, letter, limb, firstSound(surface, limb), target, add);
    }

    /**
     * Places a letter on a sound. Single strokes that go elsewhere stay there, unless they are all
     * that the letter has: then it would be heard nowhere.
     *
     * @param limb who plays the letter from now on
     * @param add whether the sound joins those the letter takes in turn; else it stands alone
     */
    public static Recipe place(
            Recipe recipe, Letter letter, Limb limb, SoundName sound, Target target, boolean add) {
        Kit kit = recipe.kit();
        Voicing voicing = recipe.voicing();
        if (limb != limb(recipe, letter)) {
            voicing = voicing.handedOver(letter, limb, kit);
        }
        LetterVoicing before =
                voicing.letter(letter).orElse(LetterVoicing.on(limb, List.of(sound)));
        List<SoundName> sounds = new ArrayList<>(add ? target.sounds(before) : List.of());
        boolean handedOver = limb != limb(recipe, letter);
        if (handedOver && target == Target.ALL) {
            sounds.clear();
        }
        sounds.add(sound);
        return recipe.with(
                withoutStrokesOf(letter, recipe)
                        .with(letter, target.with(before, sounds).withTacet(false)));
    }

    /** The voicing without single strokes of a letter, where all its strokes are such. */
    private static Voicing withoutStrokesOf(Letter letter, Recipe recipe) {
        SortedMap<Integer, SoundName> others = new TreeMap<>(recipe.voicing().strokes());
        List<Stroke> strokes = recipe.sticking().strokes();
        for (int i = 0; i < strokes.size(); i++) {
            boolean own = strokes.get(i).struck().filter(s -> s.letter() == letter).isPresent();
            if (own && others.remove(i) == null) {
                return recipe.voicing();
            }
        }
        return recipe.voicing().withStrokes(others);
    }

    /** Takes one place of a path away; the last one stays. */
    public static Recipe removeTurn(Recipe recipe, Letter letter, Target target, int turn) {
        Optional<LetterVoicing> voiced = recipe.voicing().letter(letter);
        if (voiced.isEmpty()) {
            return recipe;
        }
        List<SoundName> sounds = new ArrayList<>(target.sounds(voiced.get()));
        if (turn >= sounds.size() || (target == Target.ALL && sounds.size() == 1)) {
            return recipe;
        }
        sounds.remove(turn);
        return recipe.with(recipe.voicing().with(letter, target.with(voiced.get(), sounds)));
    }

    /** Exchanges one place of a path for another sound. */
    public static Recipe replaceTurn(
            Recipe recipe, Letter letter, Target target, int turn, SoundName sound) {
        Optional<LetterVoicing> voiced = recipe.voicing().letter(letter);
        if (voiced.isEmpty() || turn >= target.sounds(voiced.get()).size()) {
            return recipe;
        }
        List<SoundName> sounds = new ArrayList<>(target.sounds(voiced.get()));
        sounds.set(turn, sound);
        return recipe.with(recipe.voicing().with(letter, target.with(voiced.get(), sounds)));
    }

    /** The next sound of the same surface that the letter's limb can strike, from each place. */
    public static Recipe nextSound(Recipe recipe, Letter letter, Target target) {
        Optional<LetterVoicing> voiced = recipe.voicing().letter(letter);
        if (voiced.isEmpty()) {
            return recipe;
        }
        List<SoundName> sounds =
                target.sounds(voiced.get()).stream()
                        .map(sound -> next(recipe.kit(), voiced.get().limb(), sound))
                        .toList();
        return recipe.with(recipe.voicing().with(letter, target.with(voiced.get(), sounds)));
    }

    private static SoundName next(Kit kit, Limb limb, SoundName sound) {
        Surface surface = kit.surfaceOf(sound);
        List<Sound> sounds = surface.sounds();
        int at = sounds.indexOf(kit.sound(sound));
        for (int i = 1; i <= sounds.size(); i++) {
            Sound candidate = sounds.get((at + i) % sounds.size());
            if (candidate.limbs().contains(limb)) {
                return surface.nameOf(candidate);
            }
        }
        return sound;
    }

    /** Makes a letter silent, or lets it sound again. */
    public static Recipe toggleTacet(Recipe recipe, Letter letter) {
        return recipe.voicing()
                .letter(letter)
                .map(v -> recipe.with(recipe.voicing().with(letter, v.withTacet(!v.tacet()))))
                .orElse(recipe);
    }

    /**
     * Hands a letter over to another limb; if that one finds none of its sounds, it takes its first
     * own.
     *
     * @throws IllegalArgumentException if the kit has nothing for the limb
     */
    public static Recipe handOver(Recipe recipe, Letter letter, Limb limb) {
        return recipe.with(recipe.voicing().handedOver(letter, limb, recipe.kit()));
    }

    /** The next limb that finds something to strike on the kit, in the order of limbs. */
    public static Limb nextLimb(Recipe recipe, Letter letter) {
        Limb[] limbs = Limb.values();
        Limb limb = limb(recipe, letter);
        for (int i = 1; i < limbs.length; i++) {
            Limb candidate = limbs[(limb.ordinal() + i) % limbs.length];
            if (!recipe.kit().soundsFor(candidate).isEmpty()) {
                return candidate;
            }
        }
        return limb;
    }

    /** Who plays a letter. */
    public static Limb limb(Recipe recipe, Letter letter) {
        return recipe.voicing()
                .letter(letter)
                .map(LetterVoicing::limb)
                .orElse(Voicing.limbOf(letter, recipe.kit()));
    }
}
