package org.kitweft.ui.kit;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Target;
import org.kitweft.ui.session.VoicingEdits;
import org.kitweft.ui.theme.Keys;

/** Keys and mouse on the kit. */
final class KitHands extends MouseAdapter {
    private final KitView view;
    private final Placing placing;
    private Optional<Token> held = Optional.empty();
    private boolean dragging;

    KitHands(KitView view, Placing placing) {
        this.view = view;
        this.placing = placing;
    }

    void install() {
        view.addMouseListener(this);
        view.addMouseMotionListener(this);
        int number = 1;
        for (Letter letter : Letter.values()) {
            Keys.bind(view, letter.name(), () -> placing.choose(letter));
            Keys.bind(view, Integer.toString(number++), () -> placing.choose(letter));
        }
        Keys.bind(view, "LEFT", () -> step(-1, 0));
        Keys.bind(view, "RIGHT", () -> step(1, 0));
        Keys.bind(view, "UP", () -> step(0, -1));
        Keys.bind(view, "DOWN", () -> step(0, 1));
        Keys.bind(view, "ENTER", () -> placing.place(false));
        Keys.bind(view, "shift ENTER", () -> placing.place(true));
        Keys.bind(view, "ESCAPE", placing::leave);
        Keys.bind(view, "S", placing::nextSound);
        Keys.bind(view, "T", placing::toggleTacet);
        Keys.bind(view, "O", placing::handOver);
        Keys.bind(view, "A", () -> aim(Target.ACCENTS));
        Keys.bind(view, "G", () -> aim(Target.GHOSTS));
        Keys.bind(view, "P", () -> placing.aim(Target.ALL));
        Keys.bind(view, "DELETE", placing::removeLast);
        Keys.bind(view, "shift F10", this::popUpAtToken);
        Keys.bind(view, "CONTEXT_MENU", this::popUpAtToken);
    }

    private void aim(Target target) {
        placing.aim(placing.target() == target ? Target.ALL : target);
    }

    private void step(int dx, int dy) {
        Surface from =
                placing.over()
                        .or(() -> view.model().surfaceOf(placing.letter(), placing.target()))
                        .or(() -> view.model().surfaceOf(placing.letter(), Target.ALL))
                        .orElse(view.model().kit().surfaces().get(0));
        placing.hover(view.plan().next(from, dx, dy));
    }

    @Override
    public void mousePressed(MouseEvent event) {
        view.requestFocusInWindow();
        held = view.tokenAt(event.getX(), event.getY());
        held.ifPresent(
                token -> {
                    placing.aim(token.target());
                    placing.choose(token.letter());
                });
        if (event.isPopupTrigger()) {
            popUp(event);
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (held.isEmpty() || !SwingUtilities.isLeftMouseButton(event)) {
            return;
        }
        dragging = true;
        view.showDrag(held, event.getPoint());
        view.plan().at(event.getX(), event.getY()).ifPresentOrElse(placing::hover, placing::leave);
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (dragging) {
            view.showDrag(Optional.empty(), event.getPoint());
            drop(event);
        } else if (event.isPopupTrigger()) {
            popUp(event);
        } else if (held.isEmpty() && SwingUtilities.isLeftMouseButton(event)) {
            view.plan().at(event.getX(), event.getY()).ifPresent(placing::hover);
        }
        dragging = false;
        held = Optional.empty();
    }

    /** A double click on a surface puts the chosen letter there. */
    @Override
    public void mouseClicked(MouseEvent event) {
        if (event.getClickCount() == 2 && view.tokenAt(event.getX(), event.getY()).isEmpty()) {
            placing.place(event.isShiftDown());
        }
    }

    private void drop(MouseEvent event) {
        if (held.isEmpty() || placing.over().isEmpty()) {
            return;
        }
        if (event.isShiftDown() || held.get().sound().isEmpty()) {
            placing.place(event.isShiftDown());
        } else {
            placing.move(held.get());
        }
    }

    private void popUp(MouseEvent event) {
        menu().show(view, event.getX(), event.getY());
    }

    private void popUpAtToken() {
        menu().show(view, view.getWidth() / 2, view.getHeight() / 2);
    }

    /** What can be done with the chosen letter. */
    private JPopupMenu menu() {
        Letter letter = placing.letter();
        Recipe recipe = placing.recipe();
        JPopupMenu menu = new JPopupMenu();
        placing.over()
                .or(() -> view.model().surfaceOf(letter, placing.target()))
                .ifPresent(surface -> addSounds(menu, letter, surface));
        JMenu limbs = new JMenu("Hand " + letter + " over to");
        for (Limb limb : Limb.values()) {
            JMenuItem item = new JMenuItem(limb.words());
            item.setEnabled(
                    !recipe.kit().soundsFor(limb).isEmpty()
                            && limb != VoicingEdits.limb(recipe, letter));
            item.addActionListener(
                    e ->
                            placing.edit(
                                    "Hand over " + letter,
                                    VoicingEdits.handOver(placing.recipe(), letter, limb)));
            limbs.add(item);
        }
        menu.add(limbs);
        JCheckBoxMenuItem tacet =
                new JCheckBoxMenuItem(
                        letter + " tacet",
                        recipe.voicing().letter(letter).map(v -> v.tacet()).orElse(false));
        tacet.addActionListener(e -> placing.toggleTacet());
        menu.add(tacet);
        JMenuItem remove = new JMenuItem("Remove its last place");
        remove.addActionListener(e -> placing.removeLast());
        menu.add(remove);
        return menu;
    }

    private void addSounds(JPopupMenu menu, Letter letter, Surface surface) {
        Recipe recipe = placing.recipe();
        Limb limb = VoicingEdits.limbOn(recipe, letter, surface);
        for (SoundName sound : VoicingEdits.soundsOf(surface, limb)) {
            JMenuItem item =
                    new JMenuItem("%s: %s, %s".formatted(letter, surface.name(), sound.sound()));
            item.addActionListener(
                    e ->
                            placing.edit(
                                    "Place " + letter,
                                    VoicingEdits.place(
                                            placing.recipe(),
                                            letter,
                                            limb,
                                            sound,
                                            placing.target(),
                                            false)));
            menu.add(item);
        }
        menu.addSeparator();
    }
}
