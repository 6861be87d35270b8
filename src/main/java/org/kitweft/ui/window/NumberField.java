package org.kitweft.ui.window;

import java.util.Optional;
import javax.swing.JFormattedTextField;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/**
 * A whole number to be typed or turned. What is typed counts at once; what is out of range stays as
 * it is typed and is told, rather than snapping back.
 */
final class NumberField extends JSpinner {
    private static final long serialVersionUID = 1;

    private final String what;
    private final int least;
    private final int most;

    /**
     * A field.
     *
     * @param what it asks for, as it stands before it
     * @param least the least that may be asked for
     * @param most the most
     */
    NumberField(String what, int value, int least, int most) {
        super(new SpinnerNumberModel(value, least, most, 1));
        this.what = what;
        this.least = least;
        this.most = most;
        field().setFocusLostBehavior(JFormattedTextField.PERSIST);
        getAccessibleContext().setAccessibleName(what);
    }

    /** The part that is typed in. */
    JFormattedTextField field() {
        return ((JSpinner.DefaultEditor) getEditor()).getTextField();
    }

    /** Is called after each change of the text. */
    void onChange(Runnable listener) {
        field().getDocument()
                .addDocumentListener(
                        new DocumentListener() {
                            @Override
                            public void insertUpdate(DocumentEvent event) {
                                listener.run();
                            }

                            @Override
                            public void removeUpdate(DocumentEvent event) {
                                listener.run();
                            }

                            @Override
                            public void changedUpdate(DocumentEvent event) {
                                listener.run();
                            }
                        });
    }

    /** What is allowed instead, if what is typed is not: {@code Choruses: 1 to 999}. */
    Optional<String> fault() {
        return typed().isPresent()
                ? Optional.empty()
                : Optional.of("%s: %d to %d".formatted(what, least, most));
    }

    /** The number that is typed, if it is one that may be asked for. */
    Optional<Integer> typed() {
        String text = field().getText().strip();
        // Six figures are more than any field here allows and fewer than an int holds.
        return text.matches("\\d{1,6}")
                ? Optional.of(Integer.valueOf(text)).filter(n -> n >= least && n <= most)
                : Optional.empty();
    }
}
