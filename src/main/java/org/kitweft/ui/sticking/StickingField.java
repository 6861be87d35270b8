package org.kitweft.ui.sticking;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.StickingFamily;
import org.kitweft.pattern.StickingTraits;
import org.kitweft.pattern.TextFormatException;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Paints;
import org.kitweft.ui.theme.TypedLine;

/**
 * The sticking as text. It is read while it is typed; where it cannot be, a caret under the place
 * says what was expected and the groove stays as it was.
 */
final class StickingField extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final JTextField field = new JTextField();
    private final TypedLine line;
    private boolean following;

    StickingField(SessionModel session) {
        super(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]", "[]0[]"));
        this.session = session;
        line =
                new TypedLine(
                        field,
                        () -> session.session().fault(),
                        () -> traits(session.recipe().sticking()));
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
}
