package org.kitweft.band;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Role;
import org.kitweft.groove.Section;

/**
 * A phrase as the band sees it: its bars one after the other, and the chord of every instant. A
 * chart shorter than the phrase starts again. Ticks are written ones, from the start of the phrase.
 */
final class PhraseTime {

    /**
     * A bar of the phrase.
     *
     * @param index from 0, in the phrase
     * @param start where it starts
     * @param role what its section is for
     * @param groove what the drums play in its section
     * @param sectionStart where its section starts
     */
    record Bar(int index, long start, Role role, Groove groove, long sectionStart) {

        boolean opensSection() {
            return start == sectionStart;
        }

        Meter meter() {
            return groove.grid().meter();
        }

        long end() {
            return start + meter().barTicks();
        }
    }

    private final List<Bar> bars = new ArrayList<>();
    private final TreeMap<Long, Bar> byStart = new TreeMap<>();
    private final TreeMap<Long, Optional<Chord>> chords = new TreeMap<>();
    private final long end;

    /**
     * @throws IllegalArgumentException if the chart is longer than the phrase
     */
    PhraseTime(Phrase phrase, ChordChart chart) {
        if (chart.bars().size() > phrase.bars()) {
            throw new IllegalArgumentException(
                    "the chart has %d bars, the phrase only %d"
                            .formatted(chart.bars().size(), phrase.bars()));
        }
        long start = 0;
        for (Section section : phrase.sections()) {
            long sectionStart = start;
            for (int i = 0; i < section.groove().bars(); i++) {
                Bar bar =
                        new Bar(bars.size(), start, section.role(), section.groove(), sectionStart);
                bars.add(bar);
                byStart.put(start, bar);
                addChords(bar, chart.bars().get(bar.index() % chart.bars().size()));
                start = bar.end();
            }
        }
        end = start;
    }

    private void addChords(Bar bar, List<Optional<Chord>> slots) {
        for (int i = 0; i < slots.size(); i++) {
            long at = bar.start() + bar.meter().barTicks() * i / slots.size();
            Map.Entry<Long, Optional<Chord>> before = chords.lastEntry();
            if (before == null || !before.getValue().equals(slots.get(i))) {
                chords.put(at, slots.get(i));
            }
        }
    }

    List<Bar> bars() {
        return bars;
    }

    /** The tick after the last. */
    long end() {
        return end;
    }

    /** The chord of an instant; beyond the end that of the next time round. */
    Optional<Chord> chordAt(long tick) {
        return chords.floorEntry(tick < end ? tick : tick - end).getValue();
    }

    /** Where the chord after this instant begins, at most the end. */
    long nextChange(long tick) {
        Long change = chords.higherKey(tick);
        return change == null ? Math.max(end, tick) : change;
    }

    /** Whether another chord begins here. */
    boolean changesAt(long tick) {
        return chords.containsKey(tick);
    }

    /** The first beat after an instant. */
    long nextBeat(long tick) {
        Bar bar = barAt(tick);
        long beat = bar.meter().beatTicks();
        return bar.start() + ((tick - bar.start()) / beat + 1) * beat;
    }

    MetricPlace placeOf(long tick) {
        Bar bar = barAt(tick);
        return MetricPlace.of(tick - bar.start(), bar.meter());
    }

    private Bar barAt(long tick) {
        return byStart.floorEntry(tick).getValue();
    }

    /**
     * Where something written in a bar sounds. The band bends time as the drums do: beside steps in
     * pairs with their swing, beside triplets on thirds of the beat where the style swings or
     * halves would rub; drums in whole beats leave the style's own swing.
     */
    static long sounding(Bar bar, long written, int pulses, int styleSwing) {
        Grid grid = bar.groove().grid();
        int steps = grid.stepsPerBeat();
        long inSection = written - bar.sectionStart();
        boolean triplets = steps % 3 == 0 || (steps == 1 && bar.meter().isCompound());
        boolean swings = styleSwing > Grid.STRAIGHT;
        if (triplets
                && (bar.meter().isCompound()
                        || swings
                        || steps == 3
                        || (steps == 6 && pulses == 4))) {
            return bar.start() + onThirds(written - bar.start(), bar.meter().beatTicks());
        }
        if (steps % 2 != 0 && swings) {
            Grid eighths = new Grid(bar.meter(), 2, styleSwing, false);
            return bar.sectionStart() + eighths.sounding(inSection, 2);
        }
        return bar.sectionStart() + grid.sounding(inSection, pulses);
    }

    /**
     * The first quarter of a beat goes to its second third, the half and the last quarter to the
     * last.
     */
    private static long onThirds(long inBar, long beat) {
        long inBeat = inBar % beat;
        long third = inBeat == 0 ? 0 : inBeat < beat / 2 ? 1 : 2;
        return inBeat * 3 % beat == 0 ? inBar : inBar - inBeat + third * beat / 3;
    }
}
