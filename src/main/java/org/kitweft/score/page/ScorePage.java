package org.kitweft.score.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.kitweft.score.engrave.EngraveSettings;
import org.kitweft.score.engrave.EngravedScore;
import org.kitweft.score.engrave.EngravedSystem;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.PlacedSign;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.engrave.TooDenseException;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.Score;

/** Lays a score on sheets: a title, the lines of the staff, the legend. */
public final class ScorePage {
    /** A staff space in points: a staff of 6.5 mm, about what printed drum parts have. */
    public static final double SPACE = 4.6;

    /** The smallest staff that is still readable on paper: 4.2 mm. Our own choice. */
    public static final double SMALLEST_SPACE = 3;

    private static final double MARGIN = 42;
    private static final double TITLE_SIZE = 18;
    private static final double BETWEEN_SYSTEMS = 22;

    private final Engraver engraver;
    private final Paper paper;

    /** Lays on some paper. */
    public ScorePage(Engraver engraver, Paper paper) {
        this.engraver = engraver;
        this.paper = paper;
    }

    /**
     * Engraves a score for a width, with a smaller staff where a bar would not fit otherwise.
     *
     * @param points the width in points
     * @throws TooDenseException if a bar does not fit the smallest staff
     */
    public static Scaled engrave(Engraver engraver, Score score, double points) {
        double space = SPACE;
        while (true) {
            try {
                return new Scaled(
                        engraver.engrave(score, EngraveSettings.ofWidth(points / space)), space);
            } catch (TooDenseException e) {
                double fitting = points / (e.needed() + 0.5);
                if (space <= SMALLEST_SPACE || fitting < SMALLEST_SPACE) {
                    throw e;
                }
                space = Math.min(fitting, space * 0.98);
            }
        }
    }

    /**
     * An engraved score and how large it is drawn.
     *
     * @param engraved its lines
     * @param space a staff space in points
     */
    public record Scaled(EngravedScore engraved, double space) {}

    /**
     * A score on as many sheets as it takes.
     *
     * @param title over the first line; may be empty
     * @throws TooDenseException if a bar does not fit the smallest staff
     */
    public Sheets pages(Score score, String title) {
        return pages(score, title, true);
    }

    /** As {@link #pages(Score, String)}, with the legend at the end or without. */
    public Sheets pages(Score score, String title, boolean withLegend) {
        double width = paper.width() - 2 * MARGIN;
        Scaled scaled = engrave(engraver, score, width);
        List<Sheet> sheets = new ArrayList<>();
        Set<String> unwritable = new LinkedHashSet<>();
        SignList signs = new SignList(engraver.fonts());
        double y = MARGIN;
        if (!title.isBlank()) {
            y += TITLE_SIZE;
            signs.text(Kind.TEXT, title, TextStyle.BOLD, TITLE_SIZE, MARGIN, y, Owner.NONE);
            unwritable.addAll(signs.unwritable());
            y += 20;
        }
        for (EngravedSystem system : scaled.engraved().systems()) {
            double height = system.height() * scaled.space();
            if (y + height > paper.height() - MARGIN && !signs.signs().isEmpty()) {
                sheets.add(new Sheet(paper.width(), paper.height(), signs.signs()));
                signs = new SignList(engraver.fonts());
                y = MARGIN;
            }
            place(signs, system, scaled.space(), MARGIN, y);
            y += height + BETWEEN_SYSTEMS;
        }
        LegendBlock legend = new LegendBlock(engraver, score, width);
        if (withLegend && !legend.isEmpty()) {
            if (y + legend.height() > paper.height() - MARGIN) {
                sheets.add(new Sheet(paper.width(), paper.height(), signs.signs()));
                signs = new SignList(engraver.fonts());
                y = MARGIN;
            }
            legend.place(signs, MARGIN, y);
        }
        unwritable.addAll(signs.unwritable());
        sheets.add(new Sheet(paper.width(), paper.height(), signs.signs()));
        return new Sheets(title, sheets, List.copyOf(unwritable));
    }

    /**
     * A score on one sheet that is just as large as it needs, for pictures.
     *
     * @param width in points, margins included
     */
    public Sheet cutOut(Score score, double width) {
        double margin = 12;
        Scaled scaled = engrave(engraver, score, width - 2 * margin);
        SignList signs = new SignList(engraver.fonts());
        double y = margin;
        double right = 0;
        for (EngravedSystem system : scaled.engraved().systems()) {
            place(signs, system, scaled.space(), margin, y);
            y += system.height() * scaled.space() + BETWEEN_SYSTEMS;
            right = Math.max(right, system.width() * scaled.space());
        }
        for (PlacedSign sign : signs.signs()) {
            // Words over a short staff may be longer than it.
            right = Math.max(right, sign.bounds().getMaxX() - margin);
        }
        return new Sheet(right + 2 * margin, y - BETWEEN_SYSTEMS + margin, signs.signs());
    }

    /** Places a line of a score with its highest point at {@code y}. */
    public static void place(
            SignList signs, EngravedSystem system, double space, double x, double y) {
        for (PlacedSign sign : system.signs()) {
            signs.add(sign.moved(space, x, y - system.top() * space));
        }
    }
}
