package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.kitweft.band.ChordChart;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;

/**
 * What a phrase is played with and does not hold itself, as far as it is to be written.
 *
 * @param tempo over the first bar; empty: not written
 * @param chart chords over every bar; one shorter than the phrase starts again
 */
public record PlayedWith(Optional<Tempo> tempo, Optional<ChordChart> chart) {
    /** Nothing of it is written. */
    public static final PlayedWith NOTHING = new PlayedWith(Optional.empty(), Optional.empty());

    public PlayedWith {
        Objects.requireNonNull(tempo, "tempo");
        Objects.requireNonNull(chart, "chart");
    }

    /** At a tempo, without a band. */
    public static PlayedWith at(Tempo tempo) {
        return new PlayedWith(Optional.of(tempo), Optional.empty());
    }

    /** The same with a chart or without. */
    public PlayedWith withChart(Optional<ChordChart> other) {
        return new PlayedWith(tempo, other);
    }

    /**
     * The chords of a bar, one that goes on within it written once.
     *
     * @param bar index in the phrase, from 0
     */
    List<ChordMark> chords(int bar, Meter meter) {
        List<ChordMark> marks = new ArrayList<>();
        if (chart.isEmpty()) {
            return marks;
        }
        var bars = chart.get().bars();
        var chords = bars.get(bar % bars.size());
        for (int i = 0; i < chords.size(); i++) {
            if (i == 0 || !chords.get(i).equals(chords.get(i - 1))) {
                marks.add(new ChordMark(meter.barTicks() * i / chords.size(), chords.get(i)));
            }
        }
        return marks;
    }
}
