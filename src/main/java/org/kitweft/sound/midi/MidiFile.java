package org.kitweft.sound.midi;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kitweft.file.SafeFile;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.kit.Sound;
import org.kitweft.sound.Marker;
import org.kitweft.sound.Note;
import org.kitweft.sound.Pace;
import org.kitweft.sound.Part;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.Track;

/**
 * Writes timelines as Standard MIDI Files, type 1 (RP-001, 1996): a first track with tempo, meter
 * and markers, then one track for each of the timeline's, by its name.
 *
 * <p>The resolution is the smallest multiple of 480 ticks per quarter note in which every note lies
 * on a whole tick. As {@link org.kitweft.groove.Ticks#PER_QUARTER} itself is such a multiple, and
 * below the format's limit of 32767, there always is one: no note is ever moved. Only the tempo is
 * rounded, to the format's whole microseconds per quarter note.
 *
 * <p>Tick 0 is the start of the count-in. Without one it is the start of the phrase, unless grace
 * notes lie before that: then one bar goes before, empty but for them.
 */
public final class MidiFile {
    private static final int TYPE = 1;

    private final Timeline timeline;
    private final Resolution resolution;
    private final long start;

    private MidiFile(Timeline timeline) {
        this.timeline = timeline;
        this.resolution = Resolution.of(timeline);
        this.start = start(timeline);
    }

    /**
     * Writes a file.
     *
     * @param replace whether a file that exists is replaced
     * @throws java.nio.file.FileAlreadyExistsException if it exists and is not to be replaced
     * @throws IOException if it cannot be written, in a sentence that names it
     */
    public static void write(Timeline timeline, Path target, boolean replace) throws IOException {
        byte[] bytes = bytes(timeline);
        SafeFile.write(target, replace ? Existing.REPLACE : Existing.KEEP, out -> out.write(bytes));
    }

    /** The content of the file. */
    public static byte[] bytes(Timeline timeline) {
        return new MidiFile(timeline).bytes();
    }

    /** Whole bars before the phrase, as many as hold the count-in and all early grace notes. */
    private static long start(Timeline timeline) {
        long early = timeline.from() - timeline.firstTick();
        long bar = timeline.tempo().paces().get(0).meter().barTicks();
        return timeline.from() - (early + bar - 1) / bar * bar;
    }

    private byte[] bytes() {
        List<byte[]> tracks = new ArrayList<>();
        tracks.add(conductor());
        timeline.tracks().forEach(track -> tracks.add(notes(track)));
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(Chunks.header(TYPE, tracks.size(), resolution.perQuarter()));
        tracks.forEach(file::writeBytes);
        return file.toByteArray();
    }

    private byte[] conductor() {
        TrackChunk chunk = new TrackChunk();
        for (Pace pace : timeline.tempo().paces()) {
            long tick = pace.equals(timeline.tempo().paces().get(0)) ? start : pace.tick();
            chunk.meter(at(tick), pace.meter());
            chunk.tempo(at(tick), pace.tempo().microsecondsPerQuarter(pace.meter()));
        }
        for (Marker marker : timeline.markers()) {
            chunk.marker(at(marker.tick()), marker.text());
        }
        return chunk.end(at(timeline.to()));
    }

    private byte[] notes(Track track) {
        TrackChunk chunk = new TrackChunk();
        chunk.name(track.name());
        boolean shared = track.part() == Part.CLICK && drums().isPresent();
        if (!shared) {
            track.channels().forEach(channel -> chunk.mix(channel, track.strip()));
        }
        for (Note note : track.notes()) {
            chunk.note(shared ? beside(note, track) : note, at(note.tick()), at(note.end()));
        }
        return chunk.end(at(timeline.to()));
    }

    private Optional<Track> drums() {
        return timeline.tracks().stream()
                .filter(track -> track.part() == Part.DRUMS)
                .filter(track -> track.channels().contains(Sound.PERCUSSION_CHANNEL))
                .findFirst();
    }

    /**
     * A click on the percussion channel, whose level is the drums': the difference goes into its
     * velocity, whose square the gain is (General MIDI Level 2, RP-024). Its pan is the drums' too.
     */
    private Note beside(Note note, Track click) {
        double drums = drums().map(track -> track.strip().level()).orElse(1.0);
        double factor = drums > 0 ? Math.sqrt(click.strip().level() / drums) : 1;
        return note.withVelocity(
                (int) Math.max(1, Math.min(127, Math.round(note.velocity() * factor))));
    }

    private long at(long tick) {
        return resolution.ticks(tick - start);
    }
}
