package org.kitweft.ui.kit;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Notehead;
import org.kitweft.kit.Surface;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.LimbColors;
import org.kitweft.ui.theme.Painted;
import org.kitweft.ui.theme.Paints;

/** Paints the kit from above with the tokens on it; what is struck lights up. */
final class KitView extends Painted {
    private static final long serialVersionUID = 1;

    /** How wide a token would be on the kit, in centimetres. */
    private static final double TOKEN_CM = 11;

    private final transient Playhead playhead;
    private final transient Placing placing;
    private transient KitModel model;
    private transient KitPlan plan;
    private transient Map<Token, Point2D> tokenPlaces = Map.of();
    private transient Optional<Token> dragged = Optional.empty();
    private transient Point dragPoint = new Point();
    private double factor = 1;

    KitView(KitModel model, Placing placing, Playhead playhead) {
        this.model = model;
        this.placing = placing;
        this.playhead = playhead;
        this.plan = new KitPlan(model.kit(), new Rectangle2D.Double(0, 0, 1, 1));
        setFocusable(true);
        setOpaque(true);
    }

    void show(KitModel other) {
        model = other;
        layOut();
        repaint();
    }

    void enlarge(double other) {
        factor = other;
        layOut();
        repaint();
    }

    KitModel model() {
        return model;
    }

    KitPlan plan() {
        return plan;
    }

    /** The token at a point. */
    Optional<Token> tokenAt(double x, double y) {
        return tokenPlaces.entrySet().stream()
                .filter(entry -> entry.getValue().distance(x, y) <= tokenRadius())
                .map(Map.Entry::getKey)
                .reduce((first, last) -> last);
    }

    /** A token follows the mouse; empty: none does. */
    void showDrag(Optional<Token> token, Point at) {
        dragged = token;
        dragPoint = at;
        repaint();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        layOut();
    }

    private void layOut() {
        if (getWidth() <= 0 || getHeight() <= 0) {
            return;
        }
        int margin = UIScale.scale(10);
        int tray = trayHeight();
        plan =
                new KitPlan(
                        model.kit(),
                        new Rectangle2D.Double(
                                margin,
                                margin,
                                Math.max(10, getWidth() - 2 * margin),
                                Math.max(10, getHeight() - tray - 2 * margin)));
        Map<Token, Point2D> places = new LinkedHashMap<>();
        for (Surface surface : plan.fromBelow()) {
            List<Token> tokens = model.on(surface);
            int count = tokens.size() + model.beside(surface).size();
            for (int i = 0; i < tokens.size(); i++) {
                places.put(tokens.get(i), slot(surface, i, count));
            }
        }
        List<Token> aside = model.aside();
        for (int i = 0; i < aside.size(); i++) {
            places.put(
                    aside.get(i),
                    new Point2D.Double(trayStart() + i * traySpacing(), getHeight() - tray / 2.0));
        }
        tokenPlaces = places;
    }

    private double trayStart() {
        return UIScale.scale(70) * factor;
    }

    private double traySpacing() {
        return tokenRadius() * 2 + UIScale.scale(8);
    }

    private int trayHeight() {
        return (int) (2 * tokenRadius() + UIScale.scale(12));
    }

    private double tokenRadius() {
        double fitting = plan.scale() * TOKEN_CM / 2;
        return Math.max(UIScale.scale(13f), Math.min(UIScale.scale(26f), fitting)) * factor;
    }

    /** Where the i-th of so many signs on a surface goes: side by side, above the name. */
    private Point2D slot(Surface surface, int i, int count) {
        Point2D anchor = plan.anchor(surface);
        double spacing = tokenRadius() * 1.9;
        int perRow = Math.min(count, 3);
        int row = i / perRow;
        int inRow = Math.min(perRow, count - row * perRow);
        double x = anchor.getX() + (i % perRow - (inRow - 1) / 2.0) * spacing;
        double y = anchor.getY() - UIScale.scale(7) * factor + row * spacing;
        return new Point2D.Double(x, y);
    }

