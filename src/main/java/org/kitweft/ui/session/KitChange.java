package org.kitweft.ui.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.kitweft.explore.Choices;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/** Carries a voicing over to another kit: what the other kit has stays, the rest becomes plain. */
final class KitChange {
    private final Kit kit;

    /** Which limb does on the new kit what a limb did on the old one. */
    private final UnaryOperator<Limb> successor;

    private KitChange(Kit kit, UnaryOperator<Limb> successor) {
        this.kit = kit;
        this.successor = successor;
    }

    static Recipe on(Recipe recipe, Kit kit) {
        boolean mirrored = recipe.kit().isMirrored() != kit.isMirrored();
        KitChange change = new KitChange(kit, mirrored ? KitChange::mirroredFoot : limb -> limb);
        return recipe.with(kit).with(change.voicing(recipe.voicing()));
    }

    /** All sections of a phrase on another kit. */
    static PhraseDraft on(PhraseDraft draft, Kit kit) {
        return draft.mapped(section -> section.with(on(section.recipe(), kit)));
    }

    /**
     * As a player of the other hand plays it: kit, hands and feet mirrored, so that it sounds the
     * same and every movement is the other way round; hands alone where the kit stays. Mirrored
     * twice it is the same again.
     */
    static Recipe mirrored(Recipe recipe) {
        Voicing before = recipe.voicing();
        UnaryOperator<Limb> other =
                recipe.kit().canBeMirrored() ? Limb::opposite : KitChange::mirroredHand;
        Map<Letter, LetterVoicing> letters = new EnumMap<>(Letter.class);
        before.letters()
                .forEach(
                        (letter, voiced) ->
                                letters.put(letter.handsSwapped(), mirrored(voiced, other)));
        List<Layer> layers =
                before.layers().stream()
                        .map(
                                layer ->
                                        new Layer(
                                                other.apply(layer.limb()),
                                                layer.sound(),
                                                layer.stepsPerBeat(),
                                                layer.figure()))
                        .toList();
        return recipe.with(recipe.kit().forOtherHand())
                .with(recipe.sticking().handsSwapped())
                .with(new Voicing(letters, before.strokes(), layers));
    }

    private static LetterVoicing mirrored(LetterVoicing voiced, UnaryOperator<Limb> other) {
        return new LetterVoicing(
                other.apply(voiced.limb()),
                voiced.path(),
                voiced.accents(),
                voiced.ghosts(),
                voiced.doublings().stream()
                        .map(
                                doubling ->
                                        new Doubling(
                                                other.apply(doubling.limb()),
                                                doubling.sound(),
                                                doubling.accentsOnly()))
                        .toList(),
                voiced.tacet());
    }

    /** All sections of a phrase as a player of the other hand plays them. */
    static PhraseDraft mirrored(PhraseDraft draft) {
        return draft.mapped(section -> section.with(mirrored(section.recipe())));
    }

    /** What each letter chooses from goes to the other hand's letter. */
    static Choices mirrored(Choices choices) {
        Choices other = Choices.NONE;
        for (Letter letter : choices.letters()) {
            other = other.with(letter.handsSwapped(), choices.of(letter));
        }
        return other;
    }

    /** The pedals change feet when a kit is mirrored; R stays the right hand. */
    private static Limb mirroredFoot(Limb limb) {
        return limb.isHand() ? limb : limb.opposite();
    }

    private static Limb mirroredHand(Limb limb) {
        return limb.isHand() ? limb.opposite() : limb;
    }

    private Voicing voicing(Voicing before) {
        Voicing plain = Voicing.plain(kit);
        Map<Letter, LetterVoicing> letters = new EnumMap<>(Letter.class);
        letters.putAll(plain.letters());
        before.letters()
                .forEach(
                        (letter, voiced) -> {
                            Limb limb = successor.apply(voiced.limb());
                            List<SoundName> path = kept(limb, voiced.path());
                            if (!path.isEmpty()) {
                                letters.put(letter, carried(voiced, limb, path));
                            }
                        });
        SortedMap<Integer, SoundName> strokes = new TreeMap<>(before.strokes());
        strokes.values().removeIf(sound -> !kit.has(sound));
        List<Layer> layers = new ArrayList<>();
        for (Layer layer : before.layers()) {
            Limb limb = successor.apply(layer.limb());
            if (kit.canStrike(limb, layer.sound())) {
                layers.add(new Layer(limb, layer.sound(), layer.stepsPerBeat(), layer.figure()));
            }
        }
        return new Voicing(letters, strokes, layers);
    }

    private LetterVoicing carried(LetterVoicing voiced, Limb limb, List<SoundName> path) {
        List<Doubling> doublings = new ArrayList<>();
        for (Doubling doubling : voiced.doublings()) {
            Limb other = successor.apply(doubling.limb());
            if (kit.canStrike(other, doubling.sound())) {
                doublings.add(new Doubling(other, doubling.sound(), doubling.accentsOnly()));
            }
        }
        return new LetterVoicing(
                limb,
                path,
                kept(limb, voiced.accents()),
                kept(limb, voiced.ghosts()),
                doublings,
                voiced.tacet());
    }

    private List<SoundName> kept(Limb limb, List<SoundName> sounds) {
        Set<SoundName> able = Set.copyOf(kit.soundsFor(limb));
        return sounds.stream().filter(able::contains).toList();
    }
}
