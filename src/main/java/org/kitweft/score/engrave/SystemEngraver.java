package org.kitweft.score.engrave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.Label;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Score;

/** Places the signs of one line. Used once. */
final class SystemEngraver {
    private static final double OVER_SIGNS = 0.7;
    private static final double UNDER_SIGNS = 0.7;
    private static final double ROW_GAP = 0.55;

    private final Fonts fonts;
    private final Score score;
    private final EngraveSettings settings;
    private final Prelude prelude;
    private final List<MeasureShape> shapes;
    private final int from;
    private final int to;
    private final SignList signs;

    SystemEngraver(
            Fonts fonts,
            Score score,
            EngraveSettings settings,
            Prelude prelude,
            List<MeasureShape> shapes,
            int from,
            int to) {
        this.fonts = fonts;
        this.score = score;
        this.settings = settings;
        this.prelude = prelude;
        this.shapes = shapes;
        this.from = from;
        this.to = to;
        this.signs = new SignList(fonts);
    }

    EngravedSystem engrave() {
        double stretch = stretch();
        double width = naturalWidth(stretch);
        staffLines(width);
        List<NavigableMap<Long, Double>> xOfTicks = new ArrayList<>();
        List<NavigableMap<Long, Double>> columnXs = new ArrayList<>();
        List<Double> starts = new ArrayList<>();
        double x = 0;
        double middle = MeasureShape.plainMiddle(fonts.music());
        for (int m = from; m < to; m++) {
            MeasureShape shape = shapes.get(m);
            starts.add(x);
            prelude.place(signs, m, x, m == from);
            double at = x + lead(m);
            double[] gaps = shape.gaps(stretch);
            NavigableMap<Long, Double> columns = new TreeMap<>();
            NavigableMap<Long, Double> middles = new TreeMap<>();
            for (int c = 0; c < gaps.length; c++) {
                columns.put(shape.columns().get(c).tick(), at);
                middles.put(shape.columns().get(c).tick(), at + middle);
                at += gaps[c];
            }
            columnXs.add(columns);
            middles.put(shape.measure().meter().barTicks(), at);
            xOfTicks.add(middles);
            double end = at + prelude.atEnd(m);
            new MeasureEngraver(fonts, score.clef(), signs, shape, m, columns, x + lead(m), at)
                    .engrave();
            barLine(m, end);
            x = end;
        }
        new WordsOver(signs, score, from, width, starts, xOfTicks).place(settings.barNumbers());
        rows(columnXs, middle);
        return new EngravedSystem(fonts, signs.signs(), width, from, xOfTicks);
    }

    private double lead(int measure) {
        return shapes.get(measure).leadIn()
                + prelude.withinLine(measure)
                + (measure == from ? prelude.atLineStart(measure) : 0);
    }

    private double naturalWidth(double stretch) {
        double width = 0;
        for (int m = from; m < to; m++) {
            width += lead(m) + Arrays.stream(shapes.get(m).gaps(stretch)).sum() + prelude.atEnd(m);
        }
        return width;
    }

