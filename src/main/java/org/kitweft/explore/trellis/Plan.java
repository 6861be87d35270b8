package org.kitweft.explore.trellis;

import java.math.BigInteger;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.kitweft.explore.Choices;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Stroke;

/**
 * The task in numbers: played strokes, surfaces from left to right, and which moves and which
 * positions of the hands are allowed. Immutable.
 */
final class Plan {
    /** Rounding of centimetres must not decide a rule. */
    private static final double HAIR = 1e-9;

    private static final Moment NEVER = new Moment(-1, 0);

    final Recipe recipe;
    final ReachModel model;
    final Limits limits;
    final Timing timing;
    final List<Played> played;

    /** Surfaces that can be struck, by x. */
    final List<Surface> surfaces;

    /** For each stroke and option its surface. */
    final int[][] surfaceOf;

    /** For each stroke what it has in common with others. */
    final Kind[] kinds;

    /** For each surface of the right hand and of the left; empty if crossing is no matter. */
    private final boolean[][] uncrossed;

    Plan(Recipe recipe, Choices choices, List<Rule> rules, ReachModel model) {
        this.recipe = recipe;
        this.model = model;
        this.limits = Limits.of(rules);
        this.timing = new Timing(recipe, limits.loop());
        this.played = play(recipe, choices, rules);
        this.surfaces = surfaces(recipe.kit(), played);
        Map<String, Integer> indexOf = new HashMap<>();
        for (Surface surface : surfaces) {
            indexOf.put(surface.id(), indexOf.size());
        }
        this.surfaceOf = new int[played.size()][];
        // Strokes of a letter choose from the same list.
        IdentityHashMap<List<SoundName>, int[]> known = new IdentityHashMap<>();
        for (int i = 0; i < played.size(); i++) {
            surfaceOf[i] =
                    known.computeIfAbsent(
                            played.get(i).sounds(),
                            sounds ->
                                    sounds.stream()
                                            .mapToInt(sound -> indexOf.get(sound.surface()))
                                            .toArray());
        }
        this.kinds = kinds();
        int m = limits.crossing() ? surfaces.size() : 0;
        this.uncrossed = new boolean[m][m];
        for (int right = 0; right < m; right++) {
            for (int left = 0; left < m; left++) {
                double across = surfaces.get(left).x() - surfaces.get(right).x();
                uncrossed[right][left] = across <= limits.tolerance() + HAIR;
            }
        }
    }

    private static List<Played> play(Recipe recipe, Choices choices, List<Rule> rules) {
        Kit kit = recipe.kit();
        Map<Letter, List<Limb>> limbs = new TreeMap<>();
        recipe.sticking().letters().forEach(v -> limbs.put(v, limbs(v, recipe)));
        limbs.values().removeIf(List::isEmpty);
        choices.require(limbs.keySet());
        choices.union().stream().filter(sound -> !kit.has(sound)).forEach(kit::sound);
        Map<Integer, List<SoundName>> pins = pins(recipe, limbs.keySet(), rules);
        Map<Letter, List<SoundName>> allowed = new TreeMap<>();
        limbs.keySet().forEach(letter -> allowed.put(letter, allowed(letter, choices, rules)));
        List<Played> played = new ArrayList<>();
        for (int i = 0; i < recipe.sticking().size(); i++) {
            Optional<Stroke.Struck> struck = recipe.sticking().strokes().get(i).struck();
            if (struck.isPresent() && limbs.containsKey(struck.get().letter())) {
                Letter letter = struck.get().letter();
                List<SoundName> sounds = allowed.get(letter);
                for (SoundName pin : pins.getOrDefault(i, List.of())) {
                    sounds = sounds.contains(pin) ? List.of(pin) : List.of();
                }
                played.add(new Played(i, letter, limbs.get(letter), sounds));
            }
        }
        return List.copyOf(played);
    }

