package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;

/**
 * What is left for the sticking once certain layers have taken their sounds, and which strokes each
 * letter can then produce. Answers are kept: the same question comes many times.
 */
final class Layering {
    private final Heard heard;
    private final List<Addition> layers;
    private final Set<Limb> busy = EnumSet.noneOf(Limb.class);
    private final List<Cell> cells = new ArrayList<>();
    private final BitSet silent = new BitSet();

    /** By identity: a search makes each letter plan once. */
    private final IdentityHashMap<LetterPlan, BitSet> alone = new IdentityHashMap<>();

    private final IdentityHashMap<LetterPlan, IdentityHashMap<LetterPlan, AtOnce>> atOnce =
            new IdentityHashMap<>();
    private Optional<BitSet> bothHands = Optional.empty();

    Layering(Heard heard, List<Addition.Layered> layers) {
        this.heard = heard;
        this.layers = List.copyOf(layers);
        boolean[] layered = new boolean[heard.sounds().size()];
        for (Addition.Layered layer : layers) {
            busy.add(layer.limb());
            layered[heard.number(layer.sound())] = true;
        }
        for (int position = 0; position < heard.period(); position++) {
            cells.add(heard.cell(position, layered));
        }
        for (int stroke = 0; stroke < heard.strokes(); stroke++) {
            boolean all = true;
            for (int position : heard.positions(stroke)) {
                all &= cells.get(position).silent();
            }
            silent.set(stroke, all);
        }
    }

    List<Addition> layers() {
        return layers;
    }

    /** The strokes that can be rests. */
    BitSet silent() {
        return silent;
    }

    /** The strokes that a letter can be. */
    BitSet alone(LetterPlan plan) {
        BitSet strokes = alone.get(plan);
        if (strokes == null) {
            strokes = strokes(parts(List.of(plan)), plan.letter().isOneHand());
            alone.put(plan, strokes);
        }
        return strokes;
    }

    /** Whether a letter can be all of these strokes; stops at the first that it cannot be. */
    boolean produces(LetterPlan plan, BitSet strokes) {
        Ways ways = new Ways(parts(List.of(plan)), plan.letter().isOneHand());
        for (int stroke = strokes.nextSetBit(0); stroke >= 0; ) {
            if (choices(stroke, Optional.empty(), ways).isEmpty()) {
                return false;
            }
            stroke = strokes.nextSetBit(stroke + 1);
        }
        return true;
    }

    /** The strokes that B can be as R and L at once: on two sounds in some pass, or anyhow. */
    private record AtOnce(BitSet twoSounds, BitSet any) {}

    /**
     * The strokes that B can be as R and L at once.
     *
     * @param unison whether both may be on one sound in every pass
     */
    BitSet atOnce(LetterPlan right, LetterPlan left, boolean unison) {
        AtOnce strokes =
                atOnce.computeIfAbsent(right, none -> new IdentityHashMap<>())
                        .computeIfAbsent(left, none -> atOnce(parts(List.of(right, left))));
        return unison ? strokes.any : strokes.twoSounds;
    }

    private AtOnce atOnce(List<Fit.Part> parts) {
        AtOnce strokes = new AtOnce(new BitSet(), new BitSet());
        Ways ways = new Ways(parts, false);
        for (int stroke = 0; stroke < heard.strokes(); stroke++) {
            List<Choice> choices = choices(stroke, Optional.empty(), ways);
            strokes.any.set(stroke, !choices.isEmpty());
            strokes.twoSounds.set(stroke, !choices.stream().allMatch(Choice::isUnison));
        }
        return strokes;
    }

    /** The strokes that B can be with sounds of its own. */
    BitSet bothHands() {
        if (bothHands.isEmpty()) {
            bothHands = Optional.of(strokes(List.of(Fit.Part.bothHands()), false));
        }
        return bothHands.get();
    }

    private List<Fit.Part> parts(List<LetterPlan> plans) {
        List<Fit.Part> parts = new ArrayList<>();
        for (LetterPlan plan : plans) {
            if (!plan.tacet()) {
                parts.add(Fit.Part.of(plan, heard));
            }
        }
        return parts;
    }

    private BitSet strokes(List<Fit.Part> parts, boolean oneHand) {
        BitSet strokes = new BitSet();
        Ways ways = new Ways(parts, oneHand);
        for (int stroke = 0; stroke < heard.strokes(); stroke++) {
            strokes.set(stroke, !choices(stroke, Optional.empty(), ways).isEmpty());
        }
        return strokes;
    }

    /** The ways in which a stroke of certain parts produces cells: many steps ask for the same. */
    private final class Ways {
        private final List<Fit.Part> parts;
        private final boolean oneHand;
        private final Map<Cell, List<Fit>> known = new HashMap<>();

        Ways(List<Fit.Part> parts, boolean oneHand) {
            this.parts = parts;
            this.oneHand = oneHand;
        }

        List<Fit> of(Cell cell) {
            List<Fit> fits = known.get(cell);
            if (fits == null) {
                fits = Fit.of(cell, parts, oneHand, busy, heard);
                known.put(cell, fits);
            }
            return fits;
        }
    }

    /** All that one stroke may be as a letter of a plan. */
    List<Choice> choices(int stroke, Letter letter, Plan plan) {
        List<Fit.Part> parts;
        if (letter != Letter.B) {
            parts = parts(List.of(plan.of(letter)));
        } else if (plan.both() == Plan.Both.OWN_SOUNDS) {
            parts = List.of(Fit.Part.bothHands());
        } else {
            parts = parts(List.of(plan.of(Letter.R), plan.of(Letter.L)));
        }
        List<Choice> choices =
                choices(stroke, Optional.of(letter), new Ways(parts, letter.isOneHand()));
        if (plan.both() == Plan.Both.TWO_SOUNDS) {
            choices.removeIf(Choice::isUnison);
        }
        return choices;
    }

    private List<Choice> choices(int stroke, Optional<Letter> letter, Ways ways) {
        int[] positions = heard.positions(stroke);
        Cell first = cells.get(positions[0]);
        List<Choice> choices = new ArrayList<>();
        for (Fit fit : ways.of(first)) {
            List<Fit> passes = new ArrayList<>(List.of(fit));
            for (int pass = 1; pass < positions.length; pass++) {
                Cell cell = cells.get(positions[pass]);
                if (!cell.dynamic().equals(first.dynamic())) {
                    break;
                }
                later(ways.of(cell), fit).ifPresent(passes::add);
            }
            if (passes.size() == positions.length) {
                Dynamic dynamic = first.dynamic().orElse(Dynamic.PLAIN);
                choices.add(new Choice(letter, dynamic, fit.ornament(), List.copyOf(passes)));
            }
        }
        return choices;
    }

    /** How a later pass goes: as the first if it can, the ornament being the stroke's own. */
    private static Optional<Fit> later(List<Fit> fits, Fit first) {
        if (fits.contains(first)) {
            return Optional.of(first);
        }
        for (Fit fit : fits) {
            if (fit.ornament() == first.ornament()) {
                return Optional.of(fit);
            }
        }
        return Optional.empty();
    }
}
