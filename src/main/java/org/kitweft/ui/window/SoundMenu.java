package org.kitweft.ui.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import org.kitweft.sound.AudioLine;
import org.kitweft.sound.MidiOutput;
import org.kitweft.sound.Player;
import org.kitweft.sound.bank.BuiltInBank;
import org.kitweft.sound.synth.BuiltIn;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.task.Tasks;

/**
 * Where the sound goes: audio line, external MIDI output, sound bank. The system is asked each time
 * the menu opens, off the event thread, for devices come and go.
 */
final class SoundMenu {
    private record Devices(List<AudioLine> lines, List<MidiOutput> outputs) {}

    private final PlayModel play;
    private final Tasks tasks;
    private final FileDialogs files;
    private final Notices notices;
    private final Consumer<String> bankChosen;
    private Optional<AudioLine> line = Optional.empty();
    private Optional<MidiOutput> output = Optional.empty();

    /**
     * @param bankChosen is told the file of the bank that is used from now on; empty: the built-in
     */
    SoundMenu(
            PlayModel play,
            Tasks tasks,
            FileDialogs files,
            Notices notices,
            Consumer<String> bankChosen) {
        this.play = play;
        this.tasks = tasks;
        this.files = files;
        this.notices = notices;
        this.bankChosen = bankChosen;
    }

    void addTo(JMenu menu) {
        menu.addSeparator();
        menu.add(lazy(new JMenu("Audio line"), true));
        menu.add(lazy(new JMenu("MIDI output"), false));
        item(
                menu,
                "Sound bank…",
                'B',
                "Play with an SF2 or DLS file of your own",
                this::chooseBank);
        item(menu, "Built-in sound bank", 'u', "Play with Kitweft's own bank", this::builtIn);
        item(
                menu,
                "Export built-in sound bank…",
                'x',
                "Write Kitweft's own bank as a SoundFont 2 file for other programs",
                this::exportBank);
    }

    private static void item(JMenu menu, String text, char mnemonic, String tip, Runnable body) {
        JMenuItem item = new JMenuItem(text);
        item.setMnemonic(mnemonic);
        item.setToolTipText(tip);
        item.addActionListener(e -> body.run());
        menu.add(item);
    }

    private void builtIn() {
        tasks.run(
                "Making the sound bank ready",
                progress -> BuiltInBank.cachedIn(BuiltIn.ofTheUser().folder()),
                path -> {
                    play.player().ifPresent(player -> player.useBank(path));
                    bankChosen.accept("");
                },
                failure -> notices.fault("no built-in sound bank: " + failure.getMessage()));
    }

    private void exportBank() {
        files.toSave("Export built-in sound bank", "SoundFont 2 bank", BuiltInBank.NAME, "sf2")
                .ifPresent(this::exportBank);
    }

    private void exportBank(Path path) {
        tasks.run(
                StatusBar.WRITING + path.getFileName(),
                progress -> BuiltInBank.export(BuiltIn.ofTheUser().bytes(), path, true),
                written -> notices.note("Written: " + written.toAbsolutePath()),
                failure -> notices.fault(Faults.line("cannot write", path, failure)));
    }

    private void chooseBank() {
        files.toOpen("Sound bank", "Sound bank (SF2, DLS)", "sf2", "dls")
                .ifPresent(
                        path -> {
                            play.player().ifPresent(player -> player.useBank(path));
                            bankChosen.accept(path.toString());
                        });
    }

    private JMenu lazy(JMenu menu, boolean lines) {
        menu.addMenuListener(
                new MenuListener() {
                    @Override
                    public void menuSelected(MenuEvent event) {
                        ask(menu, lines);
                    }

                    @Override
                    public void menuDeselected(MenuEvent event) {
                        // stays as it is
                    }

                    @Override
                    public void menuCanceled(MenuEvent event) {
                        // stays as it is
                    }
                });
        say(menu, "not ready yet");
        return menu;
    }

    private static void say(JMenu menu, String text) {
        menu.removeAll();
        JMenuItem item = new JMenuItem(text);
        item.setEnabled(false);
        menu.add(item);
    }

    private void ask(JMenu menu, boolean lines) {
        if (play.player().isEmpty()) {
            return;
        }
        Player player = play.player().get();
        tasks.run(
                "",
                progress -> new Devices(player.lines(), player.midiOutputs()),
                devices -> fill(menu, player, devices, lines),
                failure -> say(menu, "the system does not tell"));
    }

    private void fill(JMenu menu, Player player, Devices devices, boolean lines) {
        menu.removeAll();
        ButtonGroup group = new ButtonGroup();
        if (lines) {
            for (AudioLine one : devices.lines()) {
                boolean first = devices.lines().indexOf(one) == 0;
                add(
                        menu,
                        group,
                        one.name(),
                        line.map(one::equals).orElse(first),
                        () -> {
                            line = Optional.of(one);
                            player.useLine(one);
                        });
            }
        } else {
            add(menu, group, "none", output.isEmpty(), () -> use(player, Optional.empty()));
            for (MidiOutput one : devices.outputs()) {
                add(
                        menu,
                        group,
                        one.name(),
                        output.filter(one::equals).isPresent(),
                        () -> use(player, Optional.of(one)));
            }
        }
        if (menu.getItemCount() == 0) {
            say(menu, "none found");
        }
        menu.getPopupMenu().pack();
    }

    private void use(Player player, Optional<MidiOutput> chosen) {
        output = chosen;
        player.useMidiOutput(chosen);
    }

    private static void add(
            JMenu menu, ButtonGroup group, String text, boolean selected, Runnable body) {
        JRadioButtonMenuItem item = new JRadioButtonMenuItem(text, selected);
        item.addActionListener(e -> body.run());
        group.add(item);
        menu.add(item);
    }
}
