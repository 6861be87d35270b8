package org.kitweft.explore.trellis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.reach.ReachModel;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Grid;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Stroke;

/**
 * All variations of a small case, by listing every assignment and playing it stroke by stroke as
 * the definitions say. Shares nothing with the engine but the reach model.
 */
final class Listing {
    private final Recipe recipe;
    private final List<Rule> rules;
    private final List<Integer> indices = new ArrayList<>();
    private final List<List<Limb>> limbs = new ArrayList<>();
    private final List<List<SoundName>> options = new ArrayList<>();

    Listing(SmallCase small, List<Rule> rules) {
        this.recipe = small.recipe();
        this.rules = rules;
        for (int i = 0; i < recipe.sticking().size(); i++) {
            List<Limb> who = played(recipe, i);
            if (who != null) {
                indices.add(i);
                limbs.add(who);
                Letter letter = recipe.sticking().strokes().get(i).struck().orElseThrow().letter();
                options.add(small.choices().of(letter));
            }
        }
    }

    /** Who plays a stroke, or null if nobody does. */
    static @Nullable List<Limb> played(Recipe recipe, int index) {
        Optional<Stroke.Struck> struck = recipe.sticking().strokes().get(index).struck();
        if (struck.isEmpty()) {
            return null;
        }
        Letter letter = struck.get().letter();
        Optional<LetterVoicing> own = recipe.voicing().letter(letter);
        Set<Limb> who = new LinkedHashSet<>();
        if (letter != Letter.B) {
            who.add(own.map(LetterVoicing::limb).orElse(Voicing.limbOf(letter, recipe.kit())));
            return own.isPresent() && own.get().tacet() ? null : List.copyOf(who);
        }
        if (own.isPresent()) {
            return own.get().tacet() ? null : List.of(Limb.RIGHT_HAND, Limb.LEFT_HAND);
        }
        for (Letter hand : List.of(Letter.R, Letter.L)) {
            Optional<LetterVoicing> voiced = recipe.voicing().letter(hand);
            if (voiced.isEmpty() || !voiced.get().tacet()) {
                who.add(voiced.map(LetterVoicing::limb).orElse(Voicing.limbOf(hand, recipe.kit())));
            }
        }
        return who.isEmpty() ? null : List.copyOf(who);
    }

    List<Integer> indices() {
        return indices;
    }

    List<List<Limb>> limbs() {
        return limbs;
    }

    List<List<SoundName>> options() {
        return options;
    }

    /** Every assignment of the choices, in order. */
    List<List<SoundName>> assignments() {
        List<List<SoundName>> all = new ArrayList<>();
        assign(new ArrayList<>(), all);
        return all;
    }

    private void assign(List<SoundName> sounds, List<List<SoundName>> all) {
        if (sounds.size() == options.size()) {
            all.add(List.copyOf(sounds));
            return;
        }
        for (SoundName sound : options.get(sounds.size())) {
            sounds.add(sound);
            assign(sounds, all);
            sounds.remove(sounds.size() - 1);
        }
    }

    /** The assignments that keep all rules, in order. */
    List<List<SoundName>> variations() {
        return assignments().stream().filter(this::keepsAll).toList();
    }

    private boolean keepsAll(List<SoundName> sounds) {
        boolean loop = rules.contains(new Rule.Loop());
        return rules.stream().allMatch(rule -> keeps(rule, sounds, loop));
    }

    private boolean keeps(Rule rule, List<SoundName> sounds, boolean loop) {
        if (rule instanceof Rule.Pin pin) {
            return sounds.get(indices.indexOf(pin.index())).equals(pin.sound());
        }
        if (rule instanceof Rule.Allowed allowed) {
            for (int i = 0; i < sounds.size(); i++) {
                Letter letter =
                        recipe.sticking()
                                .strokes()
                                .get(indices.get(i))
                                .struck()
                                .orElseThrow()
                                .letter();
                if (letter == allowed.letter() && !allowed.sounds().contains(sounds.get(i))) {
                    return false;
                }
            }
            return true;
        }
        if (rule instanceof Rule.Surfaces surfaces) {
            Set<String> used = new HashSet<>();
            sounds.forEach(sound -> used.add(sound.surface()));
            return used.size() >= surfaces.least() && used.size() <= surfaces.most();
        }
        return play(rule, sounds, loop ? 3 : 1);
    }

    /** Plays so many passes; three have all seams and both phases of a swung odd period. */
    private boolean play(Rule rule, List<SoundName> sounds, int passes) {
        Surface[] at = new Surface[4];
        long[] when = new long[4];
        for (int pass = 0; pass < passes; pass++) {
            for (int i = 0; i < sounds.size(); i++) {
                Surface surface = recipe.kit().surfaceOf(sounds.get(i));
                long now = time(pass, indices.get(i));
                for (Limb limb : limbs.get(i)) {
                    Surface from = at[limb.ordinal()];
                    if (from != null
                            && !moves(rule, limb, from, surface, now - when[limb.ordinal()])) {
                        return false;
                    }
                }
                for (Limb limb : limbs.get(i)) {
                    at[limb.ordinal()] = surface;
                    when[limb.ordinal()] = now;
                }
                Surface right = at[Limb.RIGHT_HAND.ordinal()];
                Surface left = at[Limb.LEFT_HAND.ordinal()];
                if (rule instanceof Rule.NoCrossing crossing
                        && right != null
                        && left != null
                        && right.x() < left.x() - crossing.toleranceCm()) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean moves(Rule rule, Limb limb, Surface from, Surface to, long ticks) {
        if (rule instanceof Rule.Reach reach) {
            return from.distanceTo(to) <= reach.cm() + 1e-9;
        }
        if (rule instanceof Rule.AtTempo at) {
            double has = at.tempo().seconds(ticks, recipe.grid().meter()) * 1000;
            return ReachModel.PUBLISHED.millis(limb, from, to) <= has;
        }
        return true;
    }

    private long time(int pass, int index) {
        Grid grid = recipe.grid();
        int size = recipe.sticking().size();
        int bar = grid.stepsPerBar();
        int period = size;
        if (!grid.overTheBar()) {
            while (size > bar && period % bar != 0) {
                period++;
            }
        }
        return grid.sounding((pass * period + index) * grid.stepTicks(), grid.stepsPerBeat());
    }

    /** What a variation costs in millionths; with loop, the way back too. */
    long cost(List<SoundName> sounds, Cost cost) {
        long sum = 0;
        for (int i = 0; i < sounds.size(); i++) {
            sum += Math.round(1e6 * cost.stroke(indices.get(i), sounds.get(i)));
        }
        boolean loop = rules.contains(new Rule.Loop());
        for (Limb limb : Limb.values()) {
            List<SoundName> own = new ArrayList<>();
            for (int i = 0; i < sounds.size(); i++) {
                if (limbs.get(i).contains(limb)) {
                    own.add(sounds.get(i));
                }
            }
            if (loop && !own.isEmpty()) {
                own.add(own.get(0));
            }
            for (int i = 1; i < own.size(); i++) {
                Surface from = recipe.kit().surfaceOf(own.get(i - 1));
                Surface to = recipe.kit().surfaceOf(own.get(i));
                sum += Math.round(1e6 * cost.move(limb, from, to, 0));
            }
        }
        return sum;
    }

    @Override
    public String toString() {
        return Arrays.toString(rules.toArray());
    }
}
