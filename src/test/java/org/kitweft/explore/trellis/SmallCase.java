package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Grid;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Notehead;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.StaffPlace;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/**
 * A case small enough to list all its variations: a random kit, sticking, voicing, grid and
 * choices.
 */
record SmallCase(Recipe recipe, Choices choices) {
    private static final int MOST_VARIATIONS = 400;

    static SmallCase random(SplittableRandom random) {
        while (true) {
            Kit kit = kit(random);
            Sticking sticking = sticking(random);
            Choices choices = choices(random, kit, sticking);
            double variations = 1;
            for (Stroke.Struck stroke : sticking.struck()) {
                variations *= choices.of(stroke.letter()).size();
            }
            if (variations <= MOST_VARIATIONS) {
                Recipe recipe =
                        new Recipe(
                                sticking,
                                kit,
                                voicing(random, kit),
                                grid(random),
                                OptionalInt.empty());
                return new SmallCase(recipe, choices);
            }
        }
    }

    /** Up to five surfaces in any place, some with two sounds; every limb can strike each. */
    private static Kit kit(SplittableRandom random) {
        Set<Limb> limbs = EnumSet.allOf(Limb.class);
        List<Surface> surfaces = new ArrayList<>();
        int count = random.nextInt(1, 6);
        for (int i = 0; i < count; i++) {
            List<Sound> sounds =
                    IntStream.rangeClosed(0, random.nextInt(2))
                            .mapToObj(
                                    s ->
                                            new Sound(
                                                    "s" + s,
                                                    10,
                                                    OptionalInt.empty(),
                                                    38,
                                                    StaffPlace.parse("C5"),
                                                    Notehead.NORMAL,
                                                    limbs,
                                                    Set.of()))
                            .toList();
            surfaces.add(
                    new Surface(
                            "drum-" + i,
                            "Drum " + i,
                            random.nextInt(-6, 7) * 10,
                            random.nextInt(0, 6) * 10,
                            70,
                            random.nextInt(10, 50),
                            limbs,
                            sounds));
        }
        return new Kit("random", random.nextBoolean(), surfaces);
    }

    /** One to seven strokes; feet, both hands and rests are rarer than hands. */
    private static Sticking sticking(SplittableRandom random) {
        String letters = random.nextBoolean() ? "RL" : "RLRLRLKHB--";
        return new Sticking(
                IntStream.range(0, random.nextInt(1, 8))
                        .mapToObj(i -> letters.charAt(random.nextInt(letters.length())))
                        .map(
                                c ->
                                        Letter.of(c)
                                                .map(
                                                        v ->
                                                                Stroke.of(
                                                                        v,
                                                                        Dynamic.PLAIN,
                                                                        Ornament.NONE))
                                                .orElse(Stroke.REST))
                        .toList());
    }

    private static Choices choices(SplittableRandom random, Kit kit, Sticking sticking) {
        Map<Letter, List<SoundName>> sounds = new EnumMap<>(Letter.class);
        for (Letter letter : sticking.letters()) {
            List<SoundName> all = new ArrayList<>(kit.soundNames());
            int count = random.nextInt(1, Math.min(5, all.size()) + 1);
            List<SoundName> own = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                own.add(all.remove(random.nextInt(all.size())));
            }
            sounds.put(letter, own);
        }
        return new Choices(sounds);
    }

    /** Mostly each letter's own limb; at times another, no entry at all, or tacet. */
    private static Voicing voicing(SplittableRandom random, Kit kit) {
        Voicing voicing = new Voicing(Map.of(), new TreeMap<>(), List.of());
        for (Letter letter : Letter.values()) {
            int what = random.nextInt(10);
            Limb limb = what < 2 ? Limb.values()[random.nextInt(4)] : Voicing.limbOf(letter, kit);
            LetterVoicing own = LetterVoicing.on(limb, List.of(kit.soundNames().get(0)));
            if (what < 6) {
                voicing = voicing.with(letter, own.withTacet(what == 5));
            }
        }
        return voicing;
    }

    private static Grid grid(SplittableRandom random) {
        Meter meter = Meter.parse(List.of("4/4", "2/4", "6/8", "3/8").get(random.nextInt(4)));
        return new Grid(
                meter,
                random.nextInt(1, 7),
                random.nextBoolean() ? Grid.STRAIGHT : 67,
                random.nextBoolean());
    }

    /** One rule of each kind, fit to refuse some variations and to leave some. */
    List<Rule> rules(SplittableRandom random) {
        List<Rule> rules = new ArrayList<>();
        List<Integer> struck =
                IntStream.range(0, recipe.sticking().size())
                        .filter(i -> sounds(i))
                        .boxed()
                        .toList();
        if (!struck.isEmpty()) {
            int index = struck.get(random.nextInt(struck.size()));
            Letter letter = recipe.sticking().strokes().get(index).struck().orElseThrow().letter();
            List<SoundName> own = choices.of(letter);
            rules.add(new Rule.Pin(index, own.get(random.nextInt(own.size()))));
            rules.add(new Rule.Allowed(letter, own.subList(0, (own.size() + 1) / 2)));
        }
        rules.add(new Rule.Reach(random.nextInt(0, 9) * 10));
        rules.add(new Rule.AtTempo(new Tempo(random.nextInt(40, 300))));
        rules.add(new Rule.NoCrossing(random.nextInt(0, 3) * 10));
        int least = random.nextInt(1, 4);
        rules.add(new Rule.Surfaces(least, least + random.nextInt(0, 3)));
        rules.add(new Rule.Loop());
        return rules;
    }

    private boolean sounds(int index) {
        return Listing.played(recipe, index) != null;
    }

    @Override
    public String toString() {
        return "%s | %s | %s | %s | %s"
                .formatted(
                        recipe.sticking(),
                        recipe.grid(),
                        recipe.voicing().letters(),
                        choices.sounds(),
                        Arrays.toString(recipe.kit().surfaces().toArray()));
    }
}
