package org.kitweft.sound;

import java.util.List;
import java.util.Objects;
import org.kitweft.groove.Phrase;

/**
 * A phrase as it sounds, laid out in exact time: count-in, loops, grace notes and bounces written
 * out, muted limbs left out. Immutable; equal phrases and settings give equal timelines. It is not
 * bound to a device: file writers and players read it.
 *
 * <p>Tick 0 is where the phrase starts; the count-in, and grace notes of the very first hit, lie
 * before it.
 *
 * @param tracks one for each part that is heard, in the order of {@link Part}
 * @param tempo meter and tempo all along
 * @param markers by tick, ascending
 * @param from where it starts: 0, or before it where there is a count-in
 * @param to where the last loop ends; notes may ring on
 */
public record Timeline(
        List<Track> tracks, TempoMap tempo, List<Marker> markers, long from, long to) {
    /** The most bars that are laid out, all loops counted: hours of music. */
    public static final int MAX_BARS = 20_000;

    public Timeline {
        tracks = List.copyOf(tracks);
        Objects.requireNonNull(tempo, "tempo");
        markers = List.copyOf(markers);
        if (from > 0 || to <= 0) {
            throw new IllegalArgumentException(
                    "a timeline starts at tick 0 or before and ends after it, not %d to %d"
                            .formatted(from, to));
        }
    }

    /**
     * Lays out a phrase. Settings without end are laid out once.
     *
     * @throws IllegalArgumentException if that makes more than {@value #MAX_BARS} bars
     */
    public static Timeline of(Phrase phrase, PlaySettings settings) {
        return of(Playable.of(phrase), settings);
    }

    /**
     * Lays out a phrase with its band. The count-in is always heard: who asked for it needs it,
     * also where the click is left out.
     *
     * @throws IllegalArgumentException if that makes more than {@value #MAX_BARS} bars
     */
    public static Timeline of(Playable playable, PlaySettings settings) {
        return new TimelineWriter(playable, settings).write();
    }

    /** The notes of all tracks, in time. */
    public List<Note> notes() {
        return tracks.stream()
                .flatMap(track -> track.notes().stream())
                .sorted(Note.IN_TIME)
                .toList();
    }

    /** The tick of the first note, where that lies before the start, else the start. */
    public long firstTick() {
        return Math.min(
                from,
                tracks.stream()
                        .flatMap(track -> track.notes().stream())
                        .mapToLong(Note::tick)
                        .min()
                        .orElse(from));
    }
}
