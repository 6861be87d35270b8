package org.kitweft.ui.kit;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Surface;

/**
 * The kit seen from above, laid into a rectangle of pixels: right is the player's right, up is away
 * from the player, and what is higher covers what is lower. To scale, but for kits of bars alone:
 * they are so much wider than deep that they are stretched away from the player to be read.
 */
final class KitPlan {
    /** A drum lying on its side shows its shell: this deep for its width. Common practice. */
    private static final double LYING_DEPTH = 0.72;

    /** Of the way from one row of bars to the next: so much is bar, the rest a gap. */
    private static final double BAR_SHARE = 0.92;

    /** How long a bar is for its width where it has no other row beside it. */
    private static final double LONE_BAR = 4;

    /** Rows less apart than this are one row, in centimetres. */
    private static final double ONE_ROW = 2;

    private static final double MOST_STRETCH = 2.4;
    private static final int SAMPLES = 17;

    private final Kit kit;
    private final List<Surface> fromBelow;
    private final double barLength;
    private final double scale;
    private final double depthScale;
    private final double left;
    private final double bottom;

    /** Found when first asked for: a plan is often laid out anew before it is painted. */
    private final Map<Surface, Point2D> anchors = new HashMap<>();

    /**
     * @param area where the surfaces shall lie
     */
    KitPlan(Kit kit, Rectangle2D area) {
        this.kit = kit;
        this.fromBelow =
                kit.surfaces().stream()
                        .sorted(
                                Comparator.comparingDouble(Surface::z)
                                        .thenComparing(
                                                Comparator.comparingDouble(Surface::diameter)
                                                        .reversed()))
                        .toList();
        barLength = barLength();
        double minX = extreme(s -> s.x() - s.diameter() / 2, true);
        double maxX = extreme(s -> s.x() + s.diameter() / 2, false);
        double minY = extreme(s -> s.y() - depth(s) / 2, true);
        double maxY = extreme(s -> s.y() + depth(s) / 2, false);
        double highest = area.getHeight() / (maxY - minY);
        scale = Math.max(0.1, Math.min(area.getWidth() / (maxX - minX), highest));
        boolean stretched = kit.surfaces().stream().allMatch(Surface::isBar);
        depthScale = stretched ? Math.max(scale, Math.min(scale * MOST_STRETCH, highest)) : scale;
        left = area.getCenterX() - scale * (minX + maxX) / 2;
        bottom = area.getCenterY() + depthScale * (minY + maxY) / 2;
    }

    /** Rows of bars nearly meet; a kit file says where bars are and how wide, not how long. */
    private double barLength() {
        List<Surface> bars = kit.surfaces().stream().filter(Surface::isBar).toList();
        double apart = Double.POSITIVE_INFINITY;
        for (Surface bar : bars) {
            for (Surface other : bars) {
                double rows = Math.abs(other.y() - bar.y());
                apart = rows > ONE_ROW ? Math.min(apart, rows) : apart;
            }
        }
        double widest = bars.stream().mapToDouble(Surface::diameter).max().orElse(0);
        return Double.isInfinite(apart) ? LONE_BAR * widest : BAR_SHARE * apart;
    }

    /** From its near to its far edge, in centimetres. */
    private double depth(Surface surface) {
        return surface.isBar() ? barLength : surface.diameter();
    }

    private double extreme(ToDoubleFunction<Surface> edge, boolean least) {
        DoubleStream edges = kit.surfaces().stream().mapToDouble(edge);
        return (least ? edges.min() : edges.max()).orElse(0);
    }

    /** Surfaces in the order they are painted. */
    List<Surface> fromBelow() {
        return fromBelow;
    }

    /** Pixels of a centimetre. */
    double scale() {
        return scale;
    }

    /** The outline of a surface. A drum that only feet can strike lies on its side. */
    Shape shape(Surface surface) {
        double width = surface.diameter() * scale;
        double x = left + surface.x() * scale;
        double y = bottom - surface.y() * depthScale;
        if (surface.isBar()) {
            double length = barLength * depthScale;
            return new RoundRectangle2D.Double(
                    x - width / 2, y - length / 2, width, length, width * 0.3, width * 0.3);
        }
        if (isLying(surface)) {
            double height = width * LYING_DEPTH;
            return new RoundRectangle2D.Double(
                    x - width / 2, y - height / 2, width, height, width * 0.16, width * 0.16);
        }
        return new Ellipse2D.Double(x - width / 2, y - width / 2, width, width);
    }

