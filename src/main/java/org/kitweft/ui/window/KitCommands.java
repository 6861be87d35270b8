package org.kitweft.ui.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JRadioButtonMenuItem;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/** Which kit is played: a built-in one, one from a file, mirrored or not. */
final class KitCommands {
    private static final String BARS_STAY =
            "Bars lie from low at the left to high at the right for every player.";

    private final SessionModel session;
    private final FileDialogs files;
    private final Tasks tasks;
    private final Notices notices;

    KitCommands(SessionModel session, FileDialogs files, Tasks tasks, Notices notices) {
        this.session = session;
        this.files = files;
        this.tasks = tasks;
        this.notices = notices;
    }

    /** Puts the built-in kits at the head of a menu. */
    void addTo(JMenu menu) {
        ButtonGroup group = new ButtonGroup();
        int at = 0;
        for (String name : BuiltInKits.names()) {
            String text = Character.toUpperCase(name.charAt(0)) + name.substring(1);
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(text.replace('-', ' '));
            item.addActionListener(e -> use(BuiltInKits.load(name)));
            session.addListener(() -> tick(item, group, name));
            group.add(item);
            menu.add(item, at++);
            tick(item, group, name);
        }
    }

    private void tick(JRadioButtonMenuItem item, ButtonGroup group, String name) {
        boolean now = session.recipe().kit().name().equals(name);
        if (now) {
            group.setSelected(item.getModel(), true);
        } else if (item.isSelected()) {
            group.clearSelection();
        }
    }

    boolean isLeftHanded() {
        return session.recipe().kit().leftHanded();
    }

    /** Kit, hands and feet: a left-handed player does everything the other way round. */
    void toggleLeftHanded() {
        session.edit("Left-handed", session.session().mirrored());
        notices.note(
                (isLeftHanded()
                                ? "Set up for a left-handed player: the left hand leads where the"
                                        + " right one did."
                                : "Set up for a right-handed player: the right hand leads where"
                                        + " the left one did.")
                        + (session.recipe().kit().canBeMirrored() ? "" : " " + BARS_STAY));
    }

    /** The kit alone: for who plays open-handed, each hand on its own side. */
    void mirrorKit() {
        if (!session.recipe().kit().canBeMirrored()) {
            notices.note("The kit is not mirrored. " + BARS_STAY);
            return;
        }
        session.edit("Mirror the kit", session.session().on(session.recipe().kit().forOtherHand()));
        notices.note("The kit is mirrored; each hand keeps its strokes and sounds.");
    }

    void open() {
        files.toOpen("Open kit file", "Kit file (JSON)", "json").ifPresent(this::open);
    }

    private void open(Path path) {
        tasks.run(
                "",
                progress -> KitFile.read(path),
                this::change,
                failure -> notices.fault(Faults.line("cannot open", path, failure)));
    }

    private void use(Kit kit) {
        Kit sided = isLeftHanded() == kit.leftHanded() ? kit : kit.forOtherHand();
        change(sided);
    }

    private void change(Kit kit) {
        List<String> lost = lost(session.recipe(), kit);
        session.edit("Change kit", session.session().on(kit));
        notices.note(
                lost.isEmpty()
                        ? "Kit: " + kit.name()
                        : "Kit %s has no %s: what played there is plain now. Undo brings it back."
                                .formatted(kit.name(), String.join(", ", lost)));
    }

    /** The sounds of a groove that a kit does not have, each once, in the order of letters. */
    static List<String> lost(Recipe recipe, Kit kit) {
        Voicing voicing = recipe.voicing();
        List<SoundName> used = new ArrayList<>(voicing.strokes().values());
        for (Letter letter : recipe.sticking().letters()) {
            voicing.letter(letter)
                    .ifPresent(
                            voiced -> {
                                used.addAll(voiced.path());
                                used.addAll(voiced.accents());
                                used.addAll(voiced.ghosts());
                                voiced.doublings().forEach(d -> used.add(d.sound()));
                            });
        }
        voicing.layers().forEach(layer -> used.add(layer.sound()));
        return used.stream().filter(s -> !kit.has(s)).map(SoundName::text).distinct().toList();
    }
}
