package org.kitweft.ui.kit;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Shape;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Notehead;
import org.kitweft.kit.StaffPlace;
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

    private static final double TOKEN_CM_ON_BARS = 7;

    /** The size of a bar's name, relative to labels. */
    private static final double BAR_NAME = 0.8;

    /** A name may be so wide for its surface. */
    private static final double NAME_SHARE = 0.72;

    private static final String ASIDE = "Aside";

    private final transient Playhead playhead;
    private final transient Placing placing;
    private transient KitModel model;
    private transient KitPlan plan;
    private transient Map<Token, Point2D> tokenPlaces = Map.of();
    private transient Optional<Token> dragged = Optional.empty();
    private transient Point dragPoint = new Point();
    private double factor = 1;

    /** Of a token, in pixels. */
    private double radius = UIScale.scale(13f);

    KitView(KitModel model, Placing placing, Playhead playhead) {
        this.model = model;
        this.placing = placing;
        this.playhead = playhead;
        this.plan = new KitPlan(model.kit(), new Rectangle2D.Double(0, 0, 1, 1));
        setFocusable(true);
        setOpaque(true);
        setToolTipText("");
    }

    /** A bar has no room for its whole name, and some have none at all. */
    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        return plan.at(event.getX(), event.getY()).map(Surface::name).orElse(null);
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
                .filter(entry -> entry.getValue().distance(x, y) <= radius)
                .map(Map.Entry::getKey)
                .reduce((first, last) -> last);
    }

    /** What each token covers. */
    Map<Token, Rectangle2D> tokenBoxes() {
        double r = radius;
        Map<Token, Rectangle2D> boxes = new LinkedHashMap<>();
        tokenPlaces.forEach(
                (token, at) ->
                        boxes.put(
                                token,
                                new Rectangle2D.Double(
                                        at.getX() - r, at.getY() - r, 2 * r, 2 * r)));
        return boxes;
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
        // How big tokens are follows from the plan, and how high the tray is from the tokens.
        radius = radius(plan(0));
        plan = plan(trayHeight());
        radius = Math.min(radius, radius(plan));
        int tray = trayHeight();
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

    /** The kit above a tray of some height. */
    private KitPlan plan(int tray) {
        int margin = UIScale.scale(10);
        double line = hasBars() ? barLine() : 0;
        return new KitPlan(
                model.kit(),
                new Rectangle2D.Double(
                        margin,
                        margin + line,
                        Math.max(10, getWidth() - 2 * margin),
                        Math.max(10, getHeight() - tray - 2 * margin - 3 * line)));
    }

    private boolean hasBars() {
        return model.kit().surfaces().stream().anyMatch(Surface::isBar);
    }

    private double radius(KitPlan laid) {
        double fitting = laid.scale() * (hasBars() ? TOKEN_CM_ON_BARS : TOKEN_CM) / 2;
        return Math.max(UIScale.scale(13f), Math.min(UIScale.scale(26f), fitting)) * factor;
    }

    private double trayStart() {
        int word = getFontMetrics(trayFont()).stringWidth(ASIDE);
        return UIScale.scale(12) + word + UIScale.scale(10) + radius;
    }

    private Font trayFont() {
        return Paints.font(0.85 * Math.sqrt(factor), false);
    }

    private double traySpacing() {
        return radius * 2 + UIScale.scale(8);
    }

    private int trayHeight() {
        return (int) (2 * radius + UIScale.scale(12));
    }

    /** The height of a line of the names of bars. */
    private double barLine() {
        return Paints.font(BAR_NAME * Math.sqrt(factor), false).getSize2D() * 1.1;
    }

    /**
     * Where the i-th of so many signs on a surface goes: side by side, above the name; on a bar one
     * below the other. Signs are whole, also on a surface at the edge.
     */
    private Point2D slot(Surface surface, int i, int count) {
        Point2D at = surface.isBar() ? onBar(surface, i, count) : onDrum(surface, i, count);
        double r = radius + UIScale.scale(2f);
        return new Point2D.Double(
                Math.max(r, Math.min(getWidth() - r, at.getX())),
                Math.max(r, Math.min(getHeight() - trayHeight() - r, at.getY())));
    }

    private Point2D onBar(Surface surface, int i, int count) {
        Rectangle2D bar = plan.shape(surface).getBounds2D();
        double room = bar.getHeight() - 2 * radius;
        double spacing = count == 1 ? 0 : Math.min(radius * 2.1, room / (count - 1));
        return new Point2D.Double(
                bar.getCenterX(), bar.getCenterY() + (i - (count - 1) / 2.0) * spacing);
    }

    private Point2D onDrum(Surface surface, int i, int count) {
        Point2D anchor = plan.anchor(surface);
        double spacing = radius * 1.9;
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
                if (surface.isBar()) {
                    paintBarName(g, surface);
                } else {
                    paintName(g, surface);
                }
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

    /**
     * The note of a bar at its end: below the bar, or above it in the row of the sharps; the octave
     * at each C. Nothing where there is no room; the tool tip names every bar.
     */
    private void paintBarName(Graphics2D g, Surface bar) {
        StaffPlace place = bar.sounds().get(0).place();
        String name = place.letter() + (place.sharp() ? "\u266f" : "");
        Rectangle2D box = plan.shape(bar).getBounds2D();
        g.setFont(Paints.font(BAR_NAME * Math.sqrt(factor), false));
        if (g.getFontMetrics().getStringBounds(name, g).getWidth() > box.getWidth() * 1.15) {
            return;
        }
        g.setColor(Inks.TEXT.color());
        double line = barLine();
        Paints.centred(
                g,
                name,
                box.getCenterX(),
                place.sharp() ? box.getMinY() - line / 2 : box.getMaxY() + line / 2);
        if (place.letter() == 'C' && !place.sharp()) {
            g.setColor(Inks.QUIET.color());
            Paints.centred(
                    g,
                    Integer.toString(place.octave()),
                    box.getCenterX(),
                    box.getMaxY() + line * 1.5);
        }
    }

    private void paintName(Graphics2D g, Surface surface) {
        double room = plan.shape(surface).getBounds2D().getWidth();
        if (room < UIScale.scale(30)) {
            return;
        }
        boolean occupied = !model.on(surface).isEmpty() || !model.beside(surface).isEmpty();
        Point2D anchor = plan.anchor(surface);
        g.setFont(trayFont());
        int rows = (model.on(surface).size() + model.beside(surface).size() + 2) / 3;
        double y =
                anchor.getY()
                        + (occupied
                                ? radius
                                        + UIScale.scale(2) * factor
                                        + (Math.max(1, rows) - 1) * radius * 1.9
                                : 0);
        double line = g.getFontMetrics().getHeight() * 0.95;
        for (String part : lines(g, surface.name(), room * NAME_SHARE)) {
            written(g, part, anchor.getX(), y);
            y += line;
        }
        List<String> others = new ArrayList<>();
        for (Token token : model.on(surface)) {
            token.sound()
                    .filter(s -> !s.sound().equals(surface.sounds().get(0).id()))
                    .ifPresent(s -> others.add(s.sound().replace('-', ' ')));
        }
        if (!others.isEmpty()) {
            g.setFont(Paints.font(0.78 * Math.sqrt(factor), false));
            written(g, String.join(", ", others), anchor.getX(), y);
        }
    }

    /** The name, in two lines if it is wider than the room: at its comma, if it has one. */
    private static List<String> lines(Graphics2D g, String name, double room) {
        int comma = name.indexOf(", ");
        return comma < 0 || g.getFontMetrics().stringWidth(name) <= room
                ? List.of(name)
                : List.of(name.substring(0, comma), name.substring(comma + 2));
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
            double side = radius * 1.7;
            Rectangle2D square =
                    new Rectangle2D.Double(at.getX() - side / 2, at.getY() - side / 2, side, side);
            g.setColor(LimbColors.of(companion.limb()));
            g.fill(square);
            g.setColor(LimbColors.of(companion.limb()).darker());
            g.setStroke(new BasicStroke(UIScale.scale(1.2f)));
            g.draw(square);
            g.setColor(LimbColors.INK);
            double width = companion.text().length() > 2 ? 0.68 : 0.85;
            g.setFont(Paints.font(1, true).deriveFont((float) (radius * width)));
            Paints.centred(g, companion.text(), at.getX(), at.getY());
        }
    }

    private void paintTray(Graphics2D g) {
        List<Token> aside = model.aside();
        double y = getHeight() - trayHeight() / 2.0;
        g.setColor(Inks.THREAD.color());
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        int top = getHeight() - trayHeight();
        g.drawLine(UIScale.scale(10), top, getWidth() - UIScale.scale(10), top);
        g.setColor(Inks.QUIET.color());
        g.setFont(Paints.font(0.85 * Math.sqrt(factor), false));
        int baseline = (int) (y + g.getFontMetrics().getAscent() / 2.0 - 1);
        g.drawString(
                aside.isEmpty() ? "All letters are placed" : ASIDE, UIScale.scale(12), baseline);
        if (!aside.isEmpty()) {
            String why = aside.get(0).why();
            boolean alike = aside.stream().allMatch(token -> token.why().equals(why));
            double x = trayStart() + aside.size() * traySpacing() - UIScale.scale(4);
            String text = alike ? why : "tacet, or not in the sticking";
            g.drawString(Paints.fitting(g, text, getWidth() - x), (float) x, baseline);
        }
    }

    private void paintToken(Graphics2D g, Token token, Point2D at) {
        double r = radius;
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
