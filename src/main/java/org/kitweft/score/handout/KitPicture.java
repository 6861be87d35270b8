package org.kitweft.score.handout;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
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
import org.kitweft.kit.LimbColours;
import org.kitweft.kit.Surface;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;

/** A kit seen from above, the player's seat at the bottom, with a token where a limb strikes. */
final class KitPicture {
    private static final double NAME_SIZE = 6;
    private static final double TOKEN = 5.2;
    private static final double TOKEN_SIZE = 5.6;
    private static final int MOST_NAMED = 16;
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
        for (Surface surface : lowFirst) {
            double x = x0 + surface.x() * scale;
            double y = y0 - surface.y() * scale;
            boolean struck = limbsOf.containsKey(surface.id());
            if (struck || kit.surfaces().size() <= MOST_NAMED) {
                double below = struck ? TOKEN + NAME_SIZE * 0.95 : NAME_SIZE * 0.33;
                signs.centred(
                        Kind.ASIDE,
                        surface.name(),
                        TextStyle.REGULAR,
                        NAME_SIZE,
                        x,
                        y + below,
                        Owner.NONE);
            }
            if (struck) {
                tokens(signs, limbsOf.getOrDefault(surface.id(), new TreeSet<>()), x, y);
            }
        }
    }

    private static void tokens(SignList signs, SortedSet<Limb> limbs, double x, double y) {
        double step = 2 * TOKEN + 1;
        double at = x - step * (limbs.size() - 1) / 2;
        for (Limb limb : limbs) {
            disc(signs, at, y, TOKEN, new Color(LimbColours.rgb(limb)));
            String letters = limb.shortName();
            double textWidth = signs.fonts().text().width(TextStyle.BOLD, TOKEN_SIZE, letters);
            signs.text(
                    Kind.TEXT,
                    letters,
                    TextStyle.BOLD,
                    TOKEN_SIZE,
                    at - textWidth / 2,
                    y + TextFont.CAP_HEIGHT * TOKEN_SIZE / 2,
                    Optional.of(Color.BLACK),
                    Owner.NONE);
            at += step;
        }
    }

    private static void disc(SignList signs, double x, double y, double radius, Color colour) {
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
