package org.kitweft.score.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kitweft.band.Chord;
import org.kitweft.band.ChordChart;
import org.kitweft.score.engrave.EngravedSystem;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Score;

/**
 * Chord symbols over the lines of a staff: where a chord begins, and once more at the start of a
 * line. A chart shorter than the score starts again.
 */
final class ChordSymbols {
    private static final double SIZE = 10.5;
    private static final double APART = 5;

    /** What a line of symbols takes over a staff, in points. */
    static final double HEIGHT = 15;

    private final ChordChart chart;
    private final Score score;

    /**
     * @param score every bar of it written out
     */
    ChordSymbols(ChordChart chart, Score score) {
        this.chart = chart;
        this.score = score;
    }

    /** A symbol and where it stands. */
    private record Symbol(String text, int measure, long tick) {}

    /**
     * Places the symbols of one line of the staff.
     *
     * @param space a staff space in points
     * @param y the upper edge of the room for them
     */
    void place(SignList signs, EngravedSystem system, double space, double left, double y) {
        double free = left;
        for (Symbol symbol : symbols(system)) {
            double x = Math.max(free, left + system.x(symbol.measure(), symbol.tick()) * space);
            signs.text(Kind.TEXT, symbol.text(), TextStyle.SEMIBOLD, SIZE, x, y + SIZE, Owner.NONE);
            free = x + signs.fonts().text().width(TextStyle.SEMIBOLD, SIZE, symbol.text()) + APART;
        }
    }

    private List<Symbol> symbols(EngravedSystem system) {
        List<Symbol> symbols = new ArrayList<>();
        Optional<Optional<Chord>> before = Optional.empty();
        int first = system.firstMeasure();
        for (int m = first; m < first + system.measures(); m++) {
            Measure measure = score.measures().get(m);
            List<Optional<Chord>> bar = chart.bars().get(m % chart.bars().size());
            for (int i = 0; i < bar.size(); i++) {
                if (!before.equals(Optional.of(bar.get(i)))) {
                    long tick = measure.meter().barTicks() * i / bar.size();
                    symbols.add(new Symbol(bar.get(i).map(Chord::text).orElse("N.C."), m, tick));
                }
                before = Optional.of(bar.get(i));
            }
        }
        return symbols;
    }
}
