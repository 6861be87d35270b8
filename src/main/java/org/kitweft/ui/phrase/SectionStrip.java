package org.kitweft.ui.phrase;

import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.swing.ToolTipManager;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Place;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Role;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Painted;
import org.kitweft.ui.theme.Paints;

/**
 * The phrase as a strip: one box a section, coloured and named by its role, as wide as it has bars,
 * with the playhead. What is done to it by mouse and keys: {@link StripHands}.
 */
final class SectionStrip extends Painted {
    private static final long serialVersionUID = 1;
    private static final int HEIGHT = 74;
    private static final int LEAST = 74;
    private static final int ARC = 10;
    private static final int GAP = 2;
    private static final float DIMMED = 0.4f;

    private final transient PhraseModel model;
    private final transient Playhead playhead;
    private transient OptionalInt drop = OptionalInt.empty();
    private transient OptionalDouble lastHead = OptionalDouble.empty();

    SectionStrip(PhraseModel model, Playhead playhead) {
        this.model = model;
        this.playhead = playhead;
        setOpaque(true);
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Phrase");
        ToolTipManager.sharedInstance().registerComponent(this);
        new StripHands(this, model).install();
        model.addListener(this::follow);
        playhead.addListener(this::followPlayhead);
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
        follow();
    }

    private void follow() {
        getAccessibleContext().setAccessibleDescription(describe());
        repaint();
    }

    private String describe() {
        if (model.selected().isEmpty()) {
            return "No phrase yet";
        }
        int index = model.selected().getAsInt();
        int bars = model.plan().orElseThrow().sections().get(index).bars();
        return "%s, %s%s"
                .formatted(
                        model.name(index),
                        PhraseModel.bars(bars),
                        model.open().equals(OptionalInt.of(index)) ? ", open in the grid" : "");
    }

    /** Where sections lie now; empty while there are none. */
    Optional<StripPlan> geometry() {
        return model.plan()
                .map(plan -> new StripPlan(plan, Math.max(1, getWidth()), UIScale.scale(LEAST)));
    }

    /** Shows where a section would go if it were let go of now. */
    void showDrop(OptionalInt place) {
        drop = place;
        repaint();
    }

    /** Where the playhead stands; empty while the phrase does not play. */
    private OptionalDouble head() {
        Optional<Place> place = playhead.written().filter(p -> model.plays());
        Optional<StripPlan> geometry = geometry();
        if (place.isEmpty() || geometry.isEmpty()) {
            return OptionalDouble.empty();
        }
        PhrasePlan plan = geometry.get().phrase();
        if (place.get().bar() > plan.bars()) {
            return OptionalDouble.empty();
        }
        int steps =
                plan.sections()
                        .get(plan.sectionAt(place.get().bar()))
                        .recipe()
                        .grid()
                        .stepsPerBar();
        double part = (place.get().step() - 1.0) / steps;
        return OptionalDouble.of(geometry.get().xOfBar(place.get().bar() + part));
    }

    /** Paints only where the playhead was and is. */
    private void followPlayhead() {
        OptionalDouble now = head();
        int wide = UIScale.scale(6);
        lastHead.ifPresent(x -> repaint((int) x - wide, 0, 2 * wide, getHeight()));
        now.ifPresent(x -> repaint((int) x - wide, 0, 2 * wide, getHeight()));
        lastHead = now;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Paints.smooth(graphics);
        try {
            g.setColor(Inks.CANVAS.color());
            g.fillRect(0, 0, getWidth(), getHeight());
            Optional<StripPlan> geometry = geometry();
            if (geometry.isEmpty()) {
                paintNone(g);
                return;
            }
            for (int i = 0; i < model.count(); i++) {
                paintSection(g, geometry.get(), i);
            }
            paintDrop(g, geometry.get());
            head().ifPresent(x -> paintHead(g, x));
        } finally {
            g.dispose();
        }
    }

    private void paintNone(Graphics2D g) {
        g.setFont(Paints.font(1, false));
        g.setColor(Inks.QUIET.color());
        Paints.centred(
                g,
                "No phrase yet: make one from the sticking, or add the groove as its first"
                        + " section.",
                getWidth() / 2.0,
                getHeight() / 2.0);
        if (isFocusOwner()) {
            outline(g, new Rectangle2D.Double(1, 1, getWidth() - 2.0, getHeight() - 2.0), 2);
        }
    }

    private void paintSection(Graphics2D g, StripPlan geometry, int index) {
        PlannedSection section = geometry.phrase().sections().get(index);
        double gap = UIScale.scale(GAP);
        double left = geometry.x(index) + gap;
        double right = geometry.x(index + 1) - gap;
        Rectangle2D box = new Rectangle2D.Double(left, gap, right - left, getHeight() - 2 * gap);
        g.setColor(ink(section.role()));
        g.fill(rounded(box));
        paintBars(g, geometry, index, box);
        dimUnheard(g, index, box);
        boolean selected = model.selected().equals(OptionalInt.of(index));
        boolean open = model.open().equals(OptionalInt.of(index));
        g.setColor(Inks.LINE.color());
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        g.draw(rounded(box));
        if (selected) {
            outline(g, box, isFocusOwner() ? 3 : 1.6);
        }
        write(g, section, index, box, open);
    }

