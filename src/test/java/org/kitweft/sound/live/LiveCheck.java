package org.kitweft.sound.live;

import com.sun.media.sound.SoftSynthesizer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequencer;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Tempo;
import org.kitweft.sound.Phrases;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Player;
import org.kitweft.sound.PlayerListener;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.midi.MidiFile;
import org.kitweft.sound.synth.ImpulseBank;
import org.kitweft.sound.synth.NoteStream;
import org.kitweft.sound.synth.Onsets;

/**
 * The parts of {@code src/test/scripts/check-live.sh}: plays a figure of sixteenths, or measures a
 * recording of it. Not a unit test: it takes a minute and a sound server.
 */
final class LiveCheck {
    private static final Tempo BEFORE = new Tempo(120);
    private static final Tempo AFTER = new Tempo(90);
    private static final int HALF_MILLISECONDS = 31_000;
    private static final double ALLOWED_MILLISECONDS = 0.2;

    /** 62 s at the first tempo: sixteenths, 8 in a second. */
    private static final int SEQUENCER_LOOPS = 31;

    private LiveCheck() {}

    /**
     * {@code player}, {@code sequencer}, {@code bare}, {@code bank FILE}, or {@code measure FILE
     * BPM [BPM]}.
     */
    public static void main(String[] args) throws Exception {
        switch (args[0]) {
            case "player" -> player();
            case "sequencer" -> sequencer();
            case "bare" -> bare();
            case "bank" -> ImpulseBank.write(Path.of(args[1]));
            case "measure" -> measure(args);
            default -> throw new IllegalArgumentException("not a part of this check: " + args[0]);
        }
    }

    private static void player() throws InterruptedException {
        Phrase phrase = Phrases.of("RLRR LRLL");
        CountDownLatch silent = new CountDownLatch(1);
        PlayerListener listener =
                new PlayerListener() {
                    @Override
                    public void silent() {
                        silent.countDown();
                    }

                    @Override
                    public void fault(String message) {
                        System.err.println(message);
                    }
                };
        PlaySettings settings = PlaySettings.DEFAULT.withTempo(BEFORE);
        try (Player player = LivePlayer.open(ImpulseBank::bank)) {
            player.addListener(listener);
            player.settings(settings);
            player.show(phrase);
            player.play();
            Thread.sleep(HALF_MILLISECONDS);
            player.settings(settings.withTempo(AFTER));
            Thread.sleep(HALF_MILLISECONDS);
            player.stop();
            silent.await();
        }
    }

    /** The usual way: the JDK's sequencer drives its synthesizer in real time. */
    private static void sequencer() throws Exception {
        Timeline timeline =
                Timeline.of(
                        Phrases.of("RLRR LRLL"),
                        PlaySettings.DEFAULT.withLoops(SEQUENCER_LOOPS).withTempo(BEFORE));
        try (SoftSynthesizer synthesizer = new SoftSynthesizer();
                Sequencer sequencer = MidiSystem.getSequencer(false)) {
            synthesizer.open(
                    null,
                    Map.of("reverb", false, "chorus", false, "load default soundbank", false));
            synthesizer.loadAllInstruments(ImpulseBank.bank().soundbank());
            sequencer.getTransmitter().setReceiver(synthesizer.getReceiver());
            sequencer.open();
            sequencer.setSequence(new java.io.ByteArrayInputStream(MidiFile.bytes(timeline)));
            CountDownLatch end = new CountDownLatch(1);
            sequencer.addMetaEventListener(
                    meta -> {
                        if (meta.getType() == 0x2F) {
                            end.countDown();
                        }
                    });
            sequencer.start();
            end.await();
            Thread.sleep(500);
        }
    }

    /**
     * The control: impulses written to a line of the same buffer, with nothing of ours in between.
     * Where this has gaps, the machine is too busy for the check.
     */
    private static void bare() throws LineLostException {
        double spacing = 60.0 / BEFORE.beatsPerMinute() / 4 * NoteStream.RATE;
        float[] samples = new float[SoundThread.PART * NoteStream.CHANNELS];
        Samples out = new Samples();
        long end = 62L * NoteStream.RATE;
        long onset = 0;
        try (OutputLine line = new SystemLines().open(Optional.empty(), LivePlayer.BUFFER_FRAMES)) {
            for (long at = 0; at < end; at += SoundThread.PART) {
                Arrays.fill(samples, 0);
                for (long next = Math.round(onset * spacing); next < at + SoundThread.PART; ) {
                    samples[(int) (next - at) * NoteStream.CHANNELS] = 0.5f;
                    next = Math.round(++onset * spacing);
                }
                line.write(out.bytes(samples, SoundThread.PART, 1));
            }
        }
    }

    private static void measure(String[] args) throws IOException, UnsupportedAudioFileException {
        List<Long> onsets = Onsets.of(stereo(Path.of(args[1])));
        List<Double> spacings =
                Arrays.stream(args)
                        .skip(2)
                        .map(bpm -> 60.0 / Integer.parseInt(bpm) / 4 * NoteStream.RATE)
                        .toList();
        List<Double> deviations = new ArrayList<>();
        int turns = 0;
        int tempo = 0;
        for (int i = 1; i < onsets.size(); i++) {
            double spacing = onsets.get(i) - onsets.get(i - 1);
            int nearest = nearest(spacings, spacing);
            turns += nearest == tempo ? 0 : 1;
            tempo = nearest;
            deviations.add((spacing - spacings.get(nearest)) / NoteStream.RATE * 1000);
        }
        double least = deviations.stream().mapToDouble(d -> d).min().orElse(Double.NaN);
        double most = deviations.stream().mapToDouble(d -> d).max().orElse(Double.NaN);
        double square =
                Math.sqrt(deviations.stream().mapToDouble(d -> d * d).average().orElse(Double.NaN));
        double seconds =
                onsets.isEmpty()
                        ? 0
                        : (double) (onsets.get(onsets.size() - 1) - onsets.get(0))
                                / NoteStream.RATE;
        long off = deviations.stream().filter(d -> Math.abs(d) >= ALLOWED_MILLISECONDS).count();
        boolean kept =
                turns == spacings.size() - 1
                        && Math.max(-least, most) < ALLOWED_MILLISECONDS
                        && seconds >= 60;
        System.out.printf(
                "%d onsets in %.1f s, tempo changes %d; spacing deviates by %+.3f to %+.3f ms,"
                        + " root mean square %.3f ms, %d off by 0.2 ms or more: %s%n",
                onsets.size(),
                seconds,
                turns,
                least,
                most,
                square,
                off,
                kept ? "good" : "NOT good");
        System.exit(kept ? 0 : 1);
    }

    private static int nearest(List<Double> spacings, double spacing) {
        int nearest = 0;
        for (int i = 1; i < spacings.size(); i++) {
            if (Math.abs(spacing - spacings.get(i)) < Math.abs(spacing - spacings.get(nearest))) {
                nearest = i;
            }
        }
        return nearest;
    }

    private static float[] stereo(Path file) throws IOException, UnsupportedAudioFileException {
        try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
            byte[] bytes = in.readAllBytes();
            int channels = in.getFormat().getChannels();
            int frames = bytes.length / 2 / channels;
            float[] samples = new float[frames * NoteStream.CHANNELS];
            for (int frame = 0; frame < frames; frame++) {
                int at = 2 * frame * channels;
                samples[2 * frame] = ((bytes[at] & 0xFF) | (bytes[at + 1] << 8)) / 32_768f;
            }
            return samples;
        }
    }
}
