package org.kitweft.band;

import java.util.List;

/**
 * What one player of the band plays.
 *
 * @param name {@code bass}, {@code comping} or {@code punches}: also the name of its track
 * @param channel MIDI channel, 1 to 16 as musicians count
 * @param program MIDI program, 0 to 127 as sent on the wire
 * @param notes in time, at one instant from low to high; none reaches beyond the phrase
 */
public record BandPart(String name, int channel, int program, List<BandNote> notes) {
    public BandPart {
        notes = List.copyOf(notes);
        if (channel < 1 || channel > 16 || program < 0 || program > 127) {
            throw new IllegalArgumentException(
                    "channel %d, program %d: expected 1 to 16 and 0 to 127"
                            .formatted(channel, program));
        }
    }

    /**
     * What of it lies between two instants, as a part that starts at the first of them: for those
     * who practise some bars alone. A note that sounds on beyond the second is cut there; one that
     * began before the first is left out.
     */
    public BandPart between(long from, long to) {
        List<BandNote> cut =
                notes.stream()
                        .filter(note -> note.tick() >= from && note.tick() < to)
                        .map(
                                note ->
                                        new BandNote(
                                                note.tick() - from,
                                                Math.min(note.durationTicks(), to - note.tick()),
                                                note.key(),
                                                note.velocity()))
                        .toList();
        return new BandPart(name, channel, program, cut);
    }
}