    @Override
    public Dimension getPreferredSize() {
        return UIScale.scale(new Dimension(390, 330));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Paints.smooth(graphics);
        try {
            g.setColor(Inks.CANVAS.color());
            g.fillRect(0, 0, getWidth(), getHeight());
            Map<String, Color> struck = struckColors();
            for (Surface surface : plan.fromBelow()) {
                paintSurface(g, surface, Optional.ofNullable(struck.get(surface.id())));
            }
            for (Surface surface : plan.fromBelow()) {
                paintName(g, surface);
                paintCompanions(g, surface);
            }
            paintTray(g);
            tokenPlaces.forEach((token, at) -> paintToken(g, token, at));
            dragged.ifPresent(token -> paintToken(g, token, dragPoint));
        } finally {
            g.dispose();
        }
    }

    private Map<String, Color> struckColors() {
        Map<String, Color> colors = new LinkedHashMap<>();
        for (Hit hit : playhead.struck()) {
            colors.put(hit.sound().surface(), LimbColors.of(hit.limb()));
        }
        return colors;
    }

    private void paintSurface(Graphics2D g, Surface surface, Optional<Color> light) {
        Shape shape = plan.shape(surface);
        boolean metal = surface.sounds().get(0).notehead() != Notehead.NORMAL;
        boolean lying = KitPlan.isLying(surface);
        g.setColor(metal ? Inks.METAL.color() : Inks.SKIN.color());
        if (lying) {
            g.setColor(Inks.CANVAS_SHADE.color());
        }
        g.fill(shape);
        light.ifPresent(
                color -> {
                    g.setColor(new Color(color.getRed(), color.getGreen(), color.getBlue(), 150));
                    g.fill(shape);
                });
        Rectangle2D box = shape.getBounds2D();
        if (metal) {
            g.setColor(Inks.GROOVES.color());
            g.setStroke(new BasicStroke(UIScale.scale(0.8f)));
            for (double part = 0.8; part > 0.25; part -= 0.2) {
                g.draw(inner(box, part));
            }
            g.fill(inner(box, 0.14));
        }
        g.setColor(metal ? Inks.GROOVES.color() : Inks.SHELL.color());
        boolean tiny = box.getWidth() < UIScale.scale(24);
        g.setStroke(new BasicStroke(UIScale.scale(tiny ? 1f : metal ? 1.5f : 3f)));
        g.draw(shape);
        boolean hovered = placing.over().filter(surface::equals).isPresent();
        if (light.isPresent() || hovered) {
            g.setColor(hovered ? Inks.FOCUS.color() : light.orElseThrow().darker());
            g.setStroke(new BasicStroke(UIScale.scale(3f)));
            g.draw(shape);
        }
    }

    private static Ellipse2D inner(Rectangle2D box, double part) {
        double width = box.getWidth() * part;
        double height = box.getHeight() * part;
        return new Ellipse2D.Double(
                box.getCenterX() - width / 2, box.getCenterY() - height / 2, width, height);
    }

    private void paintName(Graphics2D g, Surface surface) {
        double room = plan.shape(surface).getBounds2D().getWidth();
        if (room < UIScale.scale(30)) {
            return;
        }
        boolean occupied = !model.on(surface).isEmpty() || !model.beside(surface).isEmpty();
        Point2D anchor = plan.anchor(surface);
        g.setFont(Paints.font(0.85 * Math.sqrt(factor), false));
        String name = surface.name();
        int rows = (model.on(surface).size() + model.beside(surface).size() + 2) / 3;
        double y =
                anchor.getY()
                        + (occupied
                                ? tokenRadius()
                                        + UIScale.scale(2) * factor
                                        + (Math.max(1, rows) - 1) * tokenRadius() * 1.9
                                : 0);
        written(g, name, anchor.getX(), y);
        List<String> others = new ArrayList<>();
        for (Token token : model.on(surface)) {
            token.sound()
                    .filter(s -> !s.sound().equals(surface.sounds().get(0).id()))
                    .ifPresent(s -> others.add(s.sound().replace('-', ' ')));
        }
        if (!others.isEmpty()) {
            g.setFont(Paints.font(0.78 * Math.sqrt(factor), false));
            written(
                    g,
                    String.join(", ", others),
                    anchor.getX(),
                    y + g.getFontMetrics().getHeight() * 0.95);
        }
    }

