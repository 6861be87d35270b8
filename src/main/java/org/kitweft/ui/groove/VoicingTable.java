package org.kitweft.ui.groove;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.session.VoicingEdits;
import org.kitweft.ui.theme.Paints;

/**
 * How each letter is played, a row a letter: its limb, the sounds it takes in turn, those for its
 * accents and ghost strokes, a doubling, and whether it is tacet.
 */
public final class VoicingTable extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient SessionModel session;
    private final transient Notices notices;
    private final transient Map<Letter, Row> rows = new EnumMap<>(Letter.class);
    private transient Set<Letter> shown = EnumSet.noneOf(Letter.class);
    private boolean following;

    /** A table for the session. */
    public VoicingTable(SessionModel session, Notices notices) {
        super(
                new MigLayout(
                        "insets 8 12 8 12, gapx 10, gapy 5, wrap 8",
                        "[][][grow 30,fill][grow 20,fill][grow 20,fill][][grow 20,fill][]"));
        this.session = session;
        this.notices = notices;
        session.addListener(this::follow);
        follow();
    }

    private void follow() {
        Set<Letter> letters = session.recipe().sticking().letters();
        if (!letters.equals(shown)) {
            shown = letters;
            build();
        }
        following = true;
        try {
            rows.forEach((letter, row) -> row.follow());
        } finally {
            following = false;
        }
    }

    private void build() {
        removeAll();
        rows.clear();
        for (String head :
                List.of("", "Limb", "Sounds in turn", "Accents on", "Ghosts on", "", "", "")) {
            JLabel label = new JLabel(head);
            Paints.type(label, 90, true);
            add(label);
        }
        for (Letter letter : shown) {
            rows.put(letter, new Row(letter));
        }
        revalidate();
        repaint();
    }

    private void edit(Letter letter, BiFunction<Recipe, LetterVoicing, Recipe> change) {
        if (following) {
            return;
        }
        Recipe recipe = session.recipe();
        LetterVoicing before =
                recipe.voicing()
                        .letter(letter)
                        .orElseGet(
                                () -> {
                                    Limb limb = VoicingEdits.limb(recipe, letter);
                                    return LetterVoicing.on(
                                            limb, List.of(recipe.kit().soundsFor(limb).get(0)));
                                });
        try {
            session.edit("Voice " + letter, change.apply(recipe, before));
        } catch (IllegalArgumentException e) {
            notices.fault(e.getMessage());
        }
    }

    private static Recipe with(Recipe recipe, Letter letter, LetterVoicing voiced) {
        return recipe.with(recipe.voicing().with(letter, voiced));
    }

    /** One letter. */
    private final class Row {
        private final Letter letter;
        private final JComboBox<Limb> limb = Choosers.limbs();
        private final JTextField path = new JTextField(14);
        private final JTextField accents = new JTextField(10);
        private final JTextField ghosts = new JTextField(10);
        private final JCheckBox accentsOnly = new JCheckBox("on accents only");
        private final JTextField doubled = new JTextField(10);
        private final JCheckBox tacet = new JCheckBox("tacet");

        Row(Letter letter) {
            this.letter = letter;
            JLabel name = new JLabel(letter.name());
            Paints.type(name, 115, true);
            add(name);
            add(named(limb, "limb"));
            add(named(path, "sounds"), "wmin 90");
            add(named(accents, "accents"), "wmin 70");
            add(named(ghosts, "ghost strokes"), "wmin 70");
            accents.putClientProperty("JTextField.placeholderText", "as all");
            ghosts.putClientProperty("JTextField.placeholderText", "as all");
            add(new JLabel("doubled on"));
            JPanel both = new JPanel(new MigLayout("insets 0, gap 6", "[grow,fill][]"));
            doubled.putClientProperty("JTextField.placeholderText", "nothing");
            both.add(named(doubled, "doubled on"), "wmin 70");
            both.add(accentsOnly);
            add(both);
            add(tacet);
            limb.addActionListener(
                    e ->
                            edit(
                                    letter,
                                    (recipe, v) ->
                                            VoicingEdits.handOver(
                                                    recipe,
                                                    letter,
                                                    (Limb) limb.getSelectedItem())));
            onText(path, this::path);
            onText(accents, text -> sounds(text, LetterVoicing::withAccents));
            onText(ghosts, text -> sounds(text, LetterVoicing::withGhosts));
            onText(doubled, text -> doubling());
            accentsOnly.addActionListener(e -> doubling());
            tacet.addActionListener(
                    e ->
                            edit(
                                    letter,
                                    (recipe, v) ->
                                            with(recipe, letter, v.withTacet(tacet.isSelected()))));
        }

        private <C extends JComponent> C named(C component, String what) {
            component.getAccessibleContext().setAccessibleName(letter + " " + what);
            return component;
        }

        private void path(String text) {
            if (text.isBlank()) {
                follow();
            } else {
                sounds(text, LetterVoicing::withPath);
            }
        }

        private void sounds(
                String text, BiFunction<LetterVoicing, List<SoundName>, LetterVoicing> change) {
            edit(
                    letter,
                    (recipe, v) ->
                            with(
                                    recipe,
                                    letter,
                                    change.apply(v, SoundNames.parse(recipe.kit(), text))));
        }

        private void doubling() {
            edit(
                    letter,
                    (recipe, v) -> {
                        List<Doubling> doublings =
                                SoundNames.parse(recipe.kit(), doubled.getText()).stream()
                                        .map(sound -> doubling(recipe, v, sound))
                                        .toList();
                        return with(recipe, letter, v.withDoublings(doublings));
                    });
        }

        private Doubling doubling(Recipe recipe, LetterVoicing voiced, SoundName sound) {
            Limb other =
                    recipe.kit().sound(sound).limbs().stream()
                            .sorted()
                            .filter(candidate -> candidate != voiced.limb())
                            .findFirst()
                            .orElse(voiced.limb());
            return new Doubling(other, sound, accentsOnly.isSelected());
        }

        void follow() {
            Kit kit = session.recipe().kit();
            limb.setSelectedItem(VoicingEdits.limb(session.recipe(), letter));
            session.recipe()
                    .voicing()
                    .letter(letter)
                    .ifPresent(
                            v -> {
                                path.setText(SoundNames.text(kit, v.path()));
                                accents.setText(SoundNames.text(kit, v.accents()));
                                ghosts.setText(SoundNames.text(kit, v.ghosts()));
                                doubled.setText(
                                        SoundNames.text(
                                                kit,
                                                v.doublings().stream()
                                                        .map(Doubling::sound)
                                                        .toList()));
                                if (!v.doublings().isEmpty()) {
                                    accentsOnly.setSelected(v.doublings().get(0).accentsOnly());
                                }
                                tacet.setSelected(v.tacet());
                            });
            accentsOnly.setEnabled(!doubled.getText().isBlank());
        }
    }

    /** Text counts when Enter is pressed or the field is left, if it was changed. */
    private void onText(JTextField field, Consumer<String> body) {
        field.addActionListener(e -> body.accept(field.getText()));
        field.addFocusListener(
                new FocusAdapter() {
                    private String before = "";

                    @Override
                    public void focusGained(FocusEvent event) {
                        before = field.getText();
                    }

                    @Override
                    public void focusLost(FocusEvent event) {
                        if (!field.getText().equals(before)) {
                            body.accept(field.getText());
                        }
                    }
                });
        field.setMinimumSize(UIScale.scale(new Dimension(60, 10)));
    }
}
