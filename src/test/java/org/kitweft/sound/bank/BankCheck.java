package org.kitweft.sound.bank;

import com.sun.management.OperatingSystemMXBean;
import com.sun.media.sound.SoftSynthesizer;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Soundbank;
import javax.sound.midi.Track;
import javax.sound.sampled.AudioFormat;

/**
 * The Java half of {@code check-bank.sh}: builds, times and loads the bank, writes songs that call
 * every preset, and later listens to what another synthesizer made of them.
 */
public final class BankCheck {
    private static final int RUNS = 5;
    private static final int DRUMS = 9;

    private BankCheck() {}

    /**
     * {@code FOLDER} to build and write songs there; {@code listen FOLDER} to judge the {@code
     * .raw} files in it.
     */
    public static void main(String[] args) throws Exception {
        boolean passed =
                args[0].equals("listen") ? listen(Path.of(args[1])) : build(Path.of(args[0]));
        if (!passed) {
            System.exit(1);
        }
    }

    private static boolean build(Path folder) throws Exception {
        Clock building = new Clock();
        byte[] bank = BuiltInBank.build();
        Clock.Time built = building.read();
        Files.write(folder.resolve("bank.sf2"), bank);
        List<Clock.Time> loads = new ArrayList<>();
        for (int run = 0; run < RUNS; run++) {
            loads.add(load(bank));
        }
        System.out.printf(
                Locale.ROOT,
                "%,d bytes%nbuilt, cold: %s on %d processors%nloaded by the JDK, cold: %s; again: %s%n",
                bank.length,
                built,
                Runtime.getRuntime().availableProcessors(),
                loads.get(0),
                loads.get(RUNS - 1));
        songs(folder);
        return bank.length < 12_000_000 && built.least() < 5 && least(loads) < 0.3;
    }

    /** The quickest run: the others waited for other work. */
    private static double least(List<Clock.Time> loads) {
        return loads.stream().mapToDouble(Clock.Time::least).min().orElseThrow();
    }

    private static Clock.Time load(byte[] bank)
            throws InvalidMidiDataException, IOException, MidiUnavailableException {
        try (SoftSynthesizer synthesizer = new SoftSynthesizer()) {
            AudioFormat format = new AudioFormat(44_100, 16, 2, true, false);
            synthesizer.openStream(format, Map.of("load default soundbank", false));
            Clock clock = new Clock();
            Soundbank read = MidiSystem.getSoundbank(new ByteArrayInputStream(bank));
            if (!synthesizer.loadAllInstruments(read)) {
                throw new IllegalStateException("the JDK's synthesizer did not load the bank");
            }
            return clock.read();
        }
    }

    /**
     * Time on the wall and time of the processors. On a machine that others use too, the wall's
     * says little; limits are held against the smaller.
     */
    private static final class Clock {
        private final long wall = System.nanoTime();
        private final long processors = processors();

        record Time(double wall, double processors) {
            double least() {
                return Math.min(wall, processors);
            }

            @Override
            public String toString() {
                return String.format(
                        Locale.ROOT, "%.2f s (%.2f s of processor time)", wall, processors);
            }
        }

        Time read() {
            return new Time((System.nanoTime() - wall) / 1e9, (processors() - processors) / 1e9);
        }

        private static long processors() {
            return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                    .getProcessCpuTime();
        }
    }

    /**
     * One song a program, with keys 40 to 76, and one for all percussion keys; three velocities
     * each.
     */
    private static void songs(Path folder) throws InvalidMidiDataException, IOException {
        for (int program = 0; program < 128; program++) {
            Sequence song = new Sequence(Sequence.PPQ, 480);
            Track track = song.createTrack();
            track.add(
                    new MidiEvent(new ShortMessage(ShortMessage.PROGRAM_CHANGE, 0, program, 0), 0));
            note(track, 0, 40, 40, 0);
            note(track, 0, 58, 80, 240);
            note(track, 0, 76, 115, 480);
            MidiSystem.write(
                    song, 1, folder.resolve("program-%03d.mid".formatted(program)).toFile());
        }
        Sequence song = new Sequence(Sequence.PPQ, 480);
        Track track = song.createTrack();
        for (int key = 27; key <= 87; key++) {
            note(track, DRUMS, key, List.of(40, 80, 115).get(key % 3), (key - 27) * 480L);
        }
        MidiSystem.write(song, 1, folder.resolve("percussion.mid").toFile());
    }

    private static void note(Track track, int channel, int key, int velocity, long tick)
            throws InvalidMidiDataException {
        track.add(
                new MidiEvent(
                        new ShortMessage(ShortMessage.NOTE_ON, channel, key, velocity), tick));
        track.add(
                new MidiEvent(
                        new ShortMessage(ShortMessage.NOTE_OFF, channel, key, 0), tick + 200));
    }

    /**
     * Every program must sound in each quarter of a second that has a note, every percussion key in
     * its half second.
     */
    private static boolean listen(Path folder) throws IOException {
        boolean passed = true;
        int heard = 0;
        try (Stream<Path> files = Files.list(folder)) {
            for (Path raw : files.filter(f -> f.toString().endsWith(".raw")).sorted().toList()) {
                boolean percussion = raw.endsWith("percussion.raw");
                int notes = percussion ? 61 : 3;
                double seconds = percussion ? 0.5 : 0.25;
                float[] samples = floats(raw);
                for (int note = 0; note < notes; note++) {
                    double peak = peak(samples, note * seconds, seconds);
                    if (!(peak > 1e-4) || peak > 0.99) {
                        System.out.printf(
                                Locale.ROOT, "%s, note %d: peak %.5f%n", raw, note + 1, peak);
                        passed = false;
                    }
                    heard++;
                }
            }
        }
        System.out.printf("%d notes listened to, %s%n", heard, passed ? "all sound" : "see above");
        return passed && heard == 128 * 3 + 61;
    }

    private static double peak(float[] stereo, double from, double seconds) {
        double peak = 0;
        int end = Math.min(stereo.length, 2 * (int) ((from + seconds) * 44_100));
        for (int i = 2 * (int) (from * 44_100); i < end; i++) {
            peak = Math.max(peak, Math.abs(stereo[i]));
        }
        return peak;
    }

    private static float[] floats(Path raw) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(raw)).order(ByteOrder.LITTLE_ENDIAN);
        float[] samples = new float[bytes.capacity() / 4];
        bytes.asFloatBuffer().get(samples);
        return samples;
    }
}