    private void write(
            Graphics2D g, PlannedSection section, int index, Rectangle2D box, boolean open) {
        double inset = UIScale.scale(8);
        double room = box.getWidth() - 2 * inset;
        float x = (float) (box.getX() + inset);
        boolean conflict = model.conflict(index).isPresent();
        g.setFont(Paints.font(1.05, true));
        g.setColor(conflict ? Inks.FAULT.color() : Inks.TEXT.color());
        float line = UIScale.scale(19f);
        float y = (float) box.getY() + line;
        String title = PhraseModel.title(section.role());
        g.drawString(Paints.fitting(g, (conflict ? "⚠ " : "") + title, room), x, y);
        g.setFont(Paints.font(0.95, false));
        g.setColor(Inks.TEXT.color());
        String bars = PhraseModel.bars(section.bars());
        g.drawString(Paints.fitting(g, open ? bars + "  ·  in the grid" : bars, room), x, y + line);
        g.setColor(Inks.QUIET.color());
        g.drawString(Paints.fitting(g, section.recipe().sticking().text(), room), x, y + 2 * line);
    }

    /** Thin lines where bars begin. */
    private static void paintBars(Graphics2D g, StripPlan geometry, int index, Rectangle2D box) {
        int first = geometry.phrase().firstBar(index);
        g.setColor(Inks.LINE.color(90));
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        int bars = geometry.phrase().sections().get(index).bars();
        if (box.getWidth() / bars < UIScale.scale(4)) {
            return; // a grey wall helps nobody
        }
        for (int bar = first + 1; bar < first + bars; bar++) {
            double x = geometry.xOfBar(bar);
            g.draw(
                    new Line2D.Double(
                            x,
                            box.getMaxY() - UIScale.scale(9),
                            x,
                            box.getMaxY() - UIScale.scale(2)));
        }
    }

    /** Sections that are not played just now are pale. */
    private void dimUnheard(Graphics2D g, int index, Rectangle2D box) {
        if (!model.isHeard(index)) {
            Graphics2D veil = (Graphics2D) g.create();
            veil.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, 1 - DIMMED));
            veil.setColor(Inks.CANVAS.color());
            veil.fill(rounded(box));
            veil.dispose();
        }
    }

    private void paintDrop(Graphics2D g, StripPlan geometry) {
        if (drop.isPresent()) {
            int place = drop.getAsInt();
            int from = model.selected().orElse(place);
            double x = geometry.x(place > from ? place + 1 : place);
            double edge = UIScale.scale(2);
            x = Math.max(edge, Math.min(getWidth() - edge, x));
            g.setColor(Inks.FOCUS.color());
            g.setStroke(new BasicStroke(UIScale.scale(4f)));
            g.draw(new Line2D.Double(x, 0, x, getHeight()));
        }
    }

    private void paintHead(Graphics2D g, double x) {
        g.setColor(Inks.TEXT.color());
        g.setStroke(new BasicStroke(UIScale.scale(4f)));
        g.draw(new Line2D.Double(x, 0, x, getHeight()));
        g.setColor(Inks.LIGHT.color());
        g.setStroke(new BasicStroke(UIScale.scale(2f)));
        g.draw(new Line2D.Double(x, 0, x, getHeight()));
    }

    private static RoundRectangle2D rounded(Rectangle2D box) {
        double arc = UIScale.scale(ARC);
        return new RoundRectangle2D.Double(
                box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
    }

    private static void outline(Graphics2D g, Rectangle2D box, double wide) {
        g.setColor(Inks.FOCUS.color());
        g.setStroke(new BasicStroke(UIScale.scale((float) wide)));
        g.draw(rounded(box));
    }

    private static Color ink(Role role) {
        return switch (role) {
            case TIME -> Inks.TIME.color();
            case FILL -> Inks.FILL.color();
            case PUNCH -> Inks.PUNCH.color();
        };
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        OptionalInt at = geometry().map(p -> p.at(event.getX())).orElse(OptionalInt.empty());
        if (at.isEmpty()) {
            return null;
        }
        return model.conflict(at.getAsInt())
                .orElse(
                        "Bars %d to %d. Drag to move, drag the right edge to lengthen,"
                                        .formatted(
                                                model.plan().orElseThrow().firstBar(at.getAsInt()),
                                                model.plan().orElseThrow().lastBar(at.getAsInt()))
                                + " double-click to open in the grid.");
    }

    /** The box of a section in pixels, for those who look or click. */
    Rectangle box(int index) {
        StripPlan geometry = geometry().orElseThrow();
        int x = (int) geometry.x(index);
        return new Rectangle(x, 0, (int) geometry.x(index + 1) - x, getHeight());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(300), UIScale.scale(HEIGHT));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(100), UIScale.scale(HEIGHT));
    }
}
