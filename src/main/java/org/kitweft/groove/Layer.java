package org.kitweft.groove;

import java.util.Objects;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;

/**
 * A figure that one limb repeats under the sticking, from the start of the groove and with a length
 * of its own: it does not start again with the bar.
 *
 * @param limb who plays it
 * @param sound what is struck
 * @param stepsPerBeat 1 to 8, or 12: the figure's own steps
 * @param figure what is repeated
 */
public record Layer(Limb limb, SoundName sound, int stepsPerBeat, Figure figure) {

    public Layer {
        Objects.requireNonNull(limb, "limb");
        Objects.requireNonNull(sound, "sound");
        Objects.requireNonNull(figure, "figure");
        Grid.checkStepsPerBeat(stepsPerBeat);
    }

    /** As commands and files write it: {@code hi-hat.foot@2: - x - x}. */
    public String text() {
        return "%s@%d: %s".formatted(sound, stepsPerBeat, figure.text());
    }
}
