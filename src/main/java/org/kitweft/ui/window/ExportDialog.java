package org.kitweft.ui.window;

import java.awt.Component;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Phrase;
import org.kitweft.sound.Part;
import org.kitweft.sound.PlaySettings;
import org.kitweft.ui.theme.Inks;

/** Asks how long an exported file is to be and who is in it. */
final class ExportDialog extends JPanel {
    private static final long serialVersionUID = 1;

    /** Of the parts, in their order. */
    private static final String MNEMONICS = "dkamp";

    private static final Set<Part> OF_THE_BAND = Set.of(Part.BASS, Part.COMPING, Part.PUNCHES);

    private final transient Phrase phrase;
    private final transient PlaySettings heard;
    private final NumberField choruses;
    private final NumberField countIn;
    private final Map<Part, JCheckBox> parts = new EnumMap<>(Part.class);
    private final JLabel length = new JLabel();
    private final JButton choose = new JButton("Choose the file…");

    /**
     * @param phrase all that plays
     * @param heard how it plays now
     * @param band whether a band plays along
     */
    ExportDialog(Phrase phrase, PlaySettings heard, boolean band) {
        super(new MigLayout("insets 0, gapy 8, wrap 2", "[]12[left,grow]"));
        this.phrase = phrase;
        this.heard = heard;
        ExportChoices first = ExportChoices.proposed(heard);
        choruses = new NumberField("Choruses", first.choruses(), 1, ExportChoices.MOST_CHORUSES);
        countIn =
                new NumberField(
                        "Count-in, bars", first.countInBars(), 0, PlaySettings.MOST_COUNT_IN);
        choruses.setToolTipText(
                "How often the bars are played, 1 to 999; with tempo steps, at each of them");
        countIn.setToolTipText("Bars of click before the first, 0 to 8");
        row("Choruses", 'C', choruses);
        row("Count-in, bars", 'n', countIn);
        add(new JLabel("In the file"), "top");
        add(parts(first, band));
        ExportChoices.practice(heard, phrase.bars())
                .forEach(
                        (name, value) -> {
                            add(new JLabel(name));
                            add(new JLabel(value));
                        });
        add(new JLabel("Length"));
        add(length);
        choruses.onChange(this::follow);
        countIn.onChange(this::follow);
        follow();
    }

    private void row(String text, char mnemonic, NumberField field) {
        JLabel label = new JLabel(text);
        label.setDisplayedMnemonic(mnemonic);
        label.setLabelFor(field);
        add(label);
        add(field);
    }

    private JPanel parts(ExportChoices first, boolean band) {
        JPanel boxes = new JPanel(new MigLayout("insets 0, gapx 10"));
        for (Part part : Part.values()) {
            boolean plays = band || !OF_THE_BAND.contains(part);
            JCheckBox box = new JCheckBox(part.id(), plays && first.parts().contains(part));
            box.setMnemonic(MNEMONICS.charAt(part.ordinal()));
            box.setEnabled(plays);
            box.setToolTipText(
                    plays
                            ? "Leave the %s out to play that part yourself".formatted(part.id())
                            : "No band plays along: it is put on in the Band tab");
            box.addActionListener(e -> follow());
            parts.put(part, box);
            boxes.add(box);
        }
        return boxes;
    }

    /** What is chosen now. */
    ExportChoices choices() {
        Set<Part> in = EnumSet.noneOf(Part.class);
        parts.forEach(
                (part, box) -> {
                    if (box.isSelected()) {
                        in.add(part);
                    }
                });
        return new ExportChoices(choruses.typed().orElseThrow(), countIn.typed().orElseThrow(), in);
    }

    /** What cannot be exported as it is typed, and what could; empty if all can. */
    Optional<String> fault() {
        return choruses.fault().or(countIn::fault);
    }

    private void follow() {
        Optional<String> fault = fault();
        length.setText(
                fault.map(line -> "⚠ " + line)
                        .orElseGet(
                                () -> choices().lengthText(phrase, heard) + ", then ringing out"));
        length.setForeground((fault.isPresent() ? Inks.FAULT : Inks.TEXT).color());
        for (NumberField field : List.of(choruses, countIn)) {
            field.putClientProperty(
                    "JComponent.outline", field.fault().isPresent() ? "error" : null);
        }
        choose.setEnabled(fault.isEmpty());
    }

    /** Asks; empty if the user thought better of it. */
    Optional<ExportChoices> ask(Component owner, String title) {
        JButton cancel = new JButton("Cancel");
        JOptionPane pane =
                new JOptionPane(
                        this,
                        JOptionPane.PLAIN_MESSAGE,
                        JOptionPane.DEFAULT_OPTION,
                        null,
                        new Object[] {choose, cancel},
                        choose);
        choose.addActionListener(e -> pane.setValue(choose));
        cancel.addActionListener(e -> pane.setValue(cancel));
        JDialog dialog = pane.createDialog(owner, title);
        dialog.setVisible(true);
        dialog.dispose();
        return choose.equals(pane.getValue()) ? Optional.of(choices()) : Optional.empty();
    }
}
