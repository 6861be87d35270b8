package org.kitweft.ui.window;

import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.page.Paper;

/** What stands on a handout, to be changed: the lesson's title and the settings of the page. */
final class HandoutForm extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient HandoutSettings before;
    private final JTextField title = new JTextField(30);
    private final JTextField nameLine = new JTextField();
    private final JTextField footer = new JTextField();
    private final JRadioButton a4 = new JRadioButton("A4");
    private final JRadioButton letter = new JRadioButton("Letter");
    private final JRadioButton twoVoices = new JRadioButton("Two: hands up, feet down");
    private final JRadioButton oneVoice = new JRadioButton("One");
    private final JCheckBox sticking = new JCheckBox("Sticking letters");
    private final JCheckBox counting = new JCheckBox("Counting line");
    private final JCheckBox kit = new JCheckBox("Kit from above");
    private final JCheckBox legend = new JCheckBox("Legend of the noteheads");
    private final JCheckBox practiceLog = new JCheckBox("Practice log");
    private final JCheckBox careNotes = new JCheckBox("Care notes");

    HandoutForm(String lessonTitle, HandoutSettings settings) {
        super(new MigLayout("insets 14 18 6 18, gapx 12, gapy 7, wrap 2", "[right][grow,fill]"));
        before = settings;
        title.setText(lessonTitle);
        title.putClientProperty("JTextField.placeholderText", HandoutCommands.UNTITLED);
        nameLine.setText(settings.nameLine());
        footer.setText(settings.footer());
        a4.setSelected(settings.paper() == Paper.A4);
        letter.setSelected(settings.paper() == Paper.LETTER);
        oneVoice.setSelected(settings.notation().oneVoice());
        twoVoices.setSelected(!settings.notation().oneVoice());
        sticking.setSelected(settings.notation().sticking());
        counting.setSelected(settings.notation().counting());
        kit.setSelected(settings.kit());
        legend.setSelected(settings.legend());
        practiceLog.setSelected(settings.practiceLog());
        careNotes.setSelected(settings.careNotes());
        explain();
        fill();
    }

    private void explain() {
        title.setToolTipText(
                "Stands over the first page; it is the title of the lesson. Empty: "
                        + HandoutCommands.UNTITLED);
        nameLine.setToolTipText("Stands before the line for a name; empty: no such line");
        footer.setToolTipText("Stands at the foot of each page");
        a4.setToolTipText("210 by 297 mm");
        letter.setToolTipText("8.5 by 11 inches");
        twoVoices.setToolTipText(
                "Two voices on the staff: stems of the hands up, of the feet down");
        oneVoice.setToolTipText("One voice on the staff: all stems up");
        sticking.setToolTipText("R and L under the notes");
        counting.setToolTipText("1 e & a under the notes");
        kit.setToolTipText("A drawing of the kit for each groove, with the limbs that play");
        legend.setToolTipText("A line that names each notehead");
        practiceLog.setToolTipText("A table to fill in at home");
        careNotes.setToolTipText("Pauses, pain, hearing");
        title.setName("title");
        nameLine.setName("nameLine");
        footer.setName("footer");
    }

    private void fill() {
        labelled("Title", 'T', title);
        labelled("Name line", 'N', nameLine);
        labelled("Footer", 'F', footer);
        choice("Paper", a4, letter);
        choice("Voices", twoVoices, oneVoice);
        a4.setMnemonic('4');
        letter.setMnemonic('R');
        twoVoices.setMnemonic('W');
        oneVoice.setMnemonic('O');
        sticking.setMnemonic('S');
        counting.setMnemonic('C');
        kit.setMnemonic('K');
        legend.setMnemonic('L');
        practiceLog.setMnemonic('P');
        careNotes.setMnemonic('A');
        add(new JLabel("On the page"), "top, gaptop 4");
        JPanel parts = new JPanel(new MigLayout("insets 0, gapx 16, gapy 3, wrap 2", "[][]"));
        List.of(sticking, counting, kit, legend, practiceLog, careNotes).forEach(parts::add);
        add(parts);
    }

    private void labelled(String text, char mnemonic, JTextField field) {
        JLabel label = new JLabel(text);
        label.setLabelFor(field);
        label.setDisplayedMnemonic(mnemonic);
        field.getAccessibleContext().setAccessibleName(text);
        add(label);
        add(field);
    }

    private void choice(String text, JRadioButton one, JRadioButton other) {
        ButtonGroup group = new ButtonGroup();
        group.add(one);
        group.add(other);
        add(new JLabel(text));
        JPanel both = new JPanel(new MigLayout("insets 0, gapx 16", "[][]"));
        for (JRadioButton button : List.of(one, other)) {
            button.getAccessibleContext().setAccessibleName(text + ": " + button.getText());
            both.add(button);
        }
        add(both);
    }

    /** Where typing begins. */
    JComponent focusTarget() {
        return title;
    }

    /** The title as it stands now. */
    String lessonTitle() {
        return title.getText().strip();
    }

    /** The settings as they stand now. */
    HandoutSettings settings() {
        return before.withPaper(letter.isSelected() ? Paper.LETTER : Paper.A4)
                .withNameLine(nameLine.getText().strip())
                .withFooter(footer.getText().strip())
                .withNotation(
                        before.notation()
                                .withOneVoice(oneVoice.isSelected())
                                .withSticking(sticking.isSelected())
                                .withCounting(counting.isSelected()))
                .withKit(kit.isSelected())
                .withLegend(legend.isSelected())
                .withPracticeLog(practiceLog.isSelected())
                .withCareNotes(careNotes.isSelected());
    }
}
