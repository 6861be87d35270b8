package org.kitweft.ui.sticking;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.BadLocationException;
import net.miginfocom.swing.MigLayout;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.StickingFamily;
import org.kitweft.pattern.StickingTraits;
import org.kitweft.pattern.TextFormatException;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/**
 * The sticking as text. It is read while it is typed; where it cannot be, a caret under the place
 * says what was expected and the groove stays as it was.
 */
final class StickingField extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final JTextField field = new JTextField();
    private final Line line = new Line();
    private boolean following;

    StickingField(SessionModel session) {
        super(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]", "[]0[]"));
        this.session = session;
        setOpaque(false);
        Paints.type(field, 145, false);
        field.putClientProperty(
                "JTextField.placeholderText", "RLRR LRLL   >R accent   (L) ghost   - rest");
        field.getAccessibleContext().setAccessibleName("Sticking");
        add(field);
        add(line);
        follow();
        session.addListener(this::follow);
        field.getDocument()
                .addDocumentListener(
                        new DocumentListener() {
                            @Override
                            public void insertUpdate(DocumentEvent event) {
                                typed();
                            }

                            @Override
                            public void removeUpdate(DocumentEvent event) {
                                typed();
                            }

                            @Override
                            public void changedUpdate(DocumentEvent event) {
                                // attributes only
                            }
                        });
        field.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        session.seal();
                    }
                });
        field.addActionListener(e -> session.seal());
    }

    JTextField field() {
        return field;
    }

    private void typed() {
        if (!following) {
            following = true;
            try {
                session.keepEditing("Typing", session.session().typed(field.getText()));
            } finally {
                following = false;
            }
            line.repaint();
        }
    }

    private void follow() {
        if (!following && !field.getText().equals(session.session().text())) {
            following = true;
            try {
                field.setText(session.session().text());
            } finally {
                following = false;
            }
        }
        field.putClientProperty(
                "JComponent.outline", session.session().fault().isPresent() ? "error" : null);
        describe();
        line.repaint();
    }

    private void describe() {
        String text =
                session.session()
                        .fault()
                        .map(TextFormatException::getMessage)
                        .orElseGet(() -> traits(session.recipe().sticking()));
        field.getAccessibleContext().setAccessibleDescription(text);
        field.setToolTipText(session.session().fault().isPresent() ? text : null);
    }

    private static String traits(Sticking sticking) {
        StringBuilder text = new StringBuilder();
        text.append(sticking.size()).append(sticking.size() == 1 ? " stroke" : " strokes");
        int rests = sticking.size() - sticking.struckCount();
        if (rests > 0) {
            text.append(", %d of them rests".formatted(rests));
        }
        boolean handsOnly = sticking.letters().stream().allMatch(l -> l.isOneHand());
        if (handsOnly && sticking.letters().size() == 2) {
            StickingFamily family = StickingTraits.family(sticking);
            text.append("  ·  ").append(family.id().replace('-', ' '));
            text.append(
                    StickingTraits.leadChangesOnRepeat(sticking)
                            ? "  ·  the lead changes over on repeat"
                            : "  ·  the lead stays on repeat");
        }
        return text.toString();
    }

    /** Under the field: the traits of the sticking, or a caret and what was expected there. */
    private final class Line extends JComponent {
        private static final long serialVersionUID = 1;

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(
                    10, getFontMetrics(Paints.font(0.92, false)).getHeight() + UIScale.scale(5));
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = Paints.smooth(graphics);
            try {
                g.setFont(Paints.font(0.92, false));
                Optional<TextFormatException> fault = session.session().fault();
                if (fault.isPresent()) {
                    paintFault(g, fault.get());
                } else {
                    g.setColor(Inks.QUIET.color());
                    g.drawString(
                            Paints.fitting(g, traits(session.recipe().sticking()), getWidth()),
                            UIScale.scale(8),
                            baseline(g));
                }
            } finally {
                g.dispose();
            }
        }

        /** The caret shows the place: the message need not name it again. */
        private static String atTheCaret(TextFormatException fault) {
            String message = fault.getMessage();
            String rest = message.substring(message.indexOf(": ") + 2);
            return Character.toUpperCase(rest.charAt(0)) + rest.substring(1);
        }

        private int baseline(Graphics2D g) {
            return (getHeight() + g.getFontMetrics().getAscent() - g.getFontMetrics().getDescent())
                    / 2;
        }

        private void paintFault(Graphics2D g, TextFormatException fault) {
            double x = UIScale.scale(8);
            try {
                int index = Math.min(fault.index(), field.getDocument().getLength());
                Rectangle2D at = field.modelToView2D(index);
                x = at == null ? x : at.getX();
            } catch (BadLocationException e) {
                // The field has moved on since; the next repaint is right.
                x = UIScale.scale(8);
            }
            x = Math.max(UIScale.scale(6), Math.min(getWidth() - UIScale.scale(8), x));
            g.setColor(Inks.FAULT.color());
            double arm = UIScale.scale(5);
            Path2D caret = new Path2D.Double();
            caret.moveTo(x, 1);
            caret.lineTo(x + arm, 1 + arm * 1.2);
            caret.lineTo(x - arm, 1 + arm * 1.2);
            caret.closePath();
            g.fill(caret);
            String text = atTheCaret(fault);
            double width = g.getFontMetrics().stringWidth(text);
            double left = x + arm * 2;
            if (left + width > getWidth()) {
                left = Math.max(UIScale.scale(6), x - arm * 2 - width);
            }
            g.drawString(Paints.fitting(g, text, getWidth() - left), (float) left, baseline(g));
        }
    }
}
