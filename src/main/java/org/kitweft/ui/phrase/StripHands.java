package org.kitweft.ui.phrase;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.groove.Role;
import org.kitweft.ui.theme.Keys;

/**
 * What mouse and keys do on the strip. Mouse: a click chooses, a double click opens in the grid,
 * dragging a section moves it, dragging its right edge makes it longer or shorter. Keys: M makes a
 * phrase of the sticking in the grid, A adds the groove there as a section; left and right choose;
 * with Alt they move the section; plus and minus lengthen and shorten; T, F, P say its role; Enter
 * opens it in the grid; L plays it alone; Delete takes it out.
 */
final class StripHands {
    private static final int REACH = 6;

    private final SectionStrip strip;
    private final PhraseModel model;

    StripHands(SectionStrip strip, PhraseModel model) {
        this.strip = strip;
        this.model = model;
    }

    void install() {
        Keys.bind(strip, "LEFT", () -> model.select(model.selected().orElse(0) - 1));
        Keys.bind(strip, "RIGHT", () -> model.select(model.selected().orElse(0) + 1));
        Keys.bind(strip, "HOME", () -> model.select(0));
        Keys.bind(strip, "END", () -> model.select(model.count() - 1));
        Keys.bind(strip, "alt LEFT", () -> model.move(-1));
        Keys.bind(strip, "alt RIGHT", () -> model.move(1));
        for (String longer : new String[] {"PLUS", "ADD", "EQUALS", "shift EQUALS"}) {
            Keys.bind(strip, longer, () -> model.lengthen(1));
        }
        for (String shorter : new String[] {"MINUS", "SUBTRACT"}) {
            Keys.bind(strip, shorter, () -> model.lengthen(-1));
        }
        Keys.bind(strip, "M", model::makeOfOne);
        Keys.bind(strip, "A", model::addGroove);
        Keys.bind(strip, "T", () -> model.role(Role.TIME));
        Keys.bind(strip, "F", () -> model.role(Role.FILL));
        Keys.bind(strip, "P", () -> model.role(Role.PUNCH));
        Keys.bind(strip, "ENTER", model::toggleOpen);
        Keys.bind(strip, "L", () -> model.loop(!model.isLooped()));
        Keys.bind(strip, "DELETE", model::remove);
        Mouse mouse = new Mouse();
        strip.addMouseListener(mouse);
        strip.addMouseMotionListener(mouse);
    }

    private final class Mouse extends MouseAdapter {
        /** Geometry when the button went down: boxes move under the mouse while it drags. */
        private Optional<StripPlan> pressed = Optional.empty();

        private OptionalInt edge = OptionalInt.empty();
        private OptionalInt moving = OptionalInt.empty();
        private int from;

        @Override
        public void mousePressed(MouseEvent event) {
            strip.requestFocusInWindow();
            pressed = strip.geometry();
            from = event.getX();
            edge = edge(event);
            moving = OptionalInt.empty();
            edge.ifPresentOrElse(
                    model::select,
                    () -> pressed.map(p -> p.at(from)).ifPresent(i -> i.ifPresent(model::select)));
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (pressed.isEmpty()) {
                return;
            }
            StripPlan plan = pressed.get();
            if (edge.isPresent()) {
                int index = edge.getAsInt();
                int bars = plan.phrase().sections().get(index).bars();
                long more = Math.round(plan.bars(index, event.getX() - from));
                model.barsOf(index, (int) Math.max(1, bars + more));
                return;
            }
            OptionalInt held = plan.at(from);
            boolean far = Math.abs(event.getX() - from) > UIScale.scale(REACH);
            if (held.isPresent() && (far || moving.isPresent())) {
                moving = held;
                strip.showDrop(OptionalInt.of(plan.placeAt(event.getX())));
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (moving.isPresent() && pressed.isPresent()) {
                strip.showDrop(OptionalInt.empty());
                int place = pressed.get().placeAt(event.getX());
                model.moveTo(moving.getAsInt(), place);
            }
            model.session().seal();
            pressed = Optional.empty();
            moving = OptionalInt.empty();
            edge = OptionalInt.empty();
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            if (event.getClickCount() == 2 && edge(event).isEmpty()) {
                strip.geometry()
                        .map(p -> p.at(event.getX()))
                        .filter(OptionalInt::isPresent)
                        .ifPresent(at -> model.toggleOpen());
            }
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            strip.setCursor(
                    Cursor.getPredefinedCursor(
                            edge(event).isPresent()
                                    ? Cursor.E_RESIZE_CURSOR
                                    : Cursor.DEFAULT_CURSOR));
        }

        private OptionalInt edge(MouseEvent event) {
            return strip.geometry()
                    .map(p -> p.edgeAt(event.getX(), UIScale.scale(REACH)))
                    .orElse(OptionalInt.empty());
        }
    }
}
