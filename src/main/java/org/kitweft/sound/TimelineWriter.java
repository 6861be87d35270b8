package org.kitweft.sound;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.kitweft.band.BandNote;
import org.kitweft.band.BandPart;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;

/** Lays a phrase out as a timeline: count-in, then each loop with its sections. */
final class TimelineWriter {
    private final Playable playable;
    private final Phrase phrase;
    private final PlaySettings settings;
    private final Feel feel;
    private final long loopTicks;
    private final Click click;
    private final Map<Tempo, List<Note>> hits = new HashMap<>();
    private final Map<Part, List<Note>> notes = new EnumMap<>(Part.class);
    private final List<Marker> markers = new ArrayList<>();
    private final List<Pace> paces = new ArrayList<>();

    TimelineWriter(Playable playable, PlaySettings settings) {
        this.playable = settings.stretch().of(playable);
        this.phrase = this.playable.phrase();
        this.settings = settings;
        this.feel = settings.stretch().feel();
        this.loopTicks = feel.rounds() * phrase.ticks();
        this.click = Click.beside(phrase.sections().get(0).groove().kit());
    }

    Timeline write() {
        int loops = Math.max(1, settings.loopsInAll());
        int bars = feel.rounds() * phrase.bars();
        if ((long) loops * bars > Timeline.MAX_BARS) {
            throw new IllegalArgumentException(
                    "%d loops of %d bars: expected at most %d bars in all"
                            .formatted(loops, bars, Timeline.MAX_BARS));
        }
        long from = countIn();
        for (int index = 0; index < loops; index++) {
            Practice.Loop loop = settings.loop(index);
            String name = name(index, loops, loop.tempo());
            for (int round = 0; round < feel.rounds(); round++) {
                long at = index * loopTicks + round * phrase.ticks();
                addSections(at, loop, name);
                if (loop.sounds()) {
                    addBand(at);
                }
            }
            if (loop.sounds()) {
                addDrums(index * loopTicks, loop.tempo());
            }
        }
        return new Timeline(tracks(), new TempoMap(paces), markers, from, loops * loopTicks);
    }

    private String name(int index, int loops, Tempo tempo) {
        String number = loops == 1 ? "" : " %d/%d".formatted(index + 1, loops);
        return settings.course().equals(Course.STEADY)
                ? number
                : "%s at %d".formatted(number, tempo.beatsPerMinute());
    }

    private List<Track> tracks() {
        List<Track> tracks = new ArrayList<>();
        notes.forEach(
                (part, played) ->
                        tracks.add(new Track(part, settings.mix().strip(part), Held.cut(played))));
        return tracks;
    }

    private long countIn() {
        Meter meter = phrase.sections().get(0).groove().grid().meter();
        long from = -settings.countInBars() * meter.barTicks();
        if (from < 0) {
            markers.add(new Marker(from, "count-in"));
            add(Part.CLICK, click.notes(meter, from, 0));
        }
        paces.add(new Pace(from, meter, settings.loop(0).tempo()));
        return from;
    }

    private void add(Part part, List<Note> more) {
        notes.computeIfAbsent(part, any -> new ArrayList<>()).addAll(more);
    }

    private void addDrums(long at, Tempo tempo) {
        if (settings.mix().hears(Part.DRUMS)) {
            List<Note> oneTurn = hits.computeIfAbsent(tempo, this::oneTurn);
            for (int turn = 0; turn < feel.turns(); turn++) {
                long turnAt = at + turn * feel.scaled(phrase.ticks());
                add(Part.DRUMS, oneTurn.stream().map(note -> note.later(turnAt)).toList());
            }
        }
    }

    private void addBand(long at) {
        for (BandPart player : playable.band()) {
            Part part = Part.of(player.name());
            if (settings.mix().hears(part)) {
                add(part, player.notes().stream().map(n -> note(part, player, n, at)).toList());
            }
        }
    }

    private static Note note(Part part, BandPart player, BandNote note, long at) {
        return new Note(
                at + note.tick(),
                note.durationTicks(),
                at + note.tick(),
                player.channel(),
                OptionalInt.of(player.program()),
                note.key(),
                note.velocity(),
                Set.of(),
                part);
    }

    private List<Note> oneTurn(Tempo tempo) {
        List<Note> oneTurn = new ArrayList<>();
        long at = 0;
        for (Section section : phrase.sections()) {
            Struck struck = new Struck(section.groove(), settings.withTempo(tempo));
            for (Hit hit : section.groove().hits()) {
                for (Note note : struck.notes(hit)) {
                    oneTurn.add(note.later(at));
                }
            }
            at += feel.scaled(section.groove().ticks());
        }
        return oneTurn;
    }

    private void addSections(long start, Practice.Loop loop, String name) {
        long at = start;
        for (Section section : phrase.sections()) {
            Meter meter = section.groove().grid().meter();
            long end = at + section.groove().ticks();
            markers.add(new Marker(at, section.role().id() + name));
            if (at > paces.get(paces.size() - 1).tick()) {
                paces.add(new Pace(at, meter, loop.tempo()));
            }
            if (settings.click() && loop.sounds() && settings.mix().hears(Part.CLICK)) {
                add(Part.CLICK, click.notes(meter, at, end));
            }
            at = end;
        }
    }
}
