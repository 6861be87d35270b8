package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/**
 * Random recipes that can be played: feet, both hands, rests, dynamics, ornaments, paths, single
 * strokes elsewhere, up to three additions, several kits and meters.
 */
public final class RandomRecipes {
    private static final List<Kit> KITS =
            List.of(
                    BuiltInKits.load("five-piece"),
                    BuiltInKits.load("five-piece").forOtherHand(),
                    BuiltInKits.load("extended"),
                    BuiltInKits.load("hand-drums"),
                    BuiltInKits.load("marimba"));
    private static final List<Grid> GRIDS =
            List.of(
                    Grid.SIXTEENTHS,
                    Grid.SIXTEENTHS,
                    Grid.SIXTEENTHS.withSwing(60),
                    Grid.SIXTEENTHS.withMeter(Meter.parse("3/4")).withOverTheBar(true),
                    Grid.SIXTEENTHS.withMeter(Meter.parse("3/4")),
                    Grid.SIXTEENTHS.withMeter(Meter.parse("12/8")).withStepsPerBeat(6));

    private final SplittableRandom random;

    /** Always the same for a seed. */
    public RandomRecipes(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** A recipe of so many strokes whose groove has no conflict and lies on its grid. */
    public Recipe next(int strokes) {
        int additions = random.nextInt(4);
        while (true) {
            Kit kit = one(KITS);
            Sticking sticking = sticking(strokes, kit);
            Recipe recipe =
                    new Recipe(
                            sticking,
                            kit,
                            voicing(sticking, kit, additions),
                            one(GRIDS),
                            OptionalInt.empty());
            Groove groove = recipe.weave();
            if (groove.conflicts().isEmpty() && !groove.hits().isEmpty() && isOwn(recipe)) {
                return recipe.withBars(OptionalInt.of(groove.bars()));
            }
        }
    }

    /**
     * Whether each layer has its limb and its sound to itself. Woven without layers, for a layer's
     * hit takes the place of a softer one by its limb.
     */
    static boolean isOwn(Recipe recipe) {
        Groove bare = recipe.with(recipe.voicing().withLayers(List.of())).weave();
        return recipe.voicing().layers().stream()
                .allMatch(layer -> bare.hits().stream().noneMatch(hit -> meets(hit, layer)));
    }

    private static boolean meets(Hit hit, Layer layer) {
        return hit.sound().equals(layer.sound())
                || hit.limb() == layer.limb()
                || (hit.ornament().graceNotes() > 0 && hit.limb().opposite() == layer.limb());
    }

    private Sticking sticking(int strokes, Kit kit) {
        List<Letter> letters = new ArrayList<>(List.of(Letter.R, Letter.L));
        Map<Letter, LetterVoicing> plain = Voicing.plain(kit).letters();
        for (Letter foot : List.of(Letter.K, Letter.H)) {
            if (plain.containsKey(foot) && random.nextBoolean()) {
                letters.add(foot);
            }
        }
        if (random.nextInt(3) == 0) {
            letters.add(Letter.B);
        }
        List<Stroke> all = new ArrayList<>();
        for (int i = 0; i < strokes; i++) {
            Letter letter = random.nextInt(3) == 0 ? one(letters) : letters.get(i % 2);
            Dynamic dynamic = one(List.of(Dynamic.PLAIN, Dynamic.PLAIN, one(Dynamic.values())));
            Ornament ornament =
                    letter.isOneHand() && random.nextInt(12) == 0
                            ? one(Ornament.values())
                            : Ornament.NONE;
            all.add(random.nextInt(10) == 0 ? Stroke.REST : Stroke.of(letter, dynamic, ornament));
        }
        return new Sticking(all);
    }

    private Voicing voicing(Sticking sticking, Kit kit, int additions) {
        Voicing voicing = Voicing.plain(kit);
        for (Letter letter : voicing.letters().keySet()) {
            voicing = voicing.with(letter, letterVoicing(Voicing.limbOf(letter, kit), kit));
        }
        for (int left = additions, tries = 0; left > 0 && tries < 20; tries++) {
            Voicing more = withAddition(voicing, sticking, kit);
            left -= more.equals(voicing) ? 0 : 1;
            voicing = more;
        }
        TreeMap<Integer, SoundName> elsewhere = new TreeMap<>();
        while (random.nextInt(3) == 0) {
            elsewhere.put(random.nextInt(sticking.size()), one(kit.soundNames()));
        }
        return voicing.withStrokes(elsewhere);
    }

    private LetterVoicing letterVoicing(Limb limb, Kit kit) {
        List<SoundName> sounds = kit.soundsFor(limb);
        return new LetterVoicing(
                limb,
                some(sounds),
                random.nextInt(3) == 0 ? some(sounds) : List.of(),
                random.nextInt(3) == 0 ? some(sounds) : List.of(),
                List.of(),
                false);
    }

    /** With one addition more, or the same where it came to nothing. */
    private Voicing withAddition(Voicing voicing, Sticking sticking, Kit kit) {
        Letter letter = one(List.copyOf(sticking.letters()));
        if (voicing.letter(letter).isEmpty()) {
            return voicing;
        }
        LetterVoicing before = voicing.letter(letter).orElseThrow();
        Limb limb = one(Limb.values());
        List<SoundName> sounds = kit.soundsFor(limb);
        if (sounds.isEmpty() || limb == before.limb() || letter == Letter.B) {
            return voicing;
        }
        return switch (random.nextInt(5)) {
            case 0 ->
                    before.doublings().isEmpty()
                            ? voicing.with(letter, letterVoicing(limb, kit))
                            : voicing;
            case 1 ->
                    voicing.with(
                            letter,
                            before.withDoublings(
                                    List.of(
                                            new Doubling(
                                                    limb, one(sounds), random.nextBoolean()))));
            case 2 ->
                    before.doublings().isEmpty()
                            ? voicing.with(letter, before.withTacet(true))
                            : voicing;
            case 3 ->
                    voicing.with(
                            Letter.B,
                            LetterVoicing.on(
                                    Limb.RIGHT_HAND, some(kit.soundsFor(Limb.RIGHT_HAND))));
            default -> {
                List<Layer> layers = new ArrayList<>(voicing.layers());
                layer(kit).ifPresent(layers::add);
                yield voicing.withLayers(layers);
            }
        };
    }

    private Optional<Layer> layer(Kit kit) {
        Limb limb = one(Limb.values());
        List<SoundName> sounds = kit.soundsFor(limb);
        String figure = one(List.of("x", "- x", "x - - x - -", ">x x (x)", "- - x - >x"));
        return sounds.isEmpty()
                ? Optional.empty()
                : Optional.of(new Layer(limb, one(sounds), 2, Figure.parse(figure)));
    }

    private List<SoundName> some(List<SoundName> sounds) {
        List<SoundName> some = new ArrayList<>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            some.add(one(sounds));
        }
        return some;
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    private <T> T one(T[] all) {
        return all[random.nextInt(all.length)];
    }
}
