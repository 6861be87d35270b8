package org.kitweft.sound;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Section;

/** Lays a phrase out as a timeline: count-in, then each loop with its sections. */
final class TimelineWriter {
    private final Phrase phrase;
    private final PlaySettings settings;
    private final Click click;
    private final List<Note> clicks = new ArrayList<>();
    private final List<Marker> markers = new ArrayList<>();
    private final List<Pace> paces = new ArrayList<>();

    TimelineWriter(Phrase phrase, PlaySettings settings) {
        this.phrase = phrase;
        this.settings = settings;
        this.click = Click.beside(phrase.sections().get(0).groove().kit());
    }

    Timeline write() {
        int loops = Math.max(1, settings.loops());
        if ((long) loops * phrase.bars() > Timeline.MAX_BARS) {
            throw new IllegalArgumentException(
                    "%d loops of %d bars: expected at most %d bars in all"
                            .formatted(loops, phrase.bars(), Timeline.MAX_BARS));
        }
        long from = countIn();
        List<Note> onePass = onePass();
        List<Note> drums = new ArrayList<>(loops * onePass.size());
        for (int loop = 0; loop < loops; loop++) {
            long at = loop * phrase.ticks();
            onePass.forEach(note -> drums.add(note.later(at)));
            addSections(at, loops == 1 ? "" : " %d/%d".formatted(loop + 1, loops));
        }
        List<Track> tracks = new ArrayList<>();
        tracks.add(new Track(Track.DRUMS, Held.cut(drums)));
        if (!clicks.isEmpty()) {
            tracks.add(new Track(Track.CLICK, clicks));
        }
        return new Timeline(tracks, new TempoMap(paces), markers, from, loops * phrase.ticks());
    }

    private long countIn() {
        Meter meter = phrase.sections().get(0).groove().grid().meter();
        long from = -settings.countInBars() * meter.barTicks();
        if (from < 0) {
            markers.add(new Marker(from, "count-in"));
            clicks.addAll(click.notes(meter, from, 0));
        }
        paces.add(new Pace(from, meter, settings.tempo()));
        return from;
    }

    private List<Note> onePass() {
        List<Note> notes = new ArrayList<>();
        long at = 0;
        for (Section section : phrase.sections()) {
            Struck struck = new Struck(section.groove(), settings);
            for (Hit hit : section.groove().hits()) {
                for (Note note : struck.notes(hit)) {
                    notes.add(note.later(at));
                }
            }
            at += section.groove().ticks();
        }
        return notes;
    }

    private void addSections(long start, String loop) {
        long at = start;
        for (Section section : phrase.sections()) {
            Meter meter = section.groove().grid().meter();
            long end = at + section.groove().ticks();
            markers.add(new Marker(at, section.role().id() + loop));
            if (at > paces.get(paces.size() - 1).tick()) {
                paces.add(new Pace(at, meter, settings.tempo()));
            }
            if (settings.click()) {
                clicks.addAll(click.notes(meter, at, end));
            }
            at = end;
        }
    }
}
