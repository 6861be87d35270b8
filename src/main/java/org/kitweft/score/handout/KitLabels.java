package org.kitweft.score.handout;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;
import org.kitweft.kit.Limb;
import org.kitweft.kit.LimbColours;
import org.kitweft.kit.Surface;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;

/**
 * Places tokens and names on the drawing of a kit, each where it covers the fewest of those before
 * it. A name that finds no room is left out where nothing strikes its surface.
 */
final class KitLabels {
    private static final double NAME_SIZE = 6;
    private static final double TOKEN = 5.2;
    private static final double TOKEN_SIZE = 5.6;
    private static final double GAP = 1;

    private final SignList signs;
    private final double left;
    private final double right;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final Map<String, Rectangle2D> tokensOf = new HashMap<>();

    /** For a drawing between two x. */
    KitLabels(SignList signs, double left, double right) {
        this.signs = signs;
        this.left = left;
        this.right = right;
    }

    /** The limbs that strike a surface, in a row on it, at its middle if there is room. */
    void tokens(Surface surface, SortedSet<Limb> limbs, double x, double y, double radius) {
        double width = limbs.size() * (2 * TOKEN + GAP) - GAP;
        Rectangle2D best = around(x, y, width, 2 * TOKEN);
        for (double out : new double[] {0.4, 0.6}) {
            for (int eighth = 0; eighth < 8 && covers(best) > 0; eighth++) {
                double angle = eighth * Math.PI / 4;
                Rectangle2D other =
                        around(
                                x + out * radius * Math.cos(angle),
                                y + out * radius * Math.sin(angle),
                                width,
                                2 * TOKEN);
                best = covers(other) < covers(best) ? other : best;
            }
        }
        taken.add(best);
        tokensOf.put(surface.id(), best);
        double at = best.getX() + TOKEN;
        for (Limb limb : limbs) {
            token(limb, at, best.getCenterY());
            at += 2 * TOKEN + GAP;
        }
    }

    private void token(Limb limb, double x, double y) {
        KitPicture.disc(signs, x, y, TOKEN, new Color(LimbColours.rgb(limb)));
        String letters = limb.shortName();
        double textWidth = signs.fonts().text().width(TextStyle.BOLD, TOKEN_SIZE, letters);
        signs.text(
                Kind.TEXT,
                letters,
                TextStyle.BOLD,
                TOKEN_SIZE,
                x - textWidth / 2,
                y + TextFont.CAP_HEIGHT * TOKEN_SIZE / 2,
                Optional.of(Color.BLACK),
                Owner.NONE);
    }

    /** The name of a surface: by its tokens, else at its middle. */
    void name(Surface surface, double x, double y) {
        double width = signs.fonts().text().width(TextStyle.REGULAR, NAME_SIZE, surface.name());
        double up = TextFont.CAP_HEIGHT * NAME_SIZE;
        double height = up + TextFont.DESCENT * NAME_SIZE;
        @Nullable Rectangle2D tokens = tokensOf.get(surface.id());
        @Nullable Rectangle2D best = null;
        for (Point2D middle : middles(tokens, x, y, width, height)) {
            double within = Math.max(left + width / 2, Math.min(right - width / 2, middle.getX()));
            Rectangle2D box = around(within, middle.getY(), width, height);
            if (best == null || covers(box) < covers(best)) {
                best = box;
            }
        }
        if (best == null || (tokens == null && covers(best) > 0)) {
            return;
        }
        taken.add(best);
        signs.text(
                Kind.ASIDE,
                surface.name(),
                TextStyle.REGULAR,
                NAME_SIZE,
                best.getX(),
                best.getY() + up,
                Owner.NONE);
    }

    private static List<Point2D> middles(
            @Nullable Rectangle2D tokens, double x, double y, double width, double height) {
        List<Point2D> middles = new ArrayList<>();
        if (tokens == null) {
            for (double down : new double[] {0, 1, -1, 2, -2}) {
                middles.add(new Point2D.Double(x, y + down * height));
            }
            return middles;
        }
        double below = tokens.getMaxY() + GAP + height / 2;
        double above = tokens.getY() - GAP - height / 2;
        double aside = tokens.getWidth() / 2 + GAP + width / 2;
        for (double shift : new double[] {0, -0.4, 0.4}) {
            middles.add(new Point2D.Double(tokens.getCenterX() + shift * width, below));
            middles.add(new Point2D.Double(tokens.getCenterX() + shift * width, above));
        }
        middles.add(new Point2D.Double(tokens.getCenterX() + aside, tokens.getCenterY()));
        middles.add(new Point2D.Double(tokens.getCenterX() - aside, tokens.getCenterY()));
        middles.add(new Point2D.Double(tokens.getCenterX(), below + height));
        middles.add(new Point2D.Double(tokens.getCenterX(), above - height));
        return middles;
    }

    private static Rectangle2D around(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x - width / 2, y - height / 2, width, height);
    }

    /** How much of what stands already a box would cover. */
    private double covers(Rectangle2D box) {
        double area = 0;
        for (Rectangle2D one : taken) {
            Rectangle2D both = one.createIntersection(box);
            if (both.getWidth() > 0 && both.getHeight() > 0) {
                area += both.getWidth() * both.getHeight();
            }
        }
        return area;
    }
}