    /** The stretch that fills the width, by bisection; at most what the settings allow. */
    private double stretch() {
        if (naturalWidth(settings.mostStretch()) <= settings.width()) {
            return settings.mostStretch();
        }
        double low = 0;
        double high = settings.mostStretch();
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (naturalWidth(middle) > settings.width()) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private void staffLines(double width) {
        double half = fonts.music().recommended("staffLineThickness") / 2;
        for (int line = -2; line <= 2; line++) {
            signs.box(Kind.STAFF_LINE, 0, line - half, width, line + half, Owner.NONE);
        }
    }

    private void barLine(int m, double end) {
        double thin = fonts.music().recommended("thinBarlineThickness");
        double thick = fonts.music().recommended("thickBarlineThickness");
        Owner owner = Owner.of(m, 0, score.measures().get(m).meter().barTicks());
        Measure measure = score.measures().get(m);
        boolean repeatFollows =
                m + 1 < to && shapes.get(m + 1).measure().opensRepeat() && !showsMeter(m + 1);
        if (measure.closesRepeat()) {
            prelude.repeatDots(signs, end - thick - 0.4 - thin - 0.3 - 0.4, owner);
            signs.box(Kind.BAR_LINE, end - thick - 0.4 - thin, -2, end - thick - 0.4, 2, owner);
            signs.box(Kind.BAR_LINE, end - thick, -2, end, 2, owner);
            if (measure.repeatTimes() > 2) {
                String times = measure.repeatTimes() + "×";
                double size = Measures.HEADING_SIZE;
                double textWidth = fonts.text().width(TextStyle.SEMIBOLD, size, times);
                double top = signs.top(end - textWidth, end, -2);
                signs.text(
                        Kind.REPEAT_TIMES,
                        times,
                        TextStyle.SEMIBOLD,
                        size,
                        end - textWidth,
                        top - OVER_SIGNS,
                        owner);
            }
        } else if (m == score.measures().size() - 1) {
            signs.box(Kind.BAR_LINE, end - thick - 0.4 - thin, -2, end - thick - 0.4, 2, owner);
            signs.box(Kind.BAR_LINE, end - thick, -2, end, 2, owner);
        } else if (!repeatFollows) {
            signs.box(Kind.BAR_LINE, end - thin, -2, end, 2, owner);
        }
    }

    private boolean showsMeter(int m) {
        return score.measures().get(m).showsMeter();
    }

    /** Sticking, counting and key names, each row on one base line. */
    private void rows(List<NavigableMap<Long, Double>> columnXs, double middle) {
        double y = Math.max(signs.bottom(0, Double.MAX_VALUE, 3.2), 3.2);
        List<Measure> measures = score.measures().subList(from, to);
        if (measures.stream().anyMatch(m -> !m.sticking().isEmpty())) {
            y += UNDER_SIGNS + TextFont.CAP_HEIGHT * Measures.STICKING_SIZE;
            for (int m = from; m < to; m++) {
                for (Label label : score.measures().get(m).sticking()) {
                    sticking(m, label, columnXs.get(m - from).get(label.tick()) + middle, y);
                }
            }
        }
        for (boolean keys : new boolean[] {true, false}) {
            Kind kind = keys ? Kind.KEY_NAME : Kind.COUNT;
            if (measures.stream().allMatch(m -> (keys ? m.keyNames() : m.counting()).isEmpty())) {
                continue;
            }
            y += ROW_GAP + TextFont.CAP_HEIGHT * Measures.COUNT_SIZE;
            for (int m = from; m < to; m++) {
                Measure measure = score.measures().get(m);
                for (Label label : keys ? measure.keyNames() : measure.counting()) {
                    signs.centred(
                            kind,
                            label.text(),
                            TextStyle.REGULAR,
                            Measures.COUNT_SIZE,
                            columnXs.get(m - from).get(label.tick()) + middle,
                            y,
                            Owner.of(m, 0, label.tick()));
                }
            }
        }
    }

    private void sticking(int m, Label label, double x, double y) {
        Owner owner = Owner.of(m, 0, label.tick());
        double size = Measures.STICKING_SIZE;
        double half = fonts.text().width(TextStyle.SEMIBOLD, size, label.text()) / 2;
        signs.text(Kind.STICKING, label.text(), TextStyle.SEMIBOLD, size, x - half, y, owner);
        if (!label.grace().isEmpty()) {
            double small = Measures.GRACE_LETTER_SIZE;
            double width = fonts.text().width(TextStyle.SEMIBOLD, small, label.grace());
            signs.text(
                    Kind.STICKING,
                    label.grace(),
                    TextStyle.SEMIBOLD,
                    small,
                    x - half - width - 0.15,
                    y,
                    owner);
        }
    }
}
