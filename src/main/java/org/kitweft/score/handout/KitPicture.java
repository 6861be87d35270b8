package org.kitweft.score.handout;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Surface;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;

/** A kit seen from above, the player's seat at the bottom, with a token where a limb strikes. */
final class KitPicture {
    private static final int MOST_NAMED = 9;
    private static final Color RIM = new Color(0x77, 0x77, 0x77);
    private static final Color STRUCK = new Color(0xF1, 0xF1, 0xF1);

    private final Kit kit;
    private final SortedMap<String, SortedSet<Limb>> limbsOf = new TreeMap<>();

    KitPicture(Groove groove) {
        this.kit = groove.kit();
        for (Hit hit : groove.hits()) {
            limbsOf.computeIfAbsent(hit.sound().surface(), any -> new TreeSet<>()).add(hit.limb());
        }
    }

    /** Draws it within a box. */
    void place(SignList signs, double left, double top, double width, double height) {
        double minX = min(kit, s -> s.x() - s.diameter() / 2);
        double maxX = -min(kit, s -> -s.x() - s.diameter() / 2);
        double minY = min(kit, s -> s.y() - s.diameter() / 2);
        double maxY = -min(kit, s -> -s.y() - s.diameter() / 2);
        double scale = Math.min(width / (maxX - minX), height / (maxY - minY));
        double x0 = left + (width - (maxX - minX) * scale) / 2 - minX * scale;
        double y0 = top + (height + (maxY - minY) * scale) / 2 + minY * scale;
        List<Surface> lowFirst = new ArrayList<>(kit.surfaces());
        lowFirst.sort((a, b) -> Double.compare(a.z(), b.z()));
        for (Surface surface : lowFirst) {
            boolean struck = limbsOf.containsKey(surface.id());
            double radius = surface.diameter() / 2 * scale;
            double x = x0 + surface.x() * scale;
            double y = y0 - surface.y() * scale;
            disc(signs, x, y, radius, struck ? STRUCK : Color.WHITE);
            ring(signs, x, y, radius, struck ? 0.9 : 0.5);
        }
        KitLabels labels = new KitLabels(signs, left, left + width);
        List<Surface> struckFirst = new ArrayList<>(kit.surfaces());
        struckFirst.sort(
                Comparator.comparing((Surface s) -> !limbsOf.containsKey(s.id()))
                        .thenComparing(Surface::diameter));
        for (Surface surface : struckFirst) {
            if (limbsOf.containsKey(surface.id())) {
                SortedSet<Limb> limbs = limbsOf.getOrDefault(surface.id(), new TreeSet<>());
                labels.tokens(
                        surface,
                        limbs,
                        x0 + surface.x() * scale,
                        y0 - surface.y() * scale,
                        surface.diameter() / 2 * scale);
            }
        }
        for (Surface surface : struckFirst) {
            if (limbsOf.containsKey(surface.id()) || kit.surfaces().size() <= MOST_NAMED) {
                labels.name(surface, x0 + surface.x() * scale, y0 - surface.y() * scale);
            }
        }
    }

    /** A filled circle. */
    static void disc(SignList signs, double x, double y, double radius, Color colour) {
        Path2D path =
                new Path2D.Double(new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius));
        signs.shape(Kind.DRAWING, path, x, y, Optional.of(colour), Owner.NONE);
    }

    private static void ring(SignList signs, double x, double y, double radius, double line) {
        Path2D path =
                new Path2D.Double(
                        new BasicStroke((float) line)
                                .createStrokedShape(
                                        new Ellipse2D.Double(
                                                -radius, -radius, 2 * radius, 2 * radius)));
        signs.shape(Kind.DRAWING, path, x, y, Optional.of(RIM), Owner.NONE);
    }

    private static double min(Kit kit, ToDoubleFunction<Surface> edge) {
        return kit.surfaces().stream().mapToDouble(edge).min().orElse(0);
    }
}
