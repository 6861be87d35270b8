package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.core.ArithmeticUtils;
import org.kitweft.groove.Place;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Ornament;

/**
 * A target in small numbers: its sounds counted from 0 in the order of their names, and which step
 * belongs to which stroke of a sticking of the length sought, as the weaver lays it.
 */
final class Heard {
    private static final Limb[] LIMBS = Limb.values();

    private final Target target;
    private final int strokes;
    private final int period;
    private final List<SoundName> sounds;
    private final boolean[][] able;

    Heard(Target target, int strokes) {
        this.target = target;
        this.strokes = strokes;
        int barSteps = target.grid().stepsPerBar();
        long whole =
                target.grid().overTheBar()
                        ? (long) strokes / ArithmeticUtils.gcd(strokes, barSteps) * barSteps
                        : (long) (strokes + barSteps - 1) / barSteps * barSteps;
        this.period = (int) Math.min(whole, target.steps().size());
        this.sounds =
                target.steps().stream()
                        .flatMap(List::stream)
                        .map(Strike::sound)
                        .distinct()
                        .sorted()
                        .toList();
        this.able = new boolean[LIMBS.length][sounds.size()];
        for (Limb limb : LIMBS) {
            for (int sound = 0; sound < sounds.size(); sound++) {
                able[limb.ordinal()][sound] = target.kit().canStrike(limb, sounds.get(sound));
            }
        }
    }

    Target target() {
        return target;
    }

    /** Strokes of the sticking sought. */
    int strokes() {
        return strokes;
    }

    /** Steps after which the sticking and its paths start again, or all there are. */
    int period() {
        return period;
    }

    List<SoundName> sounds() {
        return sounds;
    }

    boolean able(int limb, int sound) {
        return able[limb][sound];
    }

    /** The steps of a period that a stroke is laid on, in time. */
    int[] positions(int stroke) {
        int[] positions = new int[(period - stroke + strokes - 1) / strokes];
        Arrays.setAll(positions, pass -> stroke + pass * strokes);
        return positions;
    }

    /** The places in the whole target that a stroke is laid on. */
    List<Place> places(int stroke) {
        List<Place> places = new ArrayList<>();
        for (int step = 0; step < target.steps().size(); step++) {
            if (step % period % strokes == stroke) {
                places.add(target.place(step));
            }
        }
        return places;
    }

    /**
     * What a step of the period asks of the sticking once layers have taken their sounds.
     *
     * @return {@link Cell#TORN} if the steps that fall on it in later periods ask for other things,
     *     or if it has a sound that stops another, or more than limbs can strike
     */
    Cell cell(int position, boolean[] layered) {
        Cell cell = cellAt(position, layered);
        for (int step = position + period; step < target.steps().size(); step += period) {
            if (!cellAt(step, layered).equals(cell)) {
                return Cell.TORN;
            }
        }
        return cell;
    }

    private Cell cellAt(int step, boolean[] layered) {
        List<Strike> strikes = target.steps().get(step);
        if (strikes.size() > LIMBS.length || silencesItself(strikes)) {
            return Cell.TORN;
        }
        List<Strike> left = new ArrayList<>();
        int[] numbers = new int[strikes.size()];
        for (Strike strike : strikes) {
            int number = number(strike.sound());
            if (!layered[number]) {
                numbers[left.size()] = number;
                left.add(strike);
            }
        }
        return Cell.of(Arrays.copyOf(numbers, left.size()), left);
    }

    private boolean silencesItself(List<Strike> strikes) {
        return silencing(strikes).size() > 1;
    }

    /** Two of the sounds of which one stops the other, or none. */
    List<SoundName> silencing(List<Strike> strikes) {
        for (Strike one : strikes) {
            for (Strike other : strikes) {
                if (one.sound().surface().equals(other.sound().surface())
                        && target.kit()
                                .sound(one.sound())
                                .stops()
                                .contains(other.sound().sound())) {
                    return List.of(one.sound(), other.sound());
                }
            }
        }
        return List.of();
    }

    /** Whether all strikes of a sound could be a layer's: none is ornamented. */
    boolean canBeLayered(int sound) {
        SoundName name = sounds.get(sound);
        return target.steps().stream()
                .flatMap(List::stream)
                .allMatch(s -> !s.sound().equals(name) || s.ornament() == Ornament.NONE);
    }

    int number(SoundName sound) {
        return sounds.indexOf(sound);
    }
}
