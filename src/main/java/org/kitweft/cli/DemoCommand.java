package org.kitweft.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.kitweft.file.SafeFile;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonFile;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.midi.MidiFile;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.synth.BuiltIn;
import org.kitweft.sound.wave.Progress;
import org.kitweft.sound.wave.WaveFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the demo lesson, whole. */
@Command(
        name = "demo",
        header =
                "Write the demo lesson, its handout, and its MIDI, WAV, MusicXML and picture"
                        + " files.",
        abbreviateSynopsis = true,
        sortOptions = false,
        description = {
            "Write the demo lesson, an evening of a percussion class in a harbour town, whole: the"
                    + " lesson file, its text, its handout as PDF, and of each groove a MIDI file, a"
                    + " WAV file, a MusicXML file and a picture of grid and staff; of the phrase with"
                    + " its band MIDI, WAV, PDF and MusicXML."
        },
        footer = {
            "",
            "MIDI and WAV files begin with a bar of click and play at least four bars,"
                    + " the phrase twice.",
            "",
            "Example:",
            "  kitweft demo harbour"
        })
final class DemoCommand implements Callable<Integer> {
    /** Enough to hear a groove settle. */
    private static final int BARS_HEARD = 4;

    /** A phrase leads back to its start: once is not enough to hear it. */
    private static final int LOOPS_OF_A_PHRASE = 2;

    private final Terminal terminal;

    @Parameters(
            index = "0",
            paramLabel = "FOLDER",
            description = "Where the files go; made if there is none.")
    private Path folder = Path.of("");

    @Option(
            names = "--force",
            description = "Replace files that exist. Without it nothing is overwritten.")
    private boolean force;

    @Mixin private PageOptions pageOptions = new PageOptions();

    private @Nullable Bank bank;

    DemoCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (folder.toString().isBlank()) {
            throw new InputException("folder \"\": expected a name, or . for the current one");
        }
        Lesson lesson = DemoLesson.load();
        Targets targets = new Targets(force);
        targets.add(
                "lesson",
                folder.resolve(DemoLesson.FILE),
                (target, replace) -> LessonFile.write(lesson, target, replace));
        targets.add(
                "text",
                folder.resolve("harbour-class.txt"),
                (target, replace) -> text(LessonText.of(lesson, Symbols.UNICODE), target, replace));
        targets.add(
                "handout",
                folder.resolve("harbour-class.pdf"),
                (target, replace) ->
                        HandoutFile.write(
                                lesson,
                                pageOptions.handout(),
                                target,
                                replace,
                                terminal.err()::println));
        int number = 1;
        for (LessonItem item : lesson.items()) {
            add(targets, item, "%d-%s".formatted(number, slug(item.title())));
            number++;
        }
        for (LessonPhrase phrase : lesson.phrases()) {
            add(targets, phrase, "%d-%s".formatted(number, slug(phrase.title())));
            number++;
        }
        targets.check();
        makeFolder();
        targets.write(terminal);
        return Cli.DONE;
    }

    private void add(Targets targets, LessonItem item, String name) {
        Groove groove = item.recipe().weave();
        Timeline timeline = timeline(groove, item);
        targets.add(
                name,
                folder.resolve(name + ".mid"),
                (target, replace) -> MidiFile.write(timeline, target, replace));
        targets.add(
                name,
                folder.resolve(name + ".wav"),
                (target, replace) ->
                        WaveFile.write(timeline, bank(), target, replace, Progress.NONE));
        targets.add(
                name,
                folder.resolve(name + ".png"),
                (target, replace) -> GridImage.write(groove, item.tempo(), target, replace));
        targets.add(
                name,
                folder.resolve(name + ".musicxml"),
                new StaffFiles(groove, PlayedWith.at(item.tempo()), pageOptions)::writeMusicXml);
    }

    private void add(Targets targets, LessonPhrase phrase, String name) {
        Phrase woven = phrase.plan().weave();
        Playable playable =
                phrase.playingBand()
                        .map(band -> Playable.of(woven, band.arrangement(woven.bars())))
                        .orElseGet(() -> Playable.of(woven));
        Timeline timeline =
                Timeline.of(
                        playable,
                        PlaySettings.DEFAULT
                                .withTempo(phrase.tempo())
                                .withLoops(LOOPS_OF_A_PHRASE)
                                .withCountInBars(1));
        PlayedWith with =
                PlayedWith.at(phrase.tempo())
                        .withChart(
                                phrase.playingBand().map(band -> band.chart().first(woven.bars())));
        StaffFiles staff = new StaffFiles(woven, phrase.title(), with, pageOptions);
        targets.add(
                name,
                folder.resolve(name + ".mid"),
                (target, replace) -> MidiFile.write(timeline, target, replace));
        targets.add(
                name,
                folder.resolve(name + ".wav"),
                (target, replace) ->
                        WaveFile.write(timeline, bank(), target, replace, Progress.NONE));
        targets.addLaidOut(name, folder.resolve(name + ".pdf"), staff::pdf);
        targets.add(name, folder.resolve(name + ".musicxml"), staff::writeMusicXml);
    }

    private static Timeline timeline(Groove groove, LessonItem item) {
        int loops = (BARS_HEARD + groove.bars() - 1) / groove.bars();
        return Timeline.of(
                Phrase.of(groove),
                PlaySettings.DEFAULT.withTempo(item.tempo()).withLoops(loops).withCountInBars(1));
    }

    private Bank bank() throws IOException {
        Bank loaded = bank == null ? BuiltIn.ofTheUser().load() : bank;
        bank = loaded;
        return loaded;
    }

    private void makeFolder() throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new InputException("%s is a file, expected a folder".formatted(folder));
        }
        Files.createDirectories(folder);
    }

    private static void text(String text, Path target, boolean replace) throws IOException {
        SafeFile.write(
                target,
                replace ? Existing.REPLACE : Existing.KEEP,
                out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static String slug(String title) {
        return title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