    /** Whether a surface is a drum that lies on its side. */
    static boolean isLying(Surface surface) {
        return surface.limbs().stream().noneMatch(limb -> limb.isHand());
    }

    /** Where a surface is most to be seen: its name and tokens go there. */
    Point2D anchor(Surface surface) {
        return anchors.computeIfAbsent(surface, this::freest);
    }

    /**
     * The surface at a point, the highest where several lie over each other. The gap between two
     * bars belongs to the nearer one.
     */
    Optional<Surface> at(double x, double y) {
        Surface found = null;
        for (Surface surface : fromBelow) {
            if (shape(surface).contains(x, y)) {
                found = surface;
            }
        }
        return Optional.ofNullable(found).or(() -> barBeside(x, y));
    }

    private Optional<Surface> barBeside(double x, double y) {
        return fromBelow.stream()
                .filter(Surface::isBar)
                .filter(
                        bar -> {
                            Rectangle2D box = shape(bar).getBounds2D();
                            return box.getMinY() <= y
                                    && y <= box.getMaxY()
                                    && Math.abs(x - box.getCenterX()) < box.getWidth();
                        })
                .min(
                        Comparator.comparingDouble(
                                bar -> Math.abs(x - shape(bar).getBounds2D().getCenterX())));
    }

    /** The surface nearest to a point by its middle. */
    Surface nearest(double x, double y) {
        return kit.surfaces().stream()
                .min(Comparator.comparingDouble(s -> anchor(s).distance(x, y)))
                .orElseThrow();
    }

    /**
     * The surface one comes to from a surface in a direction; the surface itself if there is none.
     * Straight ahead is better than aside.
     *
     * @param dx 1 to the right, -1 to the left, or 0
     * @param dy 1 down the screen, -1 up, or 0
     */
    Surface next(Surface from, int dx, int dy) {
        Point2D here = anchor(from);
        Surface best = from;
        double least = Double.POSITIVE_INFINITY;
        for (Surface surface : kit.surfaces()) {
            Point2D there = anchor(surface);
            double along = (there.getX() - here.getX()) * dx + (there.getY() - here.getY()) * dy;
            double aside =
                    Math.abs((there.getX() - here.getX()) * dy + (there.getY() - here.getY()) * dx);
            double cost = along + 2 * aside;
            if (!surface.equals(from) && along > 1 && cost < least) {
                least = cost;
                best = surface;
            }
        }
        return best;
    }

    /** The point of a surface that is farthest from its own edge and from all that covers it. */
    private Point2D freest(Surface surface) {
        Rectangle2D box = shape(surface).getBounds2D();
        Shape own = shape(surface);
        List<Surface> above =
                fromBelow.subList(fromBelow.indexOf(surface) + 1, fromBelow.size()).stream()
                        .filter(other -> shape(other).intersects(box))
                        .toList();
        Point2D middle = new Point2D.Double(box.getCenterX(), box.getCenterY());
        if (above.isEmpty()) {
            return middle;
        }
        Point2D best = middle;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < SAMPLES; i++) {
            for (int j = 0; j < SAMPLES; j++) {
                Point2D point =
                        new Point2D.Double(
                                box.getX() + box.getWidth() * (i + 0.5) / SAMPLES,
                                box.getY() + box.getHeight() * (j + 0.5) / SAMPLES);
                if (own.contains(point)) {
                    double room = room(point, box, above) - 0.15 * point.distance(middle);
                    if (room > most) {
                        most = room;
                        best = point;
                    }
                }
            }
        }
        return best;
    }

    private double room(Point2D point, Rectangle2D box, List<Surface> above) {
        double room =
                Math.min(
                        Math.min(point.getX() - box.getMinX(), box.getMaxX() - point.getX()),
                        Math.min(point.getY() - box.getMinY(), box.getMaxY() - point.getY()));
        for (Surface other : above) {
            Rectangle2D cover = shape(other).getBounds2D();
            double distance =
                    point.distance(cover.getCenterX(), cover.getCenterY()) - cover.getWidth() / 2;
            room = Math.min(room, distance);
        }
        return room;
    }
}
