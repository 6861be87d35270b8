package org.kitweft.sound.wave;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.kitweft.band.Arrangement;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.band.ChordChart;
import org.kitweft.band.ClaveDirection;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Tempo;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Playable;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.bank.BuiltInBank;
import org.kitweft.sound.midi.MidiFile;
import org.kitweft.sound.synth.Bank;

/**
 * The Java half of {@code render-speed.sh}: writes bank and MIDI file for the other synthesizer,
 * then renders the same three minutes to a WAV file over and over and tells the best time on the
 * wall and of the processor, and the memory that took.
 */
public final class RenderCheck {
    private static final int BARS = 12;
    private static final int LOOPS = 8;

    private RenderCheck() {}

    /**
     * {@code write FOLDER STYLE} to write bank and MIDI file; {@code render FOLDER STYLE RUNS} to
     * render with that bank.
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[1]);
        Timeline timeline = threeMinutes(args[2]);
        if (args[0].equals("write")) {
            Files.write(folder.resolve("bank.sf2"), BuiltInBank.build());
            MidiFile.write(timeline, folder.resolve(args[2] + ".mid"), true);
            System.out.printf(
                    Locale.ROOT,
                    "%s: %.1f s, %d notes%n",
                    args[2],
                    timeline.tempo().seconds(timeline.to()),
                    timeline.notes().size());
            return;
        }
        Bank bank = Bank.read(folder.resolve("bank.sf2"));
        double best = Double.MAX_VALUE;
        double least = Double.MAX_VALUE;
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (int run = 0; run < Integer.parseInt(args[3]); run++) {
            long begun = System.nanoTime();
            long worked = threads.getCurrentThreadCpuTime();
            WaveFile.write(timeline, bank, folder.resolve(args[2] + ".wav"), true, Progress.NONE);
            best = Math.min(best, (System.nanoTime() - begun) / 1e9);
            least = Math.min(least, (threads.getCurrentThreadCpuTime() - worked) / 1e9);
        }
        System.out.printf(
                Locale.ROOT,
                "seconds %.3f%nprocessor %.3f%nheap %.0f%nrss %.0f%n",
                best,
                least,
                peakHeap() / 1e6,
                peakResident() / 1e6);
    }

    /** The opening groove with a band of all parts: twelve bars, eight times at 128. */
    private static Timeline threeMinutes(String style) {
        Phrase phrase = Phrase.of(OpeningGroove.recipe().withBars(OptionalInt.of(BARS)).weave());
        Arrangement band =
                new Arrangement(
                        ChordChart.parse(
                                "Dm7 | G7 | Cmaj7 | A7 | Dm7 G7 | Em7 A7 | Dm7 | G7"
                                        + " | Fmaj7 | Bb7 | Cmaj7 A7 | Dm7 G7",
                                BARS),
                        BuiltInStyles.load(style),
                        ClaveDirection.values()[0],
                        1);
        return Timeline.of(
                Playable.of(phrase, band),
                PlaySettings.DEFAULT.withTempo(new Tempo(128)).withLoops(LOOPS).withClick(true));
    }

    private static double peakHeap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToDouble(usage -> usage.getUsed())
                .sum();
    }

    /** Linux only: the high-water mark of the process, in bytes; NaN elsewhere. */
    private static double peakResident() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (!Files.isReadable(status)) {
            return Double.NaN;
        }
        List<String> lines = Files.readAllLines(status, StandardCharsets.US_ASCII);
        return lines.stream()
                .filter(line -> line.startsWith("VmHWM:"))
                .mapToDouble(line -> 1024 * Double.parseDouble(line.replaceAll("\\D", "")))
                .findFirst()
                .orElse(Double.NaN);
    }
}
