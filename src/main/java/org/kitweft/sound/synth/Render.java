package org.kitweft.sound.synth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.kitweft.sound.Note;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.Track;

/**
 * A timeline as samples, from its first note to its end and as long after it as one cares to read.
 * Reads like a stream, part after part.
 */
public final class Render {
    private record Event(long frame, boolean on, Note note) {}

    private final NoteStream stream;
    private final List<Event> events;
    private final long frames;
    private int sent;

    /**
     * @param stream newly opened; stays the caller's to close
     */
    public Render(Timeline timeline, NoteStream stream) {
        this.stream = stream;
        for (Track track : timeline.tracks()) {
            track.channels().forEach(channel -> stream.mix(track.part(), channel, track.strip()));
        }
        double start = timeline.tempo().seconds(timeline.firstTick());
        this.frames = frame(timeline, timeline.to(), start);
        this.events = new ArrayList<>();
        for (Note note : timeline.notes()) {
            events.add(new Event(frame(timeline, note.tick(), start), true, note));
            events.add(new Event(frame(timeline, note.end(), start), false, note));
        }
        events.sort(Comparator.comparingLong(Event::frame).thenComparing(Event::on));
    }

    private static long frame(Timeline timeline, long tick, double start) {
        return Math.round((timeline.tempo().seconds(tick) - start) * NoteStream.RATE);
    }

    /** Frames from the first note to the end of the timeline. */
    public long frames() {
        return frames;
    }

    /** Reads the next frames; see {@link NoteStream#read}. */
    public void read(float[] samples, int count) {
        long ahead = stream.position() + count + NoteStream.AHEAD + 1; // ends go a frame early
        while (sent < events.size() && events.get(sent).frame < ahead) {
            Event event = events.get(sent++);
            Note note = event.note;
            if (event.on) {
                stream.on(event.frame, note);
            } else {
                stream.off(event.frame, note);
            }
        }
        stream.read(samples, count);
    }
}
