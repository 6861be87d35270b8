package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/** Random recipes for a wish, and random small edits of them. */
final class RecipeEdits {
    private static final int LONGEST_PATH = 4;

    private final RoleWish wish;
    private final List<Letter> letters;
    private final SplittableRandom random;

    RecipeEdits(RoleWish wish, SplittableRandom random) {
        this.wish = wish;
        this.random = random;
        Voicing plain = Voicing.plain(wish.kit());
        this.letters =
                wish.letters().stream()
                        .filter(l -> l == Letter.B || plain.letter(l).isPresent())
                        .toList();
        if (letters.isEmpty()) {
            throw new IllegalArgumentException(
                    "kit \"%s\" has nothing for the letters %s"
                            .formatted(wish.kit().name(), wish.letters()));
        }
    }

    /** A recipe to begin with. */
    Recipe random() {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < wish.strokes(); i++) {
            strokes.add(stroke());
        }
        if (strokes.stream().allMatch(stroke -> stroke.struck().isEmpty())) {
            strokes.set(0, Stroke.of(letters.get(0)));
        }
        Recipe recipe =
                new Recipe(
                        wish.sticking().orElseGet(() -> new Sticking(strokes)),
                        wish.kit(),
                        Voicing.plain(wish.kit()),
                        wish.grid(),
                        OptionalInt.empty());
        for (Letter letter : recipe.voicing().letters().keySet()) {
            recipe = withPath(recipe, letter);
        }
        return recipe;
    }

    /** The recipe with one thing changed. */
    Recipe edited(Recipe recipe) {
        if (wish.sticking().isEmpty() && random.nextInt(2) == 0) {
            return recipe.with(
                    recipe.sticking().with(random.nextInt(recipe.sticking().size()), stroke()));
        }
        Letter letter = one(List.copyOf(recipe.voicing().letters().keySet()));
        return switch (random.nextInt(4)) {
            case 0 -> withPath(recipe, letter);
            case 1 -> withAccents(recipe, letter);
            case 2 -> withDoubling(recipe, letter);
            default -> withOneSound(recipe, letter);
        };
    }

    private Stroke stroke() {
        if (random.nextInt(5) == 0) {
            return Stroke.REST;
        }
        Dynamic dynamic = one(List.of(Dynamic.PLAIN, Dynamic.PLAIN, Dynamic.ACCENT, Dynamic.GHOST));
        return Stroke.of(one(letters), dynamic, Ornament.NONE);
    }

    private Recipe withPath(Recipe recipe, Letter letter) {
        LetterVoicing voiced = voiced(recipe, letter);
        return with(recipe, letter, voiced.withPath(sounds(voiced.limb())));
    }

    private Recipe withOneSound(Recipe recipe, Letter letter) {
        LetterVoicing voiced = voiced(recipe, letter);
        List<SoundName> path = new ArrayList<>(voiced.path());
        path.set(random.nextInt(path.size()), one(recipe.kit().soundsFor(voiced.limb())));
        return with(recipe, letter, voiced.withPath(path));
    }

    private Recipe withAccents(Recipe recipe, Letter letter) {
        LetterVoicing voiced = voiced(recipe, letter);
        boolean clear = random.nextInt(3) == 0;
        return with(recipe, letter, voiced.withAccents(clear ? List.of() : sounds(voiced.limb())));
    }

    private Recipe withDoubling(Recipe recipe, Letter letter) {
        LetterVoicing voiced = voiced(recipe, letter);
        Optional<Limb> foot =
                List.of(Limb.RIGHT_FOOT, Limb.LEFT_FOOT).stream()
                        .filter(limb -> limb != voiced.limb())
                        .filter(limb -> !recipe.kit().soundsFor(limb).isEmpty())
                        .findFirst();
        if (foot.isEmpty() || !voiced.doublings().isEmpty()) {
            return with(recipe, letter, voiced.withDoublings(List.of()));
        }
        Doubling doubling =
                new Doubling(
                        foot.get(), one(recipe.kit().soundsFor(foot.get())), random.nextInt(3) > 0);
        return with(recipe, letter, voiced.withDoublings(List.of(doubling)));
    }

    private static LetterVoicing voiced(Recipe recipe, Letter letter) {
        return recipe.voicing().letter(letter).orElseThrow();
    }

    private static Recipe with(Recipe recipe, Letter letter, LetterVoicing voiced) {
        return recipe.with(recipe.voicing().with(letter, voiced));
    }

    private List<SoundName> sounds(Limb limb) {
        List<SoundName> able = wish.kit().soundsFor(limb);
        List<SoundName> some = new ArrayList<>();
        for (int i = random.nextInt(LONGEST_PATH); i >= 0; i--) {
            some.add(one(able));
        }
        return some;
    }

    private <T> T one(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
