package org.kitweft.score.page;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.LegendSigns;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.LegendEntry;
import org.kitweft.score.model.Score;

/** The legend: each notehead of a score on a little staff, its sound's name under it. */
public final class LegendBlock {
    private static final double SPACE = 3.6;
    private static final double NAME_SIZE = 7.5;
    private static final double GAP = 12;
    private static final double STAFF_TO_NAME = 8;

    private final Engraver engraver;
    private final List<List<LegendEntry>> rows = new ArrayList<>();
    private final Score score;

    /** The legend of a score in a width in points. */
    public LegendBlock(Engraver engraver, Score score, double width) {
        this.engraver = engraver;
        this.score = score;
        double used = 0;
        for (LegendEntry entry : score.legend()) {
            double cell = cell(entry);
            if (rows.isEmpty() || used + cell > width) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(entry);
            used += cell;
        }
    }

    private double cell(LegendEntry entry) {
        return GAP
                + Math.max(
                        26,
                        engraver.fonts().text().width(TextStyle.REGULAR, NAME_SIZE, entry.words()));
    }

    /** Whether there is nothing to say. */
    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** How high it is in points. */
    public double height() {
        return rows.size() * rowHeight();
    }

    private static double rowHeight() {
        return 10.5 * SPACE + STAFF_TO_NAME + NAME_SIZE;
    }

    /** Places it with its upper left corner at a point. */
    public void place(SignList signs, double x, double y) {
        double top = y;
        for (List<LegendEntry> row : rows) {
            double middleLine = top + 5 * SPACE;
            double width = row.stream().mapToDouble(this::cell).sum();
            SignList staff = new SignList(engraver.fonts());
            LegendSigns.staff(staff, width / SPACE);
            double at = x;
            double baseLine = middleLine + 4 * SPACE + STAFF_TO_NAME + NAME_SIZE * 0.7;
            for (LegendEntry entry : row) {
                double cell = cell(entry);
                LegendSigns.note(staff, entry, score.clef(), (at - x + cell / 2) / SPACE);
                signs.centred(
                        Kind.ASIDE,
                        entry.words(),
                        TextStyle.REGULAR,
                        NAME_SIZE,
                        at + cell / 2,
                        baseLine,
                        Owner.NONE);
                at += cell;
            }
            staff.signs().forEach(sign -> signs.add(sign.moved(SPACE, x, middleLine)));
            top += rowHeight();
        }
    }
}
