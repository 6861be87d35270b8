package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.pattern.Ornament;

/**
 * Writes the onsets of one voice in one bar as chords and rests.
 *
 * <p>A note is written to the next note or to the end of its beat, whichever comes first: a drum
 * does not sustain, and short rests after each stroke would only clutter the page. What a single
 * plain or dotted note cannot fill is a rest; only a buzz, which does sustain, is tied instead.
 */
final class VoiceWriter {
    private final Grid grid;
    private final Meter meter;
    private final List<Event> events = new ArrayList<>();
    private final List<Tuplet> tuplets = new ArrayList<>();

    VoiceWriter(Grid grid) {
        this.grid = grid;
        this.meter = grid.meter();
    }

    /** What is struck at one instant. */
    record Onset(List<Head> heads, Set<Sign> signs, Ornament ornament) {}

    /** Writes the onsets, by their ticks in the bar, at least one. */
    Voice write(int number, Stems stems, NavigableMap<Long, Onset> onsets) {
        long start = 0;
        for (int beats : BeatGroups.of(meter)) {
            long length = beats * meter.beatTicks();
            writeGroup(start, length, beats, onsets.subMap(start, true, start + length, false));
            start += length;
        }
        List<Event> joined = BarRests.join(meter, events, tuplets);
        return new Voice(
                number,
                stems,
                Beaming.beamed(meter, joined, tuplets),
                Beaming.bracketed(joined, tuplets));
    }

    private void writeGroup(long start, long length, int beats, NavigableMap<Long, Onset> onsets) {
        if (onsets.isEmpty()) {
            BarRests.emptyGroup(start, length, meter).forEach(events::add);
            return;
        }
        if (beats > 1) {
            boolean ternary = beats == 3;
            int units = unitsOf(start, length, onsets);
            if (!Division.isNatural(ternary, units)) {
                for (int beat = 0; beat < beats; beat++) {
                    long from = start + beat * meter.beatTicks();
                    writeGroup(
                            from,
                            meter.beatTicks(),
                            1,
                            onsets.subMap(from, true, from + meter.beatTicks(), false));
                }
                return;
            }
        }
        boolean ternary = beats == 3 || (beats == 1 && meter.isCompound());
        NoteValue whole =
                meter.unit() == 4 || beats == 2 || meter.isCompound()
                        ? NoteValue.QUARTER
                        : NoteValue.EIGHTH;
        int units = unitsOf(start, length, onsets);
        if (ternary && !Division.isNatural(true, units)) {
            int natural = grid.stepsPerBeat();
            if (natural % units == 0 && Division.isNatural(true, natural)) {
                units = Division.isNatural(true, 3 * units) ? 3 * units : natural;
            }
        }
        writeCell(start, Division.of(length, ternary, whole, units), onsets);
    }

    private static int unitsOf(long start, long length, Map<Long, Onset> onsets) {
        List<Long> inCell = onsets.keySet().stream().map(tick -> tick - start).toList();
        return Division.fewestUnits(length, inCell);
    }

    private void writeCell(long start, Division division, NavigableMap<Long, Onset> onsets) {
        int firstEvent = events.size();
        NavigableMap<Integer, Onset> byUnit = new TreeMap<>();
        onsets.forEach(
                (tick, onset) ->
                        byUnit.put(Math.toIntExact((tick - start) / division.unitTicks()), onset));
        rests(start, division, 0, byUnit.firstKey());
        for (Map.Entry<Integer, Onset> entry : byUnit.entrySet()) {
            Integer next = byUnit.higherKey(entry.getKey());
            chord(
                    start,
                    division,
                    entry.getKey(),
                    next == null ? division.units() : next,
                    entry.getValue());
        }
        if (division.isTuplet()) {
            tuplets.add(
                    new Tuplet(
                            firstEvent,
                            events.size() - 1,
                            division.units(),
                            division.normal(),
                            division.value(),
                            true));
        }
    }

    private void chord(long start, Division division, int from, int to, Onset onset) {
        int length = division.longestNote(from, to - from);
        events.add(chord(start, division, from, length, onset, false));
        if (!onset.signs.contains(Sign.BUZZ)) {
            rests(start, division, from + length, to);
            return;
        }
        for (int at = from + length; at < to; ) {
            int tied = division.longestRest(at, to - at);
            events.add(chord(start, division, at, tied, onset, true));
            at += tied;
        }
    }

    private static Chord chord(
            long start, Division division, int at, int length, Onset onset, boolean tiedBack) {
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        signs.addAll(onset.signs);
        if (tiedBack) {
            signs.removeIf(sign -> sign != Sign.BUZZ);
        }
        return new Chord(
                start + at * division.unitTicks(),
                length * division.unitTicks(),
                division.valueOf(length),
                Division.dotsOf(length),
                onset.heads,
                signs,
                tiedBack ? Ornament.NONE : onset.ornament,
                tiedBack,
                List.of());
    }

    private void rests(long start, Division division, int from, int to) {
        for (int at = from; at < to; ) {
            int length = division.longestRest(at, to - at);
            events.add(
                    new Rest(
                            start + at * division.unitTicks(),
                            length * division.unitTicks(),
                            division.valueOf(length),
                            0,
                            false));
            at += length;
        }
    }
}
