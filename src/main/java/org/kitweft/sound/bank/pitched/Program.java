package org.kitweft.sound.bank.pitched;

import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import org.kitweft.sound.bank.soundfont.Generator;
import org.kitweft.sound.bank.soundfont.Modulator;

/**
 * A pitched instrument and how it is spread over the keys.
 *
 * @param name at most 14 ASCII letters
 * @param roots keys that are rendered, rising; each serves the keys nearest to it
 * @param voice what renders them
 * @param loops whether its samples go on in a loop
 * @param level dB against the common loudness of pitched instruments
 * @param decay seconds in which the synthesizer lets a looped root fall by 60 dB; infinite for none
 * @param generators further parameters, by root
 * @param modulators its controllers
 */
public record Program(
        String name,
        List<Integer> roots,
        KeyVoice voice,
        boolean loops,
        double level,
        IntToDoubleFunction decay,
        IntFunction<Map<Generator, Integer>> generators,
        List<Modulator> modulators) {
    public Program {
        roots = List.copyOf(roots);
        modulators = List.copyOf(modulators);
    }

    /** The lowest key that the i-th root serves. */
    public int lowest(int i) {
        return i == 0 ? 0 : (roots.get(i - 1) + roots.get(i)) / 2 + 1;
    }

    /** The highest key that the i-th root serves. */
    public int highest(int i) {
        return i == roots.size() - 1 ? 127 : lowest(i + 1) - 1;
    }
}
