package org.kitweft.score.model;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.kitweft.pattern.Ornament;

/**
 * All that one voice strikes at one instant, on one stem.
 *
 * @param tick where it starts, in ticks from the start of its bar
 * @param ticks how long it is written, which says nothing about how long it sounds
 * @param value its written value
 * @param dots 0 to 2
 * @param heads from low to high, at least one
 * @param signs what stands over it or on its stem
 * @param ornament grace notes before it, or a buzz
 * @param tiedBack whether it continues the chord before it and is not struck again
 * @param beams what each beam does here, outermost first; empty: flags or none
 */
public record Chord(
        long tick,
        long ticks,
        NoteValue value,
        int dots,
        List<Head> heads,
        Set<Sign> signs,
        Ornament ornament,
        boolean tiedBack,
        List<Beam> beams)
        implements Event {
    public Chord {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(ornament, "ornament");
        heads = List.copyOf(heads);
        signs = signs.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(signs));
        beams = List.copyOf(beams);
        if (heads.isEmpty()) {
            throw new IllegalArgumentException("a chord has at least one head");
        }
    }

    /** The same chord under other beams. */
    public Chord withBeams(List<Beam> other) {
        return new Chord(tick, ticks, value, dots, heads, signs, ornament, tiedBack, other);
    }

    /** The heads that carry the ornament's grace notes, from low to high. */
    public List<Head> gracedHeads() {
        return heads.stream()
                .filter(h -> h.hit().ornament() == ornament && ornament.graceNotes() > 0)
                .toList();
    }
}