    /** Text with a halo, so that it can be read over edges. */
    private static void written(Graphics2D g, String text, double x, double y) {
        double width = g.getFontMetrics().getStringBounds(text, g).getWidth();
        double height = g.getFontMetrics().getHeight() * 0.86;
        g.setColor(Inks.CANVAS.color(175));
        g.fill(
                new RoundRectangle2D.Double(
                        x - width / 2 - 3, y - height / 2, width + 6, height, 6, 6));
        g.setColor(Inks.TEXT.color());
        Paints.centred(g, text, x, y);
    }

    private void paintCompanions(Graphics2D g, Surface surface) {
        List<Companion> beside = model.beside(surface);
        int tokens = model.on(surface).size();
        for (int i = 0; i < beside.size(); i++) {
            Companion companion = beside.get(i);
            Point2D at = slot(surface, tokens + i, tokens + beside.size());
            double side = tokenRadius() * 1.7;
            Rectangle2D square =
                    new Rectangle2D.Double(at.getX() - side / 2, at.getY() - side / 2, side, side);
            g.setColor(LimbColors.of(companion.limb()));
            g.fill(square);
            g.setColor(LimbColors.of(companion.limb()).darker());
            g.setStroke(new BasicStroke(UIScale.scale(1.2f)));
            g.draw(square);
            g.setColor(LimbColors.INK);
            double width = companion.text().length() > 2 ? 0.68 : 0.85;
            g.setFont(Paints.font(1, true).deriveFont((float) (tokenRadius() * width)));
            Paints.centred(g, companion.text(), at.getX(), at.getY());
        }
    }

    private void paintTray(Graphics2D g) {
        List<Token> aside = model.aside();
        double y = getHeight() - trayHeight() / 2.0;
        g.setColor(Inks.THREAD.color());
        int top = getHeight() - trayHeight();
        g.drawLine(UIScale.scale(10), top, getWidth() - UIScale.scale(10), top);
        g.setColor(Inks.QUIET.color());
        g.setFont(Paints.font(0.85 * Math.sqrt(factor), false));
        int baseline = (int) (y + g.getFontMetrics().getAscent() / 2.0 - 1);
        g.drawString(
                aside.isEmpty() ? "All letters are placed" : "Aside", UIScale.scale(12), baseline);
        if (!aside.isEmpty()) {
            String why = aside.get(0).why();
            boolean alike = aside.stream().allMatch(token -> token.why().equals(why));
            double x = trayStart() + aside.size() * traySpacing() - UIScale.scale(4);
            String text = alike ? why : "tacet, or not in the sticking";
            g.drawString(Paints.fitting(g, text, getWidth() - x), (float) x, baseline);
        }
    }

    private void paintToken(Graphics2D g, Token token, Point2D at) {
        double r = tokenRadius();
        boolean faint = token.sound().isEmpty() && !dragged.equals(Optional.of(token));
        Color color = LimbColors.of(token.limb());
        Shape disc = new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r);
        g.setColor(
                faint ? new Color(color.getRed(), color.getGreen(), color.getBlue(), 90) : color);
        g.fill(disc);
        boolean chosen =
                isFocusOwner()
                        && token.letter() == placing.letter()
                        && token.target() == placing.target();
        g.setColor(chosen ? Inks.FOCUS.color() : color.darker());
        g.setStroke(new BasicStroke(UIScale.scale(chosen ? 3f : 1.2f)));
        g.draw(disc);
        g.setColor(faint ? Inks.TEXT.color() : LimbColors.INK);
        g.setFont(
                Paints.font(1, true)
                        .deriveFont((float) (r * (token.text().length() > 1 ? 0.95 : 1.15))));
        Paints.centred(g, token.text(), at.getX(), at.getY());
        if (token.turns() > 1) {
            g.setFont(Paints.font(0.72 * factor, true));
            g.setColor(Inks.TEXT.color());
            Paints.centred(
                    g,
                    Integer.toString(token.turn() + 1),
                    at.getX() + r * 0.95,
                    at.getY() - r * 0.8);
        }
    }
}
