package org.kitweft.explore.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/**
 * Everything there is on a kit of three sounds, woven one by one: what the search finds for each
 * groove has to be what weaving came to, no more and no less.
 */
class ExhaustiveSearchTest {
    private static final Kit KIT =
            KitFile.parse(
                    """
                    {"name": "tiny", "surfaces": [
                      {"id": "hat", "name": "Hat", "x": -40, "y": 50, "z": 80, "diameter": 36,
                       "limbs": ["right-hand", "left-hand"], "sounds": [
                        {"id": "closed", "channel": 10, "key": 42, "place": "G5", "notehead": "x",
                         "stops": ["open"]},
                        {"id": "open", "channel": 10, "key": 46, "place": "G5", "notehead": "x"}]},
                      {"id": "bass", "name": "Bass", "x": 10, "y": 70, "z": 30, "diameter": 56,
                       "limbs": ["right-foot", "left-foot"], "sounds": [
                        {"id": "head", "channel": 10, "key": 36, "place": "F4",
                         "notehead": "normal"}]}]}
                    """,
                    "tiny.json");
    private static final List<Letter> LETTERS = List.of(Letter.R, Letter.L, Letter.K, Letter.H);
    private static final SoundName ANY = KIT.soundNames().get(0);

    private final Map<Target, Set<List<Optional<Letter>>>> woven = new HashMap<>();
    private final Set<List<Optional<Letter>>> stickings = new HashSet<>();

    @Test
    void twoStrokesWithUpToOneAddition() {
        Grid grid = gridOf(2);
        for (Sticking sticking : stickings(2, 2)) {
            stickings.add(StickingSearchTest.letters(sticking));
            plainPlans().forEach(plan -> weaveAll(sticking, grid, plan, List.of()));
            for (Letter letter : LETTERS) {
                plansWithOneAddition(letter)
                        .forEach(plan -> weaveAll(sticking, grid, plan, List.of()));
            }
            Map<Letter, LetterVoicing> both = new HashMap<>(plainPlans().get(0));
            both.put(Letter.B, LetterVoicing.on(Limb.RIGHT_HAND, List.of(ANY)));
            weaveAll(sticking, grid, both, List.of());
            for (Layer layer : layers()) {
                weaveAll(sticking, grid, plainPlans().get(0), List.of(layer));
            }
        }
        assertSearchAgrees(grid, 2, 2, 1);
    }

    @Test
    void threeStrokesWithoutAdditions() {
        Grid grid = gridOf(3);
        for (Sticking sticking : stickings(3, 1)) {
            stickings.add(StickingSearchTest.letters(sticking));
            weaveAll(sticking, grid, plainPlans().get(0), List.of());
        }
        assertSearchAgrees(grid, 3, 1, 0);
    }

    /** Every groove that can be written down, played by something or not. */
    private void assertSearchAgrees(Grid grid, int strokes, int accented, int additions) {
        SearchSpace space = SearchSpace.WHOLE.withMostAdditions(additions);
        int possible = 0;
        for (List<List<Strike>> steps : allSteps(strokes, accented)) {
            Target target = new Target(KIT, grid, steps);
            SearchOutcome outcome = StickingSearch.search(target, space);
            Set<List<Optional<Letter>>> expected = woven.getOrDefault(target, Set.of());
            assertThat(outcome instanceof Found).as("%s", target).isEqualTo(!expected.isEmpty());
            if (outcome instanceof Found found) {
                possible++;
                assertListed(found, target, expected);
                for (List<Optional<Letter>> letters : stickings) {
                    assertThat(found.with(sticking(letters)).isPresent())
                            .as("%s for %s", letters, target)
                            .isEqualTo(expected.contains(letters));
                }
            }
        }
        assertThat(woven).hasSize(possible);
    }

    private static void assertListed(
            Found found, Target target, Set<List<Optional<Letter>>> expected) {
        Set<List<Optional<Letter>>> listed = new HashSet<>();
        Set<Answer> seen = new HashSet<>();
        int additions = 0;
        int points = 0;
        Iterator<Answer> answers = found.easiestFirst();
        while (answers.hasNext()) {
            Answer answer = answers.next();
            StickingSearchTest.assertProduces(answer, target);
            assertThat(seen.add(answer)).as("twice: %s", answer).isTrue();
            if (answer.additions().size() > additions) {
                additions = answer.additions().size();
                points = 0;
            }
            assertThat(answer.additions()).hasSize(additions);
            assertThat(answer.points()).isGreaterThanOrEqualTo(points);
            points = answer.points();
            listed.add(StickingSearchTest.letters(answer.recipe().sticking()));
        }
        assertThat(listed).as("%s", target).isEqualTo(expected);
    }

    private static Grid gridOf(int beats) {
        return new Grid(new Meter(beats, 4), 1, Grid.STRAIGHT, false);
    }

    /** All stickings of a length; so many of the first strokes with accents too. */
    private static List<Sticking> stickings(int size, int accented) {
        List<List<Stroke>> all = new ArrayList<>(List.of(List.of()));
        for (int i = 0; i < size; i++) {
            List<List<Stroke>> longer = new ArrayList<>();
            for (List<Stroke> start : all) {
                List<Stroke> next = new ArrayList<>(List.of(Stroke.REST));
                for (Letter letter : Letter.values()) {
                    next.add(Stroke.of(letter));
                    if (start.size() < accented) {
                        next.add(Stroke.of(letter, Dynamic.ACCENT, Ornament.NONE));
                    }
                }
                for (Stroke stroke : next) {
                    List<Stroke> more = new ArrayList<>(start);
                    more.add(stroke);
                    longer.add(more);
                }
            }
            all = longer;
        }
        return all.stream().map(Sticking::new).toList();
    }

