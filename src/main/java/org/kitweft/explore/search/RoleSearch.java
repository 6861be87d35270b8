package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.explore.role.RoleFit;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.SoundName;

/**
 * From a role and a kit to stickings and voicings that serve it.
 *
 * <p>Hill climbing from random recipes, one small edit at a time: a stroke, a path, the place of
 * accents, a foot that doubles a letter. Grooves with conflicts are passed over, and of grooves
 * that are nearly alike only the best is told. The same wish, tries and seed always give the same
 * recipes; it finds good ones, not surely the best.
 */
public final class RoleSearch {
    private static final int TRIES_A_CLIMB = 400;
    private static final int SHOW_EVERY = 50;
    private static final int KEPT_AT_LEAST = 4000;

    private static final double LEAST_PART_APART = 0.5;

    /** A point of difficulty a bar outweighs so much of a score: only equals are told apart. */
    private static final double EASE = 1e-6;

    private final RoleWish wish;
    private final RecipeEdits edits;
    private final Map<List<Hit>, Rated> seen = new HashMap<>();

    private record Rated(Serving serving, List<Hit> hits, double value) {}

    private RoleSearch(RoleWish wish, long seed) {
        this.wish = wish;
        this.edits = new RecipeEdits(wish, new SplittableRandom(seed));
    }

    /**
     * Searches.
     *
     * @param most how many recipes to return, at least 1; of any two, at least {@value
     *     #LEAST_PART_APART} of what they strike is not struck by both
     * @param tries how many recipes to look at, at least 1
     * @param seed of the randomness
     * @param watch is shown progress, and may stop the search
     * @return the best first, fewer if not so many were found
     */
    public static List<Serving> search(
            RoleWish wish, int most, int tries, long seed, SearchWatch watch) {
        if (most < 1 || tries < 1) {
            throw new IllegalArgumentException(
                    "%d recipes of %d tries: expected at least 1 of each".formatted(most, tries));
        }
        RoleSearch search = new RoleSearch(wish, seed);
        search.climb(tries, most, watch);
        return search.unlike(most);
    }

    /** The best, each unlike all before it. */
    private List<Serving> unlike(int most) {
        List<Serving> told = new ArrayList<>();
        List<Set<Struck>> grooves = new ArrayList<>();
        for (Rated rated : best(Integer.MAX_VALUE).toList()) {
            Set<Struck> struck = Struck.of(rated.hits);
            if (grooves.stream().allMatch(other -> Struck.apart(struck, other))) {
                told.add(
                        new Serving(
                                BriefVoicing.of(rated.serving.recipe()),
                                rated.serving.fit(),
                                rated.serving.difficulty()));
                grooves.add(struck);
            }
            if (told.size() == most) {
                break;
            }
        }
        return told;
    }

    /** A sound at a time, however it is struck. */
    private record Struck(long written, SoundName sound) {
        static Set<Struck> of(List<Hit> hits) {
            Set<Struck> all = new HashSet<>();
            hits.forEach(hit -> all.add(new Struck(hit.written(), hit.sound())));
            return all;
        }

        static boolean apart(Set<Struck> one, Set<Struck> other) {
            long common = one.stream().filter(other::contains).count();
            long all = one.size() + other.size() - common;
            return all - common >= LEAST_PART_APART * all;
        }
    }

    private Stream<Rated> best(int most) {
        return seen.values().stream()
                .sorted(
                        Comparator.comparingDouble(Rated::value)
                                .reversed()
                                .thenComparing(RoleSearch::text))
                .limit(most);
    }

    /** Keeps memory small however long the search runs. */
    private void forgetTheWorst(int most) {
        if (seen.size() > Math.max(2 * most, KEPT_AT_LEAST)) {
            List<Rated> best = best(Math.max(most, KEPT_AT_LEAST / 2)).toList();
            seen.values().retainAll(Set.copyOf(best));
        }
    }

    /** Only so that equals have an order that does not depend on hashing. */
    private static String text(Rated rated) {
        return rated.serving().recipe().sticking() + " " + rated.serving().recipe().voicing();
    }

    private void climb(int tries, int most, SearchWatch watch) {
        Optional<Rated> now = Optional.empty();
        for (int done = 0; done < tries && !watch.isCancelled(); done++) {
            if (done % TRIES_A_CLIMB == 0) {
                forgetTheWorst(most);
                now = Optional.empty();
            }
            Recipe next =
                    now.map(rated -> edits.edited(rated.serving.recipe())).orElseGet(edits::random);
            Optional<Rated> rated = rate(next);
            if (rated.isPresent() && (now.isEmpty() || rated.get().value >= now.get().value)) {
                now = rated;
            }
            if ((done + 1) % SHOW_EVERY == 0 || done + 1 == tries) {
                watch.progress(done + 1, tries);
            }
        }
    }

    private Optional<Rated> rate(Recipe recipe) {
        Groove groove = recipe.weave();
        if (!groove.conflicts().isEmpty() || groove.hits().isEmpty()) {
            return Optional.empty();
        }
        RoleFit fit = RoleFit.of(groove, wish.weights());
        Difficulty difficulty = Difficulty.of(groove);
        double value = fit.of(wish.role()).value() - EASE * difficulty.points();
        Rated rated = new Rated(new Serving(recipe, fit, difficulty), groove.hits(), value);
        return Optional.of(seen.merge(groove.hits(), rated, (one, other) -> one));
    }
}
