package org.kitweft.score.engrave;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.kitweft.groove.Hit;

/** One line of a score with its signs placed, in staff spaces. Immutable. */
public final class EngravedSystem {
    /** How near to a head one has to point, in staff spaces. */
    private static final double REACH = 1.2;

    private final Fonts fonts;
    private final List<PlacedSign> signs;
    private final double width;
    private final double top;
    private final double bottom;
    private final int firstMeasure;
    private final List<NavigableMap<Long, Double>> xOfTicks;

    /**
     * @param xOfTicks for each measure the x of the instants it knows, its end included
     */
    EngravedSystem(
            Fonts fonts,
            List<PlacedSign> signs,
            double width,
            int firstMeasure,
            List<NavigableMap<Long, Double>> xOfTicks) {
        this.fonts = fonts;
        this.signs = List.copyOf(signs);
        this.width = width;
        this.firstMeasure = firstMeasure;
        this.xOfTicks = xOfTicks.stream().<NavigableMap<Long, Double>>map(TreeMap::new).toList();
        this.top = this.signs.stream().mapToDouble(s -> s.bounds().getMinY()).min().orElse(-2);
        this.bottom = this.signs.stream().mapToDouble(s -> s.bounds().getMaxY()).max().orElse(2);
    }

    /** All signs in drawing order. */
    public List<PlacedSign> signs() {
        return signs;
    }

    /** Length of its staff. */
    public double width() {
        return width;
    }

    /** Its highest inked point; negative, since the middle line is 0. */
    public double top() {
        return top;
    }

    /** Its lowest inked point. */
    public double bottom() {
        return bottom;
    }

    /** From its highest to its lowest point. */
    public double height() {
        return bottom - top;
    }

    /** Index of its first measure in the score. */
    public int firstMeasure() {
        return firstMeasure;
    }

    /** How many measures it has. */
    public int measures() {
        return xOfTicks.size();
    }

    /**
     * Where an instant stands: on the middle of the heads struck then, between them in proportion.
     *
     * @param measure index in the score
     * @param tick from the start of the measure
     * @throws IllegalArgumentException if the measure stands in another line
     */
    public double x(int measure, long tick) {
        if (measure < firstMeasure || measure >= firstMeasure + xOfTicks.size()) {
            throw new IllegalArgumentException(
                    "measure %d: this line has %d to %d"
                            .formatted(measure, firstMeasure, firstMeasure + xOfTicks.size() - 1));
        }
        NavigableMap<Long, Double> xs = xOfTicks.get(measure - firstMeasure);
        var floor = Objects.requireNonNullElse(xs.floorEntry(tick), xs.firstEntry());
        var ceiling = Objects.requireNonNullElse(xs.ceilingEntry(tick), xs.lastEntry());
        if (floor.getKey().equals(ceiling.getKey())) {
            return floor.getValue();
        }
        double share = (double) (tick - floor.getKey()) / (ceiling.getKey() - floor.getKey());
        return floor.getValue() + share * (ceiling.getValue() - floor.getValue());
    }

    /** The hit whose head lies at a point or nearest to it within reach. */
    public Optional<Hit> hitAt(double x, double y) {
        return ownerAt(x, y).flatMap(Owner::hit);
    }

    /** To what the head belongs that lies at a point or nearest to it within reach. */
    public Optional<Owner> ownerAt(double x, double y) {
        return signs.stream()
                .filter(s -> s.owner().hit().isPresent())
                .filter(s -> distance(s.bounds(), x, y) <= REACH)
                .min(Comparator.comparingDouble(s -> distance(s.bounds(), x, y)))
                .map(PlacedSign::owner);
    }

    private static double distance(Rectangle2D box, double x, double y) {
        double dx = Math.max(0, Math.max(box.getMinX() - x, x - box.getMaxX()));
        double dy = Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
        return Math.hypot(dx, dy) + 0.01 * Math.hypot(box.getCenterX() - x, box.getCenterY() - y);
    }

    /** Paints it; the unit of the graphics is the staff space, 0, 0 the middle line's start. */
    public void paint(Graphics2D graphics, Palette palette) {
        new Painter(fonts, palette).paint(graphics, signs);
    }

    /** Paints it with some signs highlighted, e.g. the heads of the hits that sound now. */
    public void paint(Graphics2D graphics, Palette palette, Predicate<PlacedSign> highlighted) {
        new Painter(fonts, palette, highlighted).paint(graphics, signs);
    }
}