    private static Sticking sticking(List<Optional<Letter>> letters) {
        return new Sticking(
                letters.stream().map(l -> l.map(Stroke::of).orElse(Stroke.REST)).toList());
    }

    private static LetterVoicing own(Letter letter) {
        return LetterVoicing.on(Voicing.limbOf(letter, KIT), List.of(ANY));
    }

    private static List<Map<Letter, LetterVoicing>> plainPlans() {
        Map<Letter, LetterVoicing> plain = new HashMap<>();
        LETTERS.forEach(letter -> plain.put(letter, own(letter)));
        return List.of(plain);
    }

    private static List<Map<Letter, LetterVoicing>> plansWithOneAddition(Letter letter) {
        List<LetterVoicing> changed = new ArrayList<>(List.of(own(letter).withTacet(true)));
        for (Limb limb : Limb.values()) {
            if (limb != own(letter).limb()) {
                changed.add(own(letter).withLimb(limb));
                for (SoundName sound : KIT.soundNames()) {
                    for (boolean accents : new boolean[] {true, false}) {
                        changed.add(
                                own(letter)
                                        .withDoublings(
                                                List.of(new Doubling(limb, sound, accents))));
                    }
                }
            }
        }
        List<Map<Letter, LetterVoicing>> plans = new ArrayList<>();
        for (LetterVoicing voiced : changed) {
            Map<Letter, LetterVoicing> plan = new HashMap<>(plainPlans().get(0));
            plan.put(letter, voiced);
            plans.add(plan);
        }
        return plans;
    }

    private static List<Layer> layers() {
        List<Layer> layers = new ArrayList<>();
        for (Limb limb : Limb.values()) {
            for (SoundName sound : KIT.soundNames()) {
                for (String figure :
                        List.of("x x", "x -", "- x", ">x x", "x >x", ">x >x", ">x -", "- >x")) {
                    layers.add(new Layer(limb, sound, 1, Figure.parse(figure)));
                }
            }
        }
        return layers;
    }

    /** Weaves a sticking with every path of sounds for every letter that needs one. */
    private void weaveAll(
            Sticking sticking, Grid grid, Map<Letter, LetterVoicing> plan, List<Layer> layers) {
        Map<Letter, Integer> turns = new TreeMap<>();
        for (Stroke.Struck struck : sticking.struck()) {
            List<Letter> voiced =
                    struck.letter() == Letter.B && !plan.containsKey(Letter.B)
                            ? List.of(Letter.R, Letter.L)
                            : List.of(struck.letter());
            voiced.forEach(letter -> turns.merge(letter, 1, Integer::sum));
        }
        List<Map<Letter, LetterVoicing>> all = new ArrayList<>(List.of(plan));
        turns.forEach(
                (letter, count) -> {
                    List<Map<Letter, LetterVoicing>> more = new ArrayList<>();
                    for (Map<Letter, LetterVoicing> voiced : all) {
                        for (List<SoundName> path : paths(count)) {
                            Map<Letter, LetterVoicing> next = new HashMap<>(voiced);
                            next.computeIfPresent(letter, (l, v) -> v.withPath(path));
                            more.add(next);
                        }
                    }
                    all.clear();
                    all.addAll(more);
                });
        for (Map<Letter, LetterVoicing> voiced : all) {
            Voicing voicing = new Voicing(voiced, new TreeMap<>(), layers);
            Recipe recipe = new Recipe(sticking, KIT, voicing, grid, OptionalInt.of(1));
            Groove groove = recipe.weave();
            if (groove.conflicts().isEmpty() && RandomRecipes.isOwn(recipe)) {
                woven.computeIfAbsent(Target.of(groove), none -> new LinkedHashSet<>())
                        .add(StickingSearchTest.letters(sticking));
            }
        }
    }

    private static List<List<SoundName>> paths(int length) {
        List<List<SoundName>> paths = new ArrayList<>(List.of(List.of()));
        for (int i = 0; i < length; i++) {
            List<List<SoundName>> longer = new ArrayList<>();
            for (List<SoundName> start : paths) {
                for (SoundName sound : KIT.soundNames()) {
                    List<SoundName> more = new ArrayList<>(start);
                    more.add(sound);
                    longer.add(more);
                }
            }
            paths = longer;
        }
        return paths;
    }

    /** All ways to strike the sounds at so many steps, accents at the first few only, no ghost. */
    private List<List<List<Strike>>> allSteps(int size, int accented) {
        Set<List<List<Strike>>> all = new LinkedHashSet<>();
        woven.keySet().forEach(target -> all.add(target.steps()));
        List<List<List<Strike>>> made = new ArrayList<>(List.of(List.of()));
        for (int i = 0; i < size; i++) {
            List<List<List<Strike>>> longer = new ArrayList<>();
            for (List<List<Strike>> start : made) {
                for (int set = 0; set < 1 << KIT.soundNames().size(); set++) {
                    for (Dynamic dynamic :
                            start.size() < accented
                                    ? List.of(Dynamic.PLAIN, Dynamic.ACCENT)
                                    : List.of(Dynamic.PLAIN)) {
                        List<Strike> strikes = new ArrayList<>();
                        for (int sound = 0; sound < KIT.soundNames().size(); sound++) {
                            if ((set & (1 << sound)) != 0) {
                                strikes.add(
                                        new Strike(
                                                KIT.soundNames().get(sound),
                                                dynamic,
                                                Ornament.NONE));
                            }
                        }
                        List<List<Strike>> more = new ArrayList<>(start);
                        more.add(strikes);
                        longer.add(more);
                    }
                }
            }
            made = longer;
        }
        made.forEach(
                steps -> {
                    Target target = new Target(KIT, gridOf(size), steps);
                    all.add(target.steps());
                });
        return List.copyOf(all);
    }
}
