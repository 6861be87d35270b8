package org.kitweft.ui.mix;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.kitweft.sound.Part;
import org.kitweft.sound.Strip;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Inks;

/** A strip for each part: level, pan, mute and solo. What is turned is heard at once. */
public final class MixerPanel extends JPanel {
    private static final long serialVersionUID = 1;
    private static final String COLUMNS =
            "[]12[fill]6[right]18[fill]6[left]18[]4[]18[fill]12[left,grow]";
    private static final String CARE =
            "Start low, raise the level only until it is comfortable, rest the ears. Ringing or"
                    + " dull hearing mean: stop. Local rules and an audiologist come first.";

    private final transient MixModel model;
    private final transient Map<Part, Row> rows = new EnumMap<>(Part.class);
    private boolean following;

    /** A mixer for what a session plays. */
    public MixerPanel(SessionModel session, PlayModel play) {
        super(new MigLayout("insets 8 12 8 12, gapy 4, wrap 9", COLUMNS));
        this.model = new MixModel(session, play);
        head();
        for (Part part : Part.values()) {
            rows.put(part, new Row(part));
        }
        JLabel care = quiet(CARE);
        add(care, "span 9, wmin 0, gaptop 4");
        play.addListener(this::follow);
        follow();
    }

    /** What takes the keys: the level of the drums. */
    public JComponent focusTarget() {
        return rows.get(Part.DRUMS).level;
    }

    private void head() {
        for (String title : new String[] {"", "Level", "", "Pan", "", "Mute", "Solo"}) {
            add(quiet(title), title.isEmpty() ? "" : "left");
        }
        JButton reset = new JButton("Reset all");
        reset.setMnemonic('A');
        reset.setDisplayedMnemonicIndex(6);
        reset.setToolTipText("Level and pan of all parts as at first, none muted or solo");
        reset.addActionListener(e -> model.reset());
        add(reset, "span 2, growx 0, alignx left");
    }

    private static JLabel quiet(String text) {
        JLabel label = new JLabel(text);
        label.putClientProperty("FlatLaf.style", "foreground: $Kitweft.quiet");
        return label;
    }

    private void follow() {
        following = true;
        try {
            rows.values().forEach(Row::follow);
        } finally {
            following = false;
        }
    }

    /** The strip of one part. */
    private final class Row {
        private final Part part;
        private final JLabel name;
        private final JSlider level = new JSlider(0, MixModel.FULL);
        private final JLabel decibels = new JLabel();
        private final JSlider pan = new JSlider(-MixModel.FULL, MixModel.FULL);
        private final JLabel place = new JLabel();
        private final JToggleButton mute;
        private final JToggleButton solo;
        private final JLabel unheard = quiet("");

        Row(Part part) {
            this.part = part;
            String words = MixModel.name(part);
            name = new JLabel(words);
            name.setLabelFor(level);
            level.setToolTipText("Level of the " + part.id() + ", 0 to 100 %; arrow keys turn it");
            pan.setToolTipText(
                    "Place of the "
                            + part.id()
                            + " from 100 left to 100 right; arrow keys turn it");
            mute = toggle("M", "Mute the " + part.id());
            solo = toggle("S", "Only the " + part.id() + ", and others that are solo");
            JButton reset = new JButton("Reset");
            reset.setToolTipText("Level and pan of the " + part.id() + " as at first, heard");
            name(level, words + " level");
            name(pan, words + " pan");
            name(reset, "Reset the " + part.id());
            level.setPreferredSize(UIScale.scale(new Dimension(260, 24)));
            pan.setPreferredSize(UIScale.scale(new Dimension(130, 24)));
            decibels.setPreferredSize(UIScale.scale(new Dimension(62, 16)));
            decibels.setHorizontalAlignment(JLabel.RIGHT);
            place.setPreferredSize(UIScale.scale(new Dimension(66, 16)));
            listen(reset);
            for (JComponent cell :
                    new JComponent[] {
                        name, level, decibels, pan, place, mute, solo, reset, unheard
                    }) {
                MixerPanel.this.add(cell);
            }
        }

        private void listen(JButton reset) {
            turning(level, () -> model.level(part, level.getValue()));
            turning(pan, () -> model.pan(part, pan.getValue()));
            mute.addActionListener(e -> model.muted(part, mute.isSelected()));
            solo.addActionListener(e -> model.solo(part, solo.isSelected()));
            reset.addActionListener(e -> model.reset(part));
        }

        /** One drag is undone as one, and so is turning by keys until the slider is left. */
        private void turning(JSlider slider, Runnable body) {
            boolean[] dragged = new boolean[1];
            slider.addChangeListener(
                    e -> {
                        if (following) {
                            return;
                        }
                        boolean drags = slider.getValueIsAdjusting();
                        if (drags && !dragged[0]) {
                            model.seal();
                        }
                        body.run();
                        if (!drags && dragged[0]) {
                            model.seal();
                        }
                        dragged[0] = drags;
                    });
            slider.addFocusListener(
                    new FocusAdapter() {
                        @Override
                        public void focusLost(FocusEvent event) {
                            model.seal();
                        }
                    });
        }

        private static JToggleButton toggle(String text, String what) {
            JToggleButton button = new JToggleButton(text);
            button.setToolTipText(what);
            button.setMargin(new Insets(2, 8, 2, 8));
            name(button, what);
            return button;
        }

        private static void name(JComponent component, String name) {
            component.getAccessibleContext().setAccessibleName(name);
        }

        private void follow() {
            Strip strip = model.strip(part);
            // A slider has fewer steps than a level: it must not round what it only shows.
            level.setValue(MixModel.levelPercent(strip));
            decibels.setText(MixModel.levelText(strip));
            pan.setValue(MixModel.panPercent(strip));
            place.setText(MixModel.panText(strip));
            mute.setSelected(strip.muted());
            solo.setSelected(strip.solo());
            String why = model.unheard(part);
            unheard.setText(why);
            name.setForeground(why.isEmpty() ? Inks.TEXT.color() : Inks.QUIET.color());
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (rows != null) {
            follow();
        }
    }
}
