package org.kitweft.ui.window;

import java.awt.Component;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Phrase;
import org.kitweft.sound.Part;
import org.kitweft.sound.PlaySettings;

/** Asks how long an exported file is to be and who is in it. */
final class ExportDialog extends JPanel {
    private static final long serialVersionUID = 1;

    /** Of the parts, in their order. */
    private static final String MNEMONICS = "dkamp";

    private static final Set<Part> OF_THE_BAND = Set.of(Part.BASS, Part.COMPING, Part.PUNCHES);

    private final transient Phrase phrase;
    private final transient PlaySettings heard;
    private final JSpinner choruses;
    private final JSpinner countIn;
    private final Map<Part, JCheckBox> parts = new EnumMap<>(Part.class);
    private final JLabel length = new JLabel();

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
        choruses =
                new JSpinner(
                        new SpinnerNumberModel(
                                first.choruses(), 1, ExportChoices.MOST_CHORUSES, 1));
        countIn =
                new JSpinner(
                        new SpinnerNumberModel(
                                first.countInBars(), 0, PlaySettings.MOST_COUNT_IN, 1));
        choruses.setToolTipText("How often the bars are played; with tempo steps, at each of them");
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
        choruses.addChangeListener(e -> follow());
        countIn.addChangeListener(e -> follow());
        follow();
    }

    private void row(String text, char mnemonic, JSpinner spinner) {
        JLabel label = new JLabel(text);
        label.setDisplayedMnemonic(mnemonic);
        label.setLabelFor(spinner);
        spinner.getAccessibleContext().setAccessibleName(text);
        add(label);
        add(spinner);
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
        return new ExportChoices((Integer) choruses.getValue(), (Integer) countIn.getValue(), in);
    }

    private void follow() {
        length.setText(choices().lengthText(phrase, heard) + ", then ringing out");
    }

    /** Asks; empty if the user thought better of it. */
    Optional<ExportChoices> ask(Component owner, String title) {
        Object[] answers = {"Choose the file…", "Cancel"};
        int answer =
                JOptionPane.showOptionDialog(
                        owner,
                        this,
                        title,
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.PLAIN_MESSAGE,
                        null,
                        answers,
                        answers[0]);
        return answer == 0 ? Optional.of(choices()) : Optional.empty();
    }
}