    /** What a letter may choose from where nothing is pinned. */
    private static List<SoundName> allowed(Letter letter, Choices choices, List<Rule> rules) {
        List<SoundName> sounds = new ArrayList<>(choices.of(letter));
        for (Rule rule : rules) {
            if (rule instanceof Rule.Allowed allowed && allowed.letter() == letter) {
                sounds.retainAll(allowed.sounds());
            }
        }
        return List.copyOf(sounds);
    }

    private static Map<Integer, List<SoundName>> pins(
            Recipe recipe, Set<Letter> sounding, List<Rule> rules) {
        Map<Integer, List<SoundName>> pins = new HashMap<>();
        int size = recipe.sticking().size();
        for (Rule rule : rules) {
            if (rule instanceof Rule.Pin pin) {
                if (pin.index() >= size) {
                    throw new IllegalArgumentException(
                            "%s: the sticking has %d strokes, expected a stroke from 1 to %d"
                                    .formatted(pin.words(), size, size));
                }
                Optional<Stroke.Struck> struck =
                        recipe.sticking().strokes().get(pin.index()).struck();
                if (struck.isEmpty() || !sounding.contains(struck.get().letter())) {
                    throw new IllegalArgumentException(
                            "%s: stroke %d is %s, expected one that is played"
                                    .formatted(
                                            pin.words(),
                                            pin.index() + 1,
                                            struck.isEmpty() ? "a rest" : "tacet"));
                }
                recipe.kit().sound(pin.sound());
                pins.computeIfAbsent(pin.index(), any -> new ArrayList<>()).add(pin.sound());
            }
        }
        return pins;
    }

    /** Who plays a letter: nobody if it is tacet. */
    private static List<Limb> limbs(Letter letter, Recipe recipe) {
        Voicing voicing = recipe.voicing();
        Optional<LetterVoicing> own = voicing.letter(letter);
        if (own.isPresent() && own.get().tacet()) {
            return List.of();
        }
        if (letter != Letter.B) {
            return List.of(
                    own.map(LetterVoicing::limb).orElse(Voicing.limbOf(letter, recipe.kit())));
        }
        if (own.isPresent()) {
            return List.of(Limb.RIGHT_HAND, Limb.LEFT_HAND);
        }
        Set<Limb> both = EnumSet.noneOf(Limb.class);
        both.addAll(limbs(Letter.R, recipe));
        both.addAll(limbs(Letter.L, recipe));
        return List.copyOf(both);
    }

    private static List<Surface> surfaces(Kit kit, List<Played> played) {
        Set<String> ids = new LinkedHashSet<>();
        played.forEach(stroke -> stroke.sounds().forEach(sound -> ids.add(sound.surface())));
        return kit.surfaces().stream()
                .filter(surface -> ids.contains(surface.id()))
                .sorted(Comparator.comparingDouble(Surface::x))
                .toList();
    }

    private Kind[] kinds() {
        Map<List<Object>, Kind> known = new HashMap<>();
        Map<List<Object>, Kind.Moves> moves = new HashMap<>();
        Kind[] all = new Kind[played.size()];
        for (int i = 0; i < all.length; i++) {
            List<Kind.Moves> each = new ArrayList<>();
            for (Limb limb : played.get(i).limbs()) {
                Moment before = before(i, limb);
                each.add(
                        before.stroke < 0
                                ? Kind.Moves.ALL
                                : moves.computeIfAbsent(
                                        asked(limb, before.ticks),
                                        any -> moves(limb, before.ticks)));
            }
            int stroke = i;
            List<Object> key = new ArrayList<>(played.get(i).limbs());
            key.addAll(each);
            key.add(IntBuffer.wrap(surfaceOf[i]));
            all[i] = known.computeIfAbsent(key, any -> kind(stroke, each));
        }
        return all;
    }

    private Kind kind(int stroke, List<Kind.Moves> moves) {
        int[] counts = new int[surfaces.size()];
        for (int surface : surfaceOf[stroke]) {
            counts[surface]++;
        }
        int[] targets = IntStream.range(0, counts.length).filter(s -> counts[s] > 0).toArray();
        int[] sounds = Arrays.stream(targets).map(s -> counts[s]).toArray();
        int[] limbs = played.get(stroke).limbs().stream().mapToInt(Limb::ordinal).toArray();
        return new Kind(limbs, moves, targets, sounds);
    }

