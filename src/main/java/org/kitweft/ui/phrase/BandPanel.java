package org.kitweft.ui.phrase;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.SpinnerNumberModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.kitweft.band.Backing;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.band.ClaveDirection;
import org.kitweft.band.Style;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.FlowWrap;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;
import org.kitweft.ui.theme.TypedLine;

/**
 * The band that plays along with groove or phrase: chords as text, style with its reasons, the
 * clave's direction where the style has one, and what the seed varies.
 */
public final class BandPanel extends TabPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final transient Map<String, Style> styles =
            BuiltInStyles.names().stream()
                    .collect(Collectors.toMap(name -> name, BuiltInStyles::load));
    private final JToggleButton on = new JToggleButton("Band plays along");
    private final JTextField chords = new JTextField();
    private final TypedLine line;
    private final JComboBox<String> style =
            new JComboBox<>(BuiltInStyles.names().toArray(String[]::new));
    private final JComboBox<ClaveDirection> clave = new JComboBox<>(ClaveDirection.values());
    private final JLabel claveLabel;
    private final JSpinner seed =
            new JSpinner(new SpinnerNumberModel((Number) 0L, Long.MIN_VALUE, Long.MAX_VALUE, 1L));
    private final JButton another = new JButton("Another one");
    private final JButton swing = new JButton();
    private final JTextArea reasons = new JTextArea();
    private boolean following;

    /** A panel for the session's band. */
    public BandPanel(SessionModel session) {
        super(
                new MigLayout(
                        "insets 8 10 8 10, gapx 14, gapy 0, wrap 2",
                        "[grow 55,fill,sg][grow 45,fill,sg]",
                        "[][][grow,fill]"));
        this.session = session;
        line = new TypedLine(chords, () -> draft().fault(), this::chartInWords);
        claveLabel = label("Clave", clave);
        add(asking(), "spany 3, aligny top, wmin 0");
        JLabel heading = new JLabel("Why the style is played so");
        Paints.type(heading, 100, true);
        heading.setLabelFor(reasons);
        add(heading, "gapbottom 4");
        add(why(), "skip 0, spany 2, grow, wmin 0, hmin 40");
        listen();
        session.addListener(this::follow);
        follow();
    }

    private JPanel asking() {
        JPanel column =
                new JPanel(
                        new MigLayout("insets 0, gapy 0, wrap 1", "[grow,fill]", "[]8[][][]8[]"));
        on.setMnemonic('B');
        another.setMnemonic('N');
        on.setToolTipText("Bass, chords and punches play along with groove or phrase");
        JPanel first = new JPanel(new MigLayout("insets 0, gap 8"));
        first.add(on);
        column.add(first);
        JLabel label = label("Chords", chords);
        Paints.type(label, 100, true);
        column.add(label, "gapbottom 3");
        Paints.type(chords, 120, false);
        chords.setToolTipText(
                "Bars between |, chords between spaces, % repeats, N.C. is silence; a chart shorter"
                        + " than the phrase starts again");
        column.add(chords, "wmin 0");
        column.add(line, "wmin 0");
        column.add(how());
        return column;
    }

    private JPanel how() {
        JPanel row = new JPanel(new FlowWrap(UIScale.scale(10)));
        style.setRenderer(new StyleNames());
        style.setToolTipText("How the band plays");
        clave.setRenderer(new ClaveNames());
        clave.setToolTipText("Which side of the clave comes first");
        seed.setToolTipText("A number for what the band varies: the same number, the same notes");
        seed.setEditor(new JSpinner.NumberEditor(seed, "0"));
        ((JSpinner.DefaultEditor) seed.getEditor()).getTextField().setColumns(5);
        another.setToolTipText("Let the band vary its figures in another way");
        swing.setToolTipText(
                "Let drums and band swing as the style does: where the second of two eighths falls,"
                        + " in percent; 50 is straight");
        row.add(group(label("Style", style), style, swing));
        row.add(group(claveLabel, clave));
        row.add(group(label("Take", seed), seed, another));
        return row;
    }

    private static JPanel group(JComponent... parts) {
        JPanel group = new JPanel(new MigLayout("insets 0, gap 6, hidemode 3"));
        group.setOpaque(false);
        for (JComponent part : parts) {
            group.add(part);
        }
        return group;
    }

    private JScrollPane why() {
        reasons.setEditable(false);
        reasons.setLineWrap(true);
        reasons.setWrapStyleWord(true);
        reasons.setOpaque(false);
        reasons.setBorder(BorderFactory.createEmptyBorder());
        reasons.getAccessibleContext().setAccessibleName("Why the style is played so");
        JScrollPane scroll = new JScrollPane(reasons);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(UIScale.scale(16));
        return scroll;
    }

    private static JLabel label(String text, JComponent target) {
        JLabel label = new JLabel(text);
        label.setLabelFor(target);
        target.getAccessibleContext().setAccessibleName(text);
        return label;
    }

    private PhraseDraft draft() {
        return session.session().draft();
    }

    private Style chosen() {
        return Objects.requireNonNull(styles.get(draft().backing().style()));
    }

    private String chartInWords() {
        int bars = draft().backing().chart().bars().size();
        return "%s of chords, then again".formatted(PhraseModel.bars(bars));
    }

    private void listen() {
        on.addActionListener(
                e ->
                        backing(
                                on.isSelected() ? "Band on" : "Band off",
                                b -> b.withOn(on.isSelected())));
        style.addActionListener(
                e -> backing("Style", b -> b.withStyle((String) style.getSelectedItem())));
        clave.addActionListener(
                e -> backing("Clave", b -> b.withClave((ClaveDirection) clave.getSelectedItem())));
        seed.addChangeListener(
                e -> backing("Take", b -> b.withSeed(((Number) seed.getValue()).longValue())));
        swing.addActionListener(
                e -> session.edit("Swing", session.session().withSwing(chosen().swing())));
        another.addActionListener(e -> backing("Take", b -> b.withSeed(b.seed() + 1)));
        chords.getDocument()
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
        chords.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        session.seal();
                    }
                });
        chords.addActionListener(e -> session.seal());
    }

    private void backing(String name, UnaryOperator<Backing> change) {
        if (!following) {
            PhraseDraft now = draft();
            session.edit(name, session.session().with(now.with(change.apply(now.backing()))));
        }
    }

    private void typed() {
        if (!following) {
            session.keepEditing("Chords", session.session().with(draft().typed(chords.getText())));
        }
    }

    /** The component that takes the keys. */
    public JComponent focusTarget() {
        return chords;
    }

    private void follow() {
        following = true;
        try {
            PhraseDraft now = draft();
            on.setSelected(now.backing().on());
            if (!chords.getText().equals(now.typed())) {
                chords.setText(now.typed());
            }
            chords.putClientProperty(
                    "JComponent.outline", now.fault().isPresent() ? "error" : null);
            chords.getAccessibleContext()
                    .setAccessibleDescription(
                            now.fault().map(f -> f.getMessage()).orElseGet(this::chartInWords));
            Style chosen = chosen();
            style.setSelectedItem(now.backing().style());
            clave.setSelectedItem(now.backing().clave());
            boolean hasClave = chosen.hasClave();
            clave.setVisible(hasClave);
            claveLabel.setVisible(hasClave);
            seed.setValue(now.backing().seed());
            swing.setText("Swing %d %%".formatted(chosen.swing()));
            swing.setVisible(chosen.swing() != session.recipe().grid().swing());
            String text = String.join("\n", chosen.reasons());
            if (!reasons.getText().equals(text)) {
                reasons.setText(text);
                reasons.setCaretPosition(0);
            }
            reasons.setForeground(Inks.QUIET.color());
            line.repaint();
        } finally {
            following = false;
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (reasons != null) {
            reasons.setForeground(Inks.QUIET.color());
        }
    }

    /** Styles by their titles. */
    private final class StyleNames extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            Style known = value instanceof String name ? styles.get(name) : null;
            return super.getListCellRendererComponent(
                    list, known == null ? value : known.title(), index, selected, focus);
        }
    }

    /** Directions as the trade writes them. */
    private static final class ClaveNames extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            return super.getListCellRendererComponent(
                    list,
                    value instanceof ClaveDirection direction ? direction.id() : value,
                    index,
                    selected,
                    focus);
        }
    }
}
