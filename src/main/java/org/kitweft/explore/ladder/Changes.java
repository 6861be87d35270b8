package org.kitweft.explore.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Layer;
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

/** Finds the changes between the start of a ladder and its goal. */
final class Changes {
    private final Recipe goal;
    private final List<Change> all = new ArrayList<>();

    private Changes(Recipe goal) {
        this.goal = goal;
    }

    /**
     * The plainest form of a recipe: its strokes without dynamics and ornaments, every letter with
     * its own limb on one surface. Letters that do not occur stay as they are in the goal.
     */
    static Recipe start(Recipe goal) {
        Voicing plain = Voicing.plain(goal.kit());
        Voicing voicing = goal.voicing();
        Set<Letter> heard = heard(goal.sticking());
        for (Letter letter : heard) {
            Optional<LetterVoicing> own = plain.letter(letter);
            // A letter that nothing answers to on this kit begins as the goal has it.
            if (own.isPresent()) {
                voicing = voicing.with(letter, own.get());
            } else if (letter == Letter.B) {
                voicing = voicing.without(letter);
            }
        }
        voicing = voicing.withStrokes(new TreeMap<>()).withLayers(List.of());
        return goal.with(plainStrokes(goal.sticking())).with(voicing);
    }

    /** All changes, in the order of letters, then strokes, layers and dynamics. */
    static List<Change> to(Recipe goal) {
        Changes changes = new Changes(goal);
        for (Letter letter : heard(goal.sticking())) {
            changes.addLetter(letter);
        }
        changes.addStrokes();
        changes.addLayers();
        changes.addSticking();
        return changes.all;
    }

    /** The letters that strike: B without an entry of its own is an R and an L. */
    private static Set<Letter> heard(Sticking sticking) {
        Set<Letter> letters = new TreeSet<>(sticking.letters());
        if (letters.contains(Letter.B)) {
            letters.add(Letter.R);
            letters.add(Letter.L);
        }
        return letters;
    }

    private void addLetter(Letter letter) {
        Optional<LetterVoicing> from = start(goal).voicing().letter(letter);
        Optional<LetterVoicing> to = goal.voicing().letter(letter);
        if (from.equals(to)) {
            return;
        }
        if (to.isEmpty()) {
            add(letter + " has nothing to strike", r -> r.with(r.voicing().without(letter)));
        } else if (from.isEmpty() || to.get().tacet()) {
            LetterVoicing whole = to.get();
            add(
                    whole.tacet()
                            ? letter + " is tacet"
                            : "%s has its own: %s".formatted(letter, listed(whole.path())),
                    r -> r.with(r.voicing().with(letter, whole)));
        } else {
            addParts(letter, from.get(), to.get());
        }
    }

    private void addParts(Letter letter, LetterVoicing from, LetterVoicing to) {
        OptionalInt handover = OptionalInt.empty();
        if (to.limb() != from.limb()) {
            handover = OptionalInt.of(all.size());
            add(
                    "the %s plays %s".formatted(to.limb().words(), letter),
                    onLetter(
                            letter,
                            v ->
                                    v.path().equals(to.path())
                                            ? v.withLimb(to.limb())
                                            : handedOver(v, to.limb())));
        }
        // Handing a letter over may already bring it where it goes.
        if (!handedOver(from, to.limb()).path().equals(to.path())) {
            add(
                    "%s goes to %s".formatted(letter, listed(to.path())),
                    onLetter(letter, v -> v.withPath(to.path())));
        }
        if (!to.accents().isEmpty()) {
            add(
                    "accents of %s go to %s".formatted(letter, listed(to.accents())),
                    onLetter(letter, v -> v.withAccents(to.accents())));
        }
        if (!to.ghosts().isEmpty()) {
            add(
                    "ghosts of %s go to %s".formatted(letter, listed(to.ghosts())),
                    onLetter(letter, v -> v.withGhosts(to.ghosts())));
        }
        for (int i = 0; i < to.doublings().size(); i++) {
            addDoubling(letter, from.limb(), handover, to.doublings(), i);
        }
    }

    /** A limb can double a letter only once the letter is no longer its own. */
    private void addDoubling(
            Letter letter, Limb before, OptionalInt handover, List<Doubling> goalOrder, int index) {
        Doubling doubling = goalOrder.get(index);
        add(
                doubling.limb() == before ? handover : OptionalInt.empty(),
                "the %s strikes %s with %s%s"
                        .formatted(
                                doubling.limb().words(),
                                doubling.sound(),
                                doubling.accentsOnly() ? "accents of " : "",
                                letter),
                onLetter(
                        letter,
                        v -> {
                            List<Doubling> more = new ArrayList<>(v.doublings());
                            more.add(doubling);
                            return v.withDoublings(inOrder(more, goalOrder));
                        }));
    }

