package org.kitweft.ui.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import org.kitweft.file.SafeFile;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.midi.MidiFile;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.wave.WaveFile;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;

/** Writes what plays, or what the grid shows, to files; long work off the event thread. */
final class ExportCommands {
    private final SessionModel session;
    private final PlayModel play;
    private final FileDialogs files;
    private final Tasks tasks;
    private final Notices notices;
    private final Supplier<Bank.Source> bank;

    /**
     * @param bank the bank that is heard
     */
    ExportCommands(
            SessionModel session,
            PlayModel play,
            FileDialogs files,
            Tasks tasks,
            Notices notices,
            Supplier<Bank.Source> bank) {
        this.session = session;
        this.play = play;
        this.files = files;
        this.tasks = tasks;
        this.notices = notices;
        this.bank = bank;
    }

    void midi() {
        ask("Export MIDI file", "MIDI file", "mid", this::midi);
    }

    void wave() {
        ask("Export WAV file", "WAV file", "wav", this::wave);
    }

    private void ask(
            String title, String kind, String extension, BiConsumer<Path, ExportChoices> writer) {
        new ExportDialog(
                        play.wholeBars(), play.settings(), session.session().draft().backing().on())
                .ask(files.owner(), title)
                .ifPresent(
                        choices ->
                                files.toSave(title, kind, proposal(), extension)
                                        .ifPresent(path -> writer.accept(path, choices)));
    }

    /** Writes what is heard without asking; a file that exists is replaced. */
    void midi(Path path) {
        midi(path, ExportChoices.proposed(play.settings()));
    }

    private void midi(Path path, ExportChoices choices) {
        Supplier<Playable> whole = play.whole();
        PlaySettings settings = choices.of(play.settings());
        tasks.run(
                StatusBar.WRITING + path.getFileName(),
                progress -> {
                    MidiFile.write(Timeline.of(whole.get(), settings), path, true);
                    return path;
                },
                this::written,
                failure -> notices.fault(Faults.line("cannot write", path, failure)));
    }

    /** Writes what is heard without asking; a file that exists is replaced. */
    void wave(Path path) {
        wave(path, ExportChoices.proposed(play.settings()));
    }

    private void wave(Path path, ExportChoices choices) {
        Supplier<Playable> whole = play.whole();
        PlaySettings settings = choices.of(play.settings());
        Bank.Source source = bank.get();
        tasks.run(
                StatusBar.WRITING + path.getFileName(),
                progress -> {
                    WaveFile.write(
                            Timeline.of(whole.get(), settings),
                            source.load(),
                            path,
                            true,
                            part -> {
                                progress.at(part);
                                return !progress.stopped();
                            });
                    return path;
                },
                this::written,
                failure -> notices.fault(Faults.line("cannot write", path, failure)));
    }

    void staff() {
        files.toSave("Export staff", "PDF, SVG, PNG or MusicXML", proposal(), StaffExport.ENDINGS)
                .ifPresent(this::staff);
    }

    /** Writes without asking; a file that exists is replaced. */
    void staff(Path path) {
        StaffExport export = new StaffExport(session.phrase(), proposal(), session.playedWith());
        tasks.run(
                StatusBar.WRITING + path.getFileName(),
                progress -> {
                    export.write(
                            path,
                            (done, of) -> {
                                progress.at((double) done / of);
                                return !progress.stopped();
                            });
                    return path;
                },
                this::written,
                failure -> notices.fault(Faults.line("cannot write", path, failure)));
    }

    /**
     * Asks where and writes a picture.
     *
     * @param painter paints it, on the event thread
     */
    void picture(Supplier<BufferedImage> painter) {
        files.toSave("Export picture of the grid", "PNG picture", proposal(), "png")
                .ifPresent(path -> picture(painter.get(), path));
    }

    private void picture(BufferedImage image, Path path) {
        tasks.run(
                StatusBar.WRITING + path.getFileName(),
                progress -> {
                    SafeFile.write(
                            path,
                            SafeFile.Existing.REPLACE,
                            out -> {
                                if (!ImageIO.write(image, "png", out)) {
                                    throw new IOException("this system writes no PNG pictures");
                                }
                            });
                    return path;
                },
                this::written,
                failure -> notices.fault(Faults.line("cannot write", path, failure)));
    }

    private void written(Path path) {
        notices.note("Written: " + path.toAbsolutePath());
    }

    private String proposal() {
        var now = session.session();
        OptionalInt kept = now.draft().plays() ? now.draft().kept() : OptionalInt.empty();
        String title = "";
        if (kept.isPresent()) {
            title = now.lesson().phrases().get(kept.getAsInt()).title();
        } else if (now.draft().plays()) {
            title = "Phrase";
        } else if (now.item().isPresent()) {
            title = now.lesson().items().get(now.item().getAsInt()).title();
        }
        return title.isBlank() ? now.recipe().sticking().text() : title;
    }
}
