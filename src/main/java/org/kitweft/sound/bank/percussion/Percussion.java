package org.kitweft.sound.bank.percussion;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The whole percussion channel: General MIDI 1 keys 35 to 81 (RP-003, 1991), and keys 27 to 34 and
 * 82 to 87 that General MIDI 2 adds (RP-024, 1999).
 */
public final class Percussion {
    private Percussion() {}

    /** All sounds by rising key. */
    public static List<PercussionSound> all() {
        return Stream.of(
                        Drums.all(),
                        Cymbals.all(),
                        HandDrums.all(),
                        Bells.all(),
                        Blocks.all(),
                        Effects.all())
                .flatMap(List::stream)
                .sorted(Comparator.comparingInt(PercussionSound::key))
                .toList();
    }
}
