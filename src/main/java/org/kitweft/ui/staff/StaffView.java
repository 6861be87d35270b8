package org.kitweft.ui.staff;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.Scrollable;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;
import org.kitweft.kit.Limb;
import org.kitweft.score.engrave.EngravedSystem;
import org.kitweft.score.engrave.Palette;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.Painted;
import org.kitweft.ui.theme.Paints;

/** Paints engraved lines and the playhead over them. */
final class StaffView extends Painted implements Scrollable {
    private static final long serialVersionUID = 1;
    private static final double SPACE = 6.6;

    /**
     * Of the wished size: a single bar under tempo, swing and chords then fits beside the grid on a
     * screen 800 high.
     */
    private static final double SMALLEST = 0.6;

    private static final int MARGIN = 9;

    private final transient Playhead playhead;
    private transient Optional<Engraving> engraving = Optional.empty();
    private double factor = 1;
    private String fault = "";

    StaffView(Playhead playhead) {
        this.playhead = playhead;
        setOpaque(true);
        setFocusable(true);
        addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusGained(FocusEvent event) {
                        repaint();
                    }

                    @Override
                    public void focusLost(FocusEvent event) {
                        repaint();
                    }
                });
    }

    void show(Engraving other) {
        engraving = Optional.of(other);
        fault = "";
        revalidate();
        repaint();
    }

    /** Says in one line why there is no staff. */
    void fault(String line) {
        engraving = Optional.empty();
        fault = line;
        revalidate();
        repaint();
    }

    void enlarge(double other) {
        factor = other;
    }

    /** Pixels of a staff space as wished for. */
    private double wished() {
        return UIScale.scale((float) (SPACE * factor));
    }

    /** Staff spaces that lines in so many pixels may take. */
    double spaces(int width) {
        return Math.max(30, (width - 2.0 * margin()) / wished());
    }

    private int margin() {
        return UIScale.scale(MARGIN);
    }

    /**
     * Pixels of a staff space; fewer where a dense bar needs a longer line than there is, or where
     * the first line is a little higher than the view, so that it is seen whole.
     */
    private double space() {
        double room = getWidth() - 2.0 * margin();
        double space =
                engraving
                        .map(e -> Math.min(wished(), Math.max(1, room / e.width())))
                        .orElse(wished());
        if (engraving.isPresent() && getParent() != null && getParent().getHeight() > 0) {
            double high =
                    (getParent().getHeight() - 2.0 * margin()) / engraving.get().firstHeight();
            return Math.min(space, Math.max(high, SMALLEST * space));
        }
        return space;
    }

    /** The place of the note at a point. */
    Optional<Place> placeAt(int x, int y) {
        double space = space();
        return engraving.flatMap(e -> e.placeAt((x - margin()) / space, (y - margin()) / space));
    }

    /** Where the line of a step lies. */
    Optional<Rectangle> lineOf(Place place) {
        double space = space();
        return engraving
                .flatMap(e -> e.at(place))
                .map(
                        at ->
                                new Rectangle(
                                        0,
                                        (int) (margin() + (at.getY() - 8) * space),
                                        getWidth(),
                                        (int) (16 * space)));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Paints.smooth(graphics);
        try {
            g.setColor(Inks.CANVAS.color());
            g.fill(g.getClipBounds());
            if (!fault.isEmpty()) {
                g.setColor(Inks.FAULT.color());
                g.drawString(fault, margin(), margin() + g.getFontMetrics().getAscent());
            }
            if (isFocusOwner()) {
                g.setColor(Inks.FOCUS.color(90));
                g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
            }
            engraving.ifPresent(e -> paint(g, e));
        } finally {
            g.dispose();
        }
    }

    private void paint(Graphics2D g, Engraving shown) {
        double space = space();
        Rectangle clip = g.getClipBounds();
        g.translate(margin(), margin());
        g.scale(space, space);
        playhead.written()
                .flatMap(shown::at)
                .ifPresent(
                        at -> {
                            g.setColor(Inks.LIGHT.color(190));
                            g.setStroke(
                                    new BasicStroke(
                                            1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                            g.draw(
                                    new Line2D.Double(
                                            at.getX(), at.getY() - 4, at.getX(), at.getY() + 4));
                        });
        Set<Hit> struck = new HashSet<>(playhead.struck());
        // Where a groove comes twice its hits are equal: only those of the bar that sounds light
        // up.
        int sounding = playhead.written().map(place -> place.bar() - 1).orElse(-1);
        Palette palette = palette();
        List<EngravedSystem> systems = shown.score().systems();
        for (int i = 0; i < systems.size(); i++) {
            EngravedSystem system = systems.get(i);
            double middle = shown.middles().get(i);
            double top = margin() + (middle + system.top() - 1) * space;
            double bottom = margin() + (middle + system.bottom() + 1) * space;
            if (bottom >= clip.y && top <= clip.y + clip.height) {
                Graphics2D line = (Graphics2D) g.create();
                line.translate(0, middle);
                system.paint(
                        line,
                        palette,
                        sign ->
                                sign.owner().measure() == sounding
                                        && sign.owner().hit().filter(struck::contains).isPresent());
                line.dispose();
            }
        }
    }

    private static Palette palette() {
        Color text = Inks.TEXT.color();
        return new Palette(
                Inks.CANVAS.color(),
                text,
                Inks.LINE.color(),
                text,
                Inks.QUIET.color(),
                LimbColors.of(Limb.RIGHT_HAND));
    }

    @Override
    public Dimension getPreferredSize() {
        int height = (int) Math.ceil(engraving.map(e -> e.height() * space()).orElse(0.0));
        return new Dimension(UIScale.scale(300), height + 2 * margin());
    }

    /** Where a point lies, for tests: the middle of a step's line in pixels. */
    Optional<Point2D> pixelOf(Place place) {
        double space = space();
        return engraving
                .flatMap(e -> e.at(place))
                .map(
                        at ->
                                new Point2D.Double(
                                        margin() + at.getX() * space,
                                        margin() + at.getY() * space));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(UIScale.scale(300), (int) (wished() * 14) + 2 * margin());
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(24);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getPreferredSize().height < getParent().getHeight();
    }
}
