package org.kitweft.ui.count;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;
import org.kitweft.explore.Choices;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.FlowWrap;
import org.kitweft.ui.theme.Paints;

/**
 * The sounds that each letter may choose from, to be switched on and off. Further sounds of a
 * surface stand after it under their own name alone.
 */
public final class ChoiceChips extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;

    /** What the chips were made for; they are made anew only when that changes. */
    private transient Map<Letter, List<SoundName>> offered = Map.of();

    private final transient Map<Letter, Map<SoundName, JToggleButton>> chips =
            new EnumMap<>(Letter.class);

    /** Chips for the session's letters. */
    public ChoiceChips(SessionModel session) {
        super(new MigLayout("insets 4 12 2 6, gapx 8, gapy 3, wrap 2", "[][grow,fill]", "[top]"));
        this.session = session;
        session.addListener(this::follow);
        follow();
    }

    private void follow() {
        Session now = session.session();
        Map<Letter, List<SoundName>> offer = new EnumMap<>(Letter.class);
        now.recipe().sticking().letters().forEach(l -> offer.put(l, now.soundsFor(l)));
        if (!offer.equals(offered)) {
            offered = offer;
            build();
        }
        Choices inUse = now.choicesInUse();
        chips.forEach(
                (letter, ofLetter) ->
                        ofLetter.forEach(
                                (sound, chip) ->
                                        chip.setSelected(inUse.of(letter).contains(sound))));
    }

    private void build() {
        removeAll();
        chips.clear();
        offered.forEach(
                (letter, sounds) -> {
                    JLabel title = new JLabel(letter + " on");
                    Paints.type(title, 100, true);
                    title.setToolTipText(
                            "Counted are the sounds switched on: one of each surface, until you"
                                    + " choose others");
                    add(title, "gaptop 4");
                    JPanel row = new JPanel(new FlowWrap(UIScale.scale(3)));
                    Map<SoundName, JToggleButton> ofLetter = new LinkedHashMap<>();
                    for (SoundName sound : sounds) {
                        JToggleButton chip = chip(letter, sound, sounds);
                        ofLetter.put(sound, chip);
                        row.add(chip);
                    }
                    JButton all = new JButton("all");
                    all.putClientProperty("JButton.buttonType", "roundRect");
                    all.putClientProperty("FlatLaf.style", "minimumWidth: 20");
                    Paints.type(all, 90, true);
                    all.setMargin(UIScale.scale(new Insets(0, 4, 0, 4)));

                    all.setToolTipText("Every sound that " + letter + " can reach");
                    all.addActionListener(e -> choose(letter, sounds));
                    row.add(all);
                    chips.put(letter, ofLetter);
                    add(row, "wmin 0");
                });
        revalidate();
        repaint();
    }

    private JToggleButton chip(Letter letter, SoundName sound, List<SoundName> offer) {
        JToggleButton chip = new JToggleButton(shortName(sound, offer));
        chip.setToolTipText(letter + " may choose " + name(sound));
        Paints.type(chip, 90, false);
        chip.putClientProperty("JButton.buttonType", "roundRect");
        chip.setMargin(UIScale.scale(new Insets(0, 4, 0, 4)));
        chip.getAccessibleContext().setAccessibleName(letter + " may choose " + name(sound));
        chip.addActionListener(e -> toggle(letter, sound));
        return chip;
    }

    private String name(SoundName sound) {
        Surface surface = session.recipe().kit().surfaceOf(sound);
        boolean only = surface.sounds().get(0).id().equals(sound.sound());
        return only ? surface.name() : surface.name() + " " + sound.sound().replace('-', ' ');
    }

    /** A sound after the first of its surface by its own name: it stands behind the surface's. */
    private String shortName(SoundName sound, List<SoundName> offer) {
        Surface surface = session.recipe().kit().surfaceOf(sound);
        boolean first = surface.sounds().get(0).id().equals(sound.sound());
        boolean led = offer.contains(surface.nameOf(surface.sounds().get(0)));
        return first || !led ? name(sound) : sound.sound().replace('-', ' ');
    }

    private void toggle(Letter letter, SoundName sound) {
        List<SoundName> before = session.session().choicesInUse().of(letter);
        List<SoundName> next = new ArrayList<>();
        for (SoundName candidate : offered.getOrDefault(letter, List.of())) {
            if (before.contains(candidate) != candidate.equals(sound)) {
                next.add(candidate);
            }
        }
        if (next.isEmpty()) {
            follow();
            return;
        }
        choose(letter, next);
    }

    private void choose(Letter letter, List<SoundName> sounds) {
        Session now = session.session();
        session.edit("Choose sounds", now.with(now.choices().with(letter, sounds)));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(16);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
