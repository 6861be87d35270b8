package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kitweft.kit.Limb;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/**
 * One way in which a stroke produces a cell.
 *
 * @param paths the sound that each part of the stroke takes from its path
 * @param ornament of the stroke
 * @param struck which limb strikes which sound
 */
record Fit(List<Integer> paths, Ornament ornament, Map<Limb, Integer> struck) {
    private static final int NONE = -1;

    /** Whether two parts are on one sound. */
    boolean isUnison() {
        return paths.size() == 2 && paths.get(0).equals(paths.get(1));
    }

    /**
     * A part of a stroke: a letter has one, B as R and L at once has two.
     *
     * @param limbs who plays it, all on one sound
     * @param doublingLimb who strikes with it
     * @param doublingSound by number
     */
    record Part(
            List<Limb> limbs, Optional<Limb> doublingLimb, int doublingSound, boolean accentsOnly) {
        static Part of(LetterPlan plan, Heard heard) {
            return new Part(
                    List.of(plan.limb()),
                    plan.doubling().map(Addition.Doubled::limb),
                    plan.doubling().map(d -> heard.number(d.sound())).orElse(NONE),
                    plan.doubling().map(Addition.Doubled::accentsOnly).orElse(false));
        }

        /** Both hands on one sound. */
        static Part bothHands() {
            return new Part(
                    List.of(Limb.RIGHT_HAND, Limb.LEFT_HAND), Optional.empty(), NONE, false);
        }
    }

    /**
     * All ways in which a stroke of these parts produces a cell without a conflict.
     *
     * @param parts none: the stroke is tacet
     * @param oneHand whether the letter may carry grace notes
     * @param busy limbs that layers keep to themselves
     */
    static List<Fit> of(Cell cell, List<Part> parts, boolean oneHand, Set<Limb> busy, Heard heard) {
        if (cell.torn() || cell.silent() != parts.isEmpty() || !mayFit(cell, parts)) {
            return List.of();
        }
        List<Fit> fits = new ArrayList<>();
        if (parts.size() <= 1) {
            List<Integer> firsts = parts.isEmpty() ? List.of(NONE) : cell.sounds();
            for (int first : firsts) {
                List<Integer> paths = parts.isEmpty() ? List.of() : List.of(first);
                new Trial(cell, heard, busy).fit(parts, paths, oneHand).ifPresent(fits::add);
            }
            return fits;
        }
        for (int first : cell.sounds()) {
            for (int second : cell.sounds()) {
                new Trial(cell, heard, busy)
                        .fit(parts, List.of(first, second), oneHand)
                        .ifPresent(fits::add);
            }
        }
        return fits;
    }

    /** A quick look, for most stop here: whether the parts are neither too few nor too many. */
    private static boolean mayFit(Cell cell, List<Part> parts) {
        int most = 0;
        for (Part part : parts) {
            most++;
            if (part.doublingSound() != NONE) {
                boolean strikes = !part.accentsOnly() || isAccent(cell);
                if (strikes && !cell.sounds().contains(part.doublingSound())) {
                    return false;
                }
                most += strikes ? 1 : 0;
            }
        }
        return cell.sounds().size() <= most;
    }

    private static boolean isAccent(Cell cell) {
        return cell.dynamic().equals(Optional.of(Dynamic.ACCENT));
    }

    /** Lays the strikes of one way out over the limbs. */
    private static final class Trial {
        private final Cell cell;
        private final Heard heard;
        private final Set<Limb> busy;
        private final int[] struck = {NONE, NONE, NONE, NONE};
        private int covered;
        private boolean possible = true;

        Trial(Cell cell, Heard heard, Set<Limb> busy) {
            this.cell = cell;
            this.heard = heard;
            this.busy = busy;
        }

        Optional<Fit> fit(List<Part> parts, List<Integer> paths, boolean oneHand) {
            int ownSounds = 0;
            for (int i = 0; i < parts.size(); i++) {
                Part part = parts.get(i);
                for (Limb limb : part.limbs()) {
                    strike(limb, paths.get(i));
                }
                ownSounds |= 1 << cell.sounds().indexOf(paths.get(i));
                if (part.doublingLimb().isPresent() && (!part.accentsOnly() || isAccent(cell))) {
                    strike(part.doublingLimb().get(), part.doublingSound());
                }
            }
            Ornament ornament = Ornament.NONE;
            for (int i = 0; i < cell.sounds().size(); i++) {
                if ((ownSounds & (1 << i)) != 0) {
                    ornament = cell.ornaments().get(i);
                }
            }
            for (int i = 0; i < cell.sounds().size(); i++) {
                boolean own = (ownSounds & (1 << i)) != 0;
                possible &= cell.ornaments().get(i) == (own ? ornament : Ornament.NONE);
            }
            if (!possible || covered != (1 << cell.sounds().size()) - 1) {
                return Optional.empty();
            }
            Map<Limb, Integer> strikes = strikes();
            if (ornament.graceNotes() > 0) {
                possible &= oneHand;
                strike(parts.get(0).limbs().get(0).opposite(), paths.get(0));
            }
            return possible ? Optional.of(new Fit(paths, ornament, strikes)) : Optional.empty();
        }

        private void strike(Limb limb, int sound) {
            int index = cell.sounds().indexOf(sound);
            int before = struck[limb.ordinal()];
            if (index < 0
                    || !heard.able(limb.ordinal(), sound)
                    || busy.contains(limb)
                    || (before != NONE && before != sound)) {
                possible = false;
                return;
            }
            struck[limb.ordinal()] = sound;
            covered |= 1 << index;
        }

        private Map<Limb, Integer> strikes() {
            Map<Limb, Integer> strikes = new EnumMap<>(Limb.class);
            for (Limb limb : Limb.values()) {
                if (struck[limb.ordinal()] != NONE) {
                    strikes.put(limb, struck[limb.ordinal()]);
                }
            }
            return strikes;
        }
    }
}
