package org.kitweft.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.kitweft.band.ChordChart;
import org.kitweft.groove.Groove;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.midi.MidiFile;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.wave.Progress;
import org.kitweft.sound.wave.WaveFile;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a groove is written to. */
final class FileOptions {
    @Option(names = "--midi", paramLabel = "FILE", description = "Write a standard MIDI file.")
    private @Nullable Path midi;

    @Option(
            names = "--wav",
            paramLabel = "FILE",
            description = "Write the sound: WAV, 44.1 kHz, 16 bit, stereo.")
    private @Nullable Path wav;

    @Option(
            names = "--png",
            paramLabel = "FILE",
            description =
                    "Write the grid, with the staff below, as a picture; of a phrase the staff"
                            + " alone.")
    private @Nullable Path png;

    @Option(
            names = "--pdf",
            paramLabel = "FILE",
            description = "Write the engraved page as a PDF document.")
    private @Nullable Path pdf;

    @Option(
            names = "--svg",
            paramLabel = "FILE",
            description = "Write the engraved staff as Scalable Vector Graphics.")
    private @Nullable Path svg;

    @Option(
            names = "--musicxml",
            paramLabel = "FILE",
            description =
                    "Write MusicXML 4.0 for notation programs; compressed where it ends in .mxl.")
    private @Nullable Path musicXml;

    @Mixin private PageOptions pageOptions = new PageOptions();

    @Option(
            names = "--force",
            description = "Replace files that exist. Without it nothing is overwritten.")
    private boolean force;

    /** The files of a groove. */
    Targets targets(
            Groove groove,
            Playable playable,
            Optional<ChordChart> chart,
            PlaySettings settings,
            Bank.Source bank) {
        return targets(
                new StaffFiles(
                        groove, PlayedWith.at(settings.tempo()).withChart(chart), pageOptions),
                () ->
                        (target, replace) ->
                                GridImage.write(groove, settings.tempo(), target, replace),
                playable,
                settings,
                bank);
    }

    /** The files of a phrase. */
    Targets targets(
            Playable phrase, Optional<ChordChart> chart, PlaySettings settings, Bank.Source bank) {
        String title = phrase.phrase().sections().get(0).groove().sticking().text();
        PlayedWith with = PlayedWith.at(settings.tempo()).withChart(chart);
        StaffFiles staff = new StaffFiles(phrase.phrase(), title, with, pageOptions);
        return targets(staff, staff::png, phrase, settings, bank);
    }

    private Targets targets(
            StaffFiles staff,
            Targets.Layout picture,
            Playable playable,
            PlaySettings settings,
            Bank.Source bank) {
        Targets targets = new Targets(force);
        if (midi != null) {
            targets.add(
                    "--midi",
                    midi,
                    (target, replace) ->
                            MidiFile.write(Timeline.of(playable, settings), target, replace));
        }
        if (wav != null) {
            targets.add(
                    "--wav",
                    wav,
                    (target, replace) ->
                            WaveFile.write(
                                    Timeline.of(playable, settings),
                                    bank.load(),
                                    target,
                                    replace,
                                    Progress.NONE));
        }
        if (png != null) {
            targets.addLaidOut("--png", png, picture);
        }
        if (pdf != null) {
            targets.addLaidOut("--pdf", pdf, staff::pdf);
        }
        if (svg != null) {
            targets.addLaidOut("--svg", svg, staff::svg);
        }
        if (musicXml != null) {
            targets.add("--musicxml", musicXml, staff::writeMusicXml);
        }
        return targets;
    }
}
