package org.kitweft.ui.groove;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Layer;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.session.StrokeEdits;
import org.kitweft.ui.theme.Inks;
import org.kitweft.ui.theme.Paints;

/** The figures that limbs repeat beside the sticking, a row a layer. */
public final class LayerTable extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final transient Notices notices;
    private final JPanel rows =
            new JPanel(new MigLayout("insets 0, gapx 10, gapy 5, wrap 5", "[][][][grow,fill][]"));
    private final JPanel offers = new JPanel(new MigLayout("insets 0, gap 6"));
    private transient List<Layer> shown = List.of();
    private transient Optional<Kit> offered = Optional.empty();
    private boolean building;

    /** A table for the session. */
    public LayerTable(SessionModel session, Notices notices) {
        super(new MigLayout("insets 8 12 8 12, gapy 8, wrap 1", "[grow,fill]"));
        this.session = session;
        this.notices = notices;
        add(rows);
        add(offers);
        session.addListener(this::follow);
        follow();
    }

    private void follow() {
        Kit kit = session.recipe().kit();
        List<Layer> layers = session.recipe().voicing().layers();
        boolean otherKit = !offered.equals(Optional.of(kit));
        if (otherKit) {
            offered = Optional.of(kit);
            buildOffers(kit);
        }
        if (otherKit || !layers.equals(shown)) {
            shown = layers;
            building = true;
            try {
                buildRows();
            } finally {
                building = false;
            }
        }
    }

    private void buildRows() {
        rows.removeAll();
        if (shown.isEmpty()) {
            JLabel none =
                    new JLabel(
                            "No layers yet. A layer is a figure that one limb repeats under the"
                                    + " sticking, with a length of its own.");
            none.setForeground(Inks.QUIET.color());
            rows.add(none, "span 5, wmin 0");
        }
        for (int i = 0; i < shown.size(); i++) {
            addRow(i, shown.get(i));
        }
        revalidate();
        repaint();
    }

    private void addRow(int index, Layer layer) {
        JComboBox<Limb> limb = Choosers.limbs();
        limb.setSelectedItem(layer.limb());
        JComboBox<SoundName> sound =
                Choosers.sounds(session.recipe().kit().soundsFor(layer.limb()));
        sound.setSelectedItem(layer.sound());
        JComboBox<Integer> steps = Choosers.stepsPerBeat();
        steps.setSelectedItem(layer.stepsPerBeat());
        JTextField figure = new JTextField(layer.figure().text());
        JButton remove = new JButton("Remove");
        String name = "Layer " + (index + 1);
        limb.getAccessibleContext().setAccessibleName(name + " limb");
        sound.getAccessibleContext().setAccessibleName(name + " sound");
        steps.getAccessibleContext().setAccessibleName(name + " steps");
        figure.getAccessibleContext().setAccessibleName(name + " figure");
        figure.setToolTipText("x a stroke, >x an accent, (x) a ghost stroke, - a rest");
        limb.addActionListener(e -> limb(index, (Limb) limb.getSelectedItem()));
        sound.addActionListener(
                e ->
                        replace(
                                index,
                                new Layer(
                                        layer.limb(),
                                        (SoundName) sound.getSelectedItem(),
                                        layer.stepsPerBeat(),
                                        layer.figure())));
        steps.addActionListener(
                e ->
                        replace(
                                index,
                                new Layer(
                                        layer.limb(),
                                        layer.sound(),
                                        (Integer) steps.getSelectedItem(),
                                        layer.figure())));
        figure.addActionListener(e -> figure(index, figure));
        figure.addFocusListener(
                new FocusAdapter() {
                    @Override
                    public void focusLost(FocusEvent event) {
                        if (!figure.getText().equals(layer.figure().text())) {
                            figure(index, figure);
                        }
                    }
                });
        remove.addActionListener(
                e -> session.edit("Remove layer", StrokeEdits.removeLayer(recipe(), index)));
        rows.add(limb);
        rows.add(sound);
        rows.add(steps);
        rows.add(figure, "wmin 120");
        rows.add(remove);
    }

    private Recipe recipe() {
        return session.recipe();
    }

    private void limb(int index, Limb limb) {
        List<SoundName> sounds = recipe().kit().soundsFor(limb);
        if (building || index >= shown.size()) {
            return;
        }
        if (sounds.isEmpty()) {
            notices.fault("this kit has nothing for the %s".formatted(limb.words()));
            return;
        }
        Layer layer = shown.get(index);
        SoundName sound = sounds.contains(layer.sound()) ? layer.sound() : sounds.get(0);
        replace(index, new Layer(limb, sound, layer.stepsPerBeat(), layer.figure()));
    }

    private void figure(int index, JTextField field) {
        if (index >= shown.size()) {
            return;
        }
        Layer layer = shown.get(index);
        try {
            Figure figure = Figure.parse(field.getText());
            field.putClientProperty("JComponent.outline", null);
            replace(index, new Layer(layer.limb(), layer.sound(), layer.stepsPerBeat(), figure));
        } catch (IllegalArgumentException e) {
            field.putClientProperty("JComponent.outline", "error");
            notices.fault(e.getMessage());
        }
    }

    private void replace(int index, Layer layer) {
        if (!building && index < recipe().voicing().layers().size()) {
            session.edit("Change layer", StrokeEdits.replaceLayer(recipe(), index, layer));
        }
    }

    /** What drummers put under a sticking most. Common practice, no source. */
    private void buildOffers(Kit kit) {
        offers.removeAll();
        JLabel add = new JLabel("Add");
        Paints.type(add, 100, true);
        offers.add(add);
        offer(kit, Limb.LEFT_FOOT, "hi-hat.foot", "hi-hat pedal on 2 and 4", 1, "- x");
        offer(kit, Limb.RIGHT_FOOT, "bass-drum.head", "bass drum on 1 and 3", 1, "x -");
        offer(kit, Limb.RIGHT_FOOT, "bass-drum.head", "bass drum on every beat", 1, "x");
        offer(kit, Limb.RIGHT_HAND, "ride.bow", "ride eighths", 2, "x");
        offerFirst(kit);
        offers.revalidate();
    }

    private void offer(Kit kit, Limb usual, String sound, String words, int steps, String figure) {
        Limb limb = kit.isMirrored() && !usual.isHand() ? usual.opposite() : usual;
        kit.soundNames().stream()
                .filter(name -> name.text().equals(sound) && kit.canStrike(limb, name))
                .findFirst()
                .ifPresent(
                        name ->
                                offerLayer(
                                        words, new Layer(limb, name, steps, Figure.parse(figure))));
    }

    private void offerFirst(Kit kit) {
        SoundName first = kit.soundNames().get(0);
        Limb limb = kit.sound(first).limbs().stream().sorted().findFirst().orElseThrow();
        offerLayer("another…", new Layer(limb, first, 2, Figure.parse("x -")));
    }

    private void offerLayer(String words, Layer layer) {
        JButton button = new JButton(words);
        button.addActionListener(
                e -> session.edit("Add layer", StrokeEdits.addLayer(recipe(), layer)));
        offers.add(button);
    }
}