    /**
     * The limb takes the path over; where it can strike none of it, the first it can, and where
     * some, those.
     */
    private LetterVoicing handedOver(LetterVoicing voiced, Limb limb) {
        List<SoundName> able = goal.kit().soundsFor(limb);
        List<SoundName> path = voiced.path().stream().filter(able::contains).toList();
        boolean reached = path.isEmpty() && !able.isEmpty();
        return voiced.withLimb(limb)
                .withPath(reached ? List.of(able.get(0)) : path.isEmpty() ? voiced.path() : path);
    }

    private static UnaryOperator<Recipe> onLetter(
            Letter letter, UnaryOperator<LetterVoicing> change) {
        return recipe ->
                recipe.with(
                        recipe.voicing()
                                .with(
                                        letter,
                                        change.apply(
                                                recipe.voicing().letter(letter).orElseThrow())));
    }

    private void addStrokes() {
        goal.voicing()
                .strokes()
                .forEach(
                        (index, sound) ->
                                add(
                                        "stroke %d goes to %s".formatted(index + 1, sound),
                                        r -> {
                                            SortedMap<Integer, SoundName> more =
                                                    new TreeMap<>(r.voicing().strokes());
                                            more.put(index, sound);
                                            return r.with(r.voicing().withStrokes(more));
                                        }));
    }

    private void addLayers() {
        List<Layer> layers = goal.voicing().layers();
        for (Layer layer : layers) {
            add(
                    "the %s plays a layer, %s".formatted(layer.limb().words(), layer.text()),
                    r -> {
                        List<Layer> more = new ArrayList<>(r.voicing().layers());
                        more.add(layer);
                        return r.with(r.voicing().withLayers(inOrder(more, layers)));
                    });
        }
    }

    private void addSticking() {
        addStrokesLike("accents", s -> s.dynamic() == Dynamic.ACCENT, Changes::withDynamicOf);
        addStrokesLike("ghost strokes", s -> s.dynamic() == Dynamic.GHOST, Changes::withDynamicOf);
        for (Ornament ornament : Ornament.values()) {
            if (ornament != Ornament.NONE) {
                addStrokesLike(
                        switch (ornament) {
                            case NONE -> "";
                            case FLAM -> "flams";
                            case DRAG -> "drags";
                            case BUZZ -> "multiple bounces";
                        },
                        s -> s.ornament() == ornament,
                        (now, then) -> new Stroke.Struck(now.letter(), now.dynamic(), ornament));
            }
        }
    }

    private static Stroke.Struck withDynamicOf(Stroke.Struck now, Stroke.Struck then) {
        return now.withDynamic(then.dynamic());
    }

    private interface Merge {
        Stroke.Struck of(Stroke.Struck now, Stroke.Struck then);
    }

    /** One change for all strokes of a kind. */
    private void addStrokesLike(
            String words, Function<Stroke.Struck, Boolean> wanted, Merge merge) {
        if (goal.sticking().struck().stream().noneMatch(wanted::apply)) {
            return;
        }
        add(
                words,
                recipe -> {
                    Sticking changed = recipe.sticking();
                    for (int i = 0; i < changed.size(); i++) {
                        Optional<Stroke.Struck> then = goal.sticking().strokes().get(i).struck();
                        if (then.isPresent() && wanted.apply(then.get())) {
                            Stroke.Struck now = changed.strokes().get(i).struck().orElseThrow();
                            changed = changed.with(i, merge.of(now, then.get()));
                        }
                    }
                    return recipe.with(changed);
                });
    }

    private static Sticking plainStrokes(Sticking sticking) {
        return new Sticking(
                sticking.strokes().stream()
                        .map(s -> s.struck().map(x -> Stroke.of(x.letter())).orElse(Stroke.REST))
                        .toList());
    }

    /** Some of a list, equal ones as often as they are there, in its order. */
    private static <T> List<T> inOrder(List<T> some, List<T> order) {
        List<T> left = new ArrayList<>(some);
        return order.stream().filter(left::remove).toList();
    }

    private static String listed(List<SoundName> sounds) {
        return sounds.stream().map(SoundName::text).distinct().collect(Collectors.joining(", "));
    }

    private void add(String words, UnaryOperator<Recipe> apply) {
        add(OptionalInt.empty(), words, apply);
    }

    private void add(OptionalInt needs, String words, UnaryOperator<Recipe> apply) {
        all.add(new Change(words, needs, apply));
    }
}
