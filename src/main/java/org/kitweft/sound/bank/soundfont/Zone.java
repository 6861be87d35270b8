package org.kitweft.sound.bank.soundfont;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * When and how an instrument plays a sample.
 *
 * @param sample the sample's name
 * @param keys keys it answers to
 * @param velocities velocities it answers to
 * @param generators its other parameters
 * @param modulators its controllers
 */
public record Zone(
        String sample,
        Span keys,
        Span velocities,
        Map<Generator, Integer> generators,
        List<Modulator> modulators) {
    public Zone {
        // Sorted, so that one bank always gives the same bytes.
        generators = Collections.unmodifiableMap(new TreeMap<>(generators));
        modulators = List.copyOf(modulators);
    }
}
