package org.kitweft.ui.phrase;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.OptionalInt;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Role;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

/** The strip worked by mouse and keys, without a display. */
class SectionStripTest {
    private static final int WIDTH = 800;

    private final SessionModel session = new SessionModel(Session.opening());
    private final Notices notices =
            new Notices() {
                @Override
                public void note(String line) {
                    // nobody reads it
                }

                @Override
                public void fault(String line) {
                    throw new AssertionError(line);
                }
            };
    private final Playhead playhead = new Playhead();
    private final PhraseModel model =
            new PhraseModel(
                    session, new PlayModel(session, playhead, Runnable::run, notices), notices);
    private final SectionStrip strip = new SectionStrip(model, playhead);

    @BeforeEach
    void make() {
        strip.setSize(WIDTH, strip.getPreferredSize().height);
        key("M");
    }

    private void key(String name) {
        Object bound = strip.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(name));
        Action action = strip.getActionMap().get(bound);
        action.actionPerformed(null);
    }

    private void mouse(int event, double x, int clicks) {
        strip.dispatchEvent(
                new MouseEvent(
                        strip,
                        event,
                        0,
                        InputEvent.BUTTON1_DOWN_MASK,
                        (int) x,
                        strip.getHeight() / 2,
                        clicks,
                        false,
                        MouseEvent.BUTTON1));
    }

    private void drag(double from, double to) {
        mouse(MouseEvent.MOUSE_PRESSED, from, 1);
        for (int i = 1; i <= 4; i++) {
            mouse(MouseEvent.MOUSE_DRAGGED, from + (to - from) * i / 4, 1);
        }
        mouse(MouseEvent.MOUSE_RELEASED, to, 1);
    }

    private double middle(int index) {
        return strip.box(index).getCenterX();
    }

    private double rightEdge(int index) {
        return strip.box(index).getMaxX();
    }

    private List<Role> roles() {
        return plan().sections().stream().map(PlannedSection::role).toList();
    }

    private PhrasePlan plan() {
        return model.plan().orElseThrow();
    }

    @Test
    void aSectionIsDraggedToAnotherPlaceAndThatIsOneEdit() {
        PhrasePlan before = plan();
        drag(middle(2), 5);
        assertThat(roles()).containsExactly(Role.PUNCH, Role.TIME, Role.FILL);
        assertThat(model.selected()).isEqualTo(OptionalInt.of(0));
        session.undo();
        assertThat(plan()).isEqualTo(before);
    }

    @Test
    void itsRightEdgeIsDraggedToMakeItLongerOrShorterAndThatIsOneEdit() {
        PhrasePlan before = plan();
        double bar = strip.geometry().orElseThrow().x(1) / 6;
        drag(rightEdge(0), rightEdge(0) - 2 * bar);
        assertThat(plan().sections().get(0).bars()).isEqualTo(4);
        session.undo();
        assertThat(plan()).isEqualTo(before);
        drag(rightEdge(0), 1);
        assertThat(plan().sections().get(0).bars()).as("one bar stays").isEqualTo(1);
    }

    @Test
    void aClickChoosesAndADoubleClickOpens() {
        mouse(MouseEvent.MOUSE_PRESSED, middle(1), 1);
        mouse(MouseEvent.MOUSE_RELEASED, middle(1), 1);
        assertThat(model.selected()).isEqualTo(OptionalInt.of(1));
        assertThat(model.open()).isEmpty();
        mouse(MouseEvent.MOUSE_CLICKED, middle(1), 2);
        assertThat(model.open()).isEqualTo(OptionalInt.of(1));
        assertThat(strip.getAccessibleContext().getAccessibleDescription())
                .isEqualTo("section 2, fill, 1 bar, open in the grid");
    }

    @Test
    void everythingCanBeDoneByKeys() {
        key("RIGHT");
        key("shift EQUALS");
        key("P");
        key("alt RIGHT");
        assertThat(roles()).containsExactly(Role.TIME, Role.PUNCH, Role.PUNCH);
        assertThat(plan().sections().get(2).bars()).isEqualTo(2);
        key("MINUS");
        key("L");
        assertThat(model.isLooped()).isTrue();
        key("DELETE");
        key("ENTER");
        key("A");
        assertThat(roles()).containsExactly(Role.TIME, Role.PUNCH, Role.PUNCH);
        assertThat(model.open()).isEqualTo(OptionalInt.of(1));
        key("HOME");
        assertThat(model.selected()).isEqualTo(OptionalInt.of(0));
        key("END");
        assertThat(model.selected()).isEqualTo(OptionalInt.of(2));
    }
}
