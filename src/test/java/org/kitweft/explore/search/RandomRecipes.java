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
import org.kitweft.groove.HitSource;
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
final class RandomRecipes {
    private static final List<Kit> KITS =
            List.of(
                    BuiltInKits.load("five-piece"),
                    BuiltInKits.load("five-piece").mirrored(),
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

    RandomRecipes(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** A recipe of so many strokes whose groove has no conflict and lies on its grid. */
    Recipe next(int strokes) {
        while (true) {
            Kit kit = one(KITS);
            Recipe recipe =
                    new Recipe(
                            sticking(strokes, kit),
                            kit,
                            voicing(strokes, kit),
                            one(GRIDS),
                            OptionalInt.empty());
            Groove groove = recipe.weave();
            if (groove.conflicts().isEmpty() && !groove.hits().isEmpty() && isOwn(groove)) {
                return recipe.withBars(OptionalInt.of(groove.bars()));
            }
        }
    }

    /** Whether each layer has its limb and its sound to itself. */
    static boolean isOwn(Groove groove) {
        return groove.voicing().layers().stream()
                .allMatch(
                        layer ->
                                groove.hits().stream()
                                        .filter(hit -> hit.source() != HitSource.LAYER)
                                        .noneMatch(
                                                hit ->
                                                        hit.sound().equals(layer.sound())
                                                                || hit.limb() == layer.limb()
                                                                || (hit.ornament().graceNotes() > 0
                                                                        && hit.limb().opposite()
                                                                                == layer.limb())));
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

    private Voicing voicing(int strokes, Kit kit) {
        int additions = random.nextInt(4);
        Voicing voicing = Voicing.plain(kit);
        for (Letter letter : List.of(Letter.R, Letter.L, Letter.K, Letter.H)) {
            Limb limb = Voicing.limbOf(letter, kit);
            if (additions > 0 && random.nextInt(6) == 0) {
                limb = one(Limb.values());
                additions--;
            }
            List<SoundName> sounds = kit.soundsFor(limb);
            if (sounds.isEmpty()) {
                continue;
            }
            List<Doubling> doublings = new ArrayList<>();
            boolean tacet = false;
            if (additions > 0 && random.nextInt(6) == 0) {
                Limb other = one(Limb.values());
                List<SoundName> others = kit.soundsFor(other);
                if (other != limb && !others.isEmpty()) {
                    doublings.add(new Doubling(other, one(others), random.nextBoolean()));
                    additions--;
                }
            } else if (additions > 0 && random.nextInt(12) == 0) {
                tacet = true;
                additions--;
            }
            voicing =
                    voicing.with(
                            letter,
                            new LetterVoicing(
                                    limb,
                                    some(sounds),
                                    random.nextInt(3) == 0 ? some(sounds) : List.of(),
                                    random.nextInt(3) == 0 ? some(sounds) : List.of(),
                                    doublings,
                                    tacet));
        }
        if (additions > 0 && random.nextInt(8) == 0) {
            List<SoundName> sounds = kit.soundsFor(Limb.RIGHT_HAND);
            voicing = voicing.with(Letter.B, LetterVoicing.on(Limb.RIGHT_HAND, some(sounds)));
            additions--;
        }
        List<Layer> layers = new ArrayList<>();
        while (additions > 0 && random.nextInt(3) == 0) {
            layer(kit).ifPresent(layers::add);
            additions--;
        }
        TreeMap<Integer, SoundName> elsewhere = new TreeMap<>();
        while (random.nextInt(3) == 0) {
            elsewhere.put(random.nextInt(strokes), one(kit.soundNames()));
        }
        return voicing.withLayers(layers).withStrokes(elsewhere);
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