    /** What the moves of a stroke depend on: without the tempo rule, neither limb nor time. */
    private List<Object> asked(Limb limb, long ticks) {
        return limits.tempo() == 0 ? List.of() : List.of(limb, ticks);
    }

    private Kind.Moves moves(Limb limb, long ticks) {
        if (limits.reach() == Double.POSITIVE_INFINITY && limits.tempo() == 0) {
            return Kind.Moves.ALL;
        }
        boolean[][] allowed = new boolean[surfaces.size()][surfaces.size()];
        for (int from = 0; from < allowed.length; from++) {
            for (int to = 0; to < allowed.length; to++) {
                allowed[from][to] = reaches(limb, from, to, ticks);
            }
        }
        return new Kind.Moves(allowed);
    }

    private boolean reaches(Limb limb, int from, int to, long ticks) {
        Surface a = surfaces.get(from);
        Surface b = surfaces.get(to);
        return a.distanceTo(b) <= limits.reach() + HAIR
                && (limits.tempo() == 0
                        || limits.tempo() <= model.ceiling(limb, a, b, ticks, meter()));
    }

    /** Whether right and left hand may stand there at once, as far as crossing goes. */
    boolean uncrossed(int right, int left) {
        return uncrossed.length == 0 || uncrossed[right][left];
    }

    /** The stroke of a limb before this one; in a loop, its last for its first. */
    Moment before(int stroke, Limb limb) {
        int step = played.get(stroke).index();
        for (int i = stroke - 1; i >= 0; i--) {
            if (played.get(i).limbs().contains(limb)) {
                return new Moment(i, timing.ticks(played.get(i).index(), step));
            }
        }
        for (int i = played.size() - 1; limits.loop() && i >= stroke; i--) {
            if (played.get(i).limbs().contains(limb)) {
                return new Moment(i, timing.ticks(played.get(i).index(), step + timing.period()));
            }
        }
        return NEVER;
    }

    Meter meter() {
        return recipe.grid().meter();
    }

    /** An upper bound of all counts: as if no move were refused. */
    BigInteger bound() {
        BigInteger bound = BigInteger.ONE;
        for (int[] options : surfaceOf) {
            bound = bound.multiply(BigInteger.valueOf(options.length));
        }
        return bound;
    }

    /**
     * A stroke seen from a later one.
     *
     * @param stroke its number among those played; negative if there is none
     * @param ticks how long ago
     */
    record Moment(int stroke, long ticks) {}

    /**
     * All rules of a kind taken together.
     *
     * @param reach infinite if there is no such rule
     * @param tempo 0 if there is no such rule
     * @param crossing whether there is such a rule
     */
    record Limits(
            double reach,
            int tempo,
            boolean crossing,
            double tolerance,
            int least,
            int most,
            boolean loop) {

        static Limits of(List<Rule> rules) {
            double reach = Double.POSITIVE_INFINITY;
            int tempo = 0;
            boolean crossing = false;
            double tolerance = Double.POSITIVE_INFINITY;
            int least = 0;
            int most = Integer.MAX_VALUE;
            boolean loop = false;
            for (Rule rule : rules) {
                if (rule instanceof Rule.Reach r) {
                    reach = Math.min(reach, r.cm());
                } else if (rule instanceof Rule.AtTempo t) {
                    tempo = Math.max(tempo, t.tempo().beatsPerMinute());
                } else if (rule instanceof Rule.NoCrossing c) {
                    crossing = true;
                    tolerance = Math.min(tolerance, c.toleranceCm());
                } else if (rule instanceof Rule.Surfaces s) {
                    least = Math.max(least, s.least());
                    most = Math.min(most, s.most());
                } else if (rule instanceof Rule.Loop) {
                    loop = true;
                }
            }
            return new Limits(reach, tempo, crossing, tolerance, least, most, loop);
        }
    }
}
