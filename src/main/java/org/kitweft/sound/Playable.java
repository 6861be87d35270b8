package org.kitweft.sound;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.kitweft.band.Arrangement;
import org.kitweft.band.BandNote;
import org.kitweft.band.BandPart;
import org.kitweft.groove.Phrase;

/**
 * What a player plays: a phrase, and what the band plays to it. Immutable; what the band plays is
 * worked out once, when it is made.
 *
 * @param phrase for the drums
 * @param band none, or parts of different names, all of them of {@link Part}
 */
public record Playable(Phrase phrase, List<BandPart> band) {
    public Playable {
        Objects.requireNonNull(phrase, "phrase");
        band = List.copyOf(band);
        Set<Part> seen = new HashSet<>();
        for (BandPart player : band) {
            if (!seen.add(Part.of(player.name()))) {
                throw new IllegalArgumentException(
                        "the band has two parts called " + player.name());
            }
            long end = player.notes().stream().mapToLong(BandNote::end).max().orElse(0);
            if (end > phrase.ticks()) {
                throw new IllegalArgumentException(
                        "the %s plays to tick %d: the phrase ends at %d"
                                .formatted(player.name(), end, phrase.ticks()));
            }
        }
    }

    /** A phrase without a band. */
    public static Playable of(Phrase phrase) {
        return new Playable(phrase, List.of());
    }

    /**
     * A phrase with a band.
     *
     * @throws IllegalArgumentException if the chart is longer than the phrase
     */
    public static Playable of(Phrase phrase, Arrangement arrangement) {
        return new Playable(phrase, arrangement.play(phrase));
    }

    /**
     * Some of its bars, to be practised alone; notes of the band that reach beyond them are cut.
     *
     * @param from the first bar, from 1
     * @param to the last bar
     * @throws IllegalArgumentException if the phrase does not have them
     */
    public Playable bars(int from, int to) {
        Phrase cut = phrase.bars(from, to);
        long start = from == 1 ? 0 : phrase.bars(1, from - 1).ticks();
        long end = start + cut.ticks();
        List<BandPart> players = band.stream().map(player -> player.between(start, end)).toList();
        return new Playable(cut, players);
    }
}
