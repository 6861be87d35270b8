package org.kitweft.score.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.kitweft.groove.Meter;

/**
 * One written bar.
 *
 * @param number as printed, from 1
 * @param section index of its section in the phrase, from 0
 * @param start where it is first played, in ticks from the start of the phrase
 * @param meter its meter
 * @param showsMeter whether the meter is written at its start
 * @param marks what else is said over it
 * @param heading words over its start, e.g. what the section is for
 * @param voices those that play or, in an empty bar, one with its rest
 * @param sticking sticking letters
 * @param counting counting syllables
 * @param keyNames names of the keys of pitched notes
 * @param opensRepeat whether a repeat starts here
 * @param repeatTimes how often the repeat that ends here is played; 0: none ends here
 */
public record Measure(
        int number,
        int section,
        long start,
        Meter meter,
        boolean showsMeter,
        BarMarks marks,
        Optional<String> heading,
        List<Voice> voices,
        List<Label> sticking,
        List<Label> counting,
        List<Label> keyNames,
        boolean opensRepeat,
        int repeatTimes) {
    public Measure {
        Objects.requireNonNull(meter, "meter");
        Objects.requireNonNull(marks, "marks");
        Objects.requireNonNull(heading, "heading");
        voices = List.copyOf(voices);
        sticking = List.copyOf(sticking);
        counting = List.copyOf(counting);
        keyNames = List.copyOf(keyNames);
        for (Voice voice : voices) {
            if (voice.ticks() != meter.barTicks()) {
                throw new IllegalArgumentException(
                        "bar %d, voice %d: lasts %d ticks, expected %d in %s"
                                .formatted(
                                        number,
                                        voice.number(),
                                        voice.ticks(),
                                        meter.barTicks(),
                                        meter));
            }
        }
    }

    /** Whether a repeat ends here. */
    public boolean closesRepeat() {
        return repeatTimes > 0;
    }
}
