package org.kitweft.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.groove.Tempo;
import org.kitweft.sound.Phrases;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.Timeline;
import org.kitweft.sound.synth.Bank;
import org.kitweft.sound.synth.ImpulseBank;
import org.kitweft.sound.synth.NoteStream;
import org.kitweft.sound.synth.Onsets;

class WaveFileTest {
    private static final PlaySettings ONCE = PlaySettings.DEFAULT.withLoops(1);

    @TempDir Path folder;

    private float[] written(Timeline timeline, Bank bank)
            throws IOException, UnsupportedAudioFileException {
        Path file = folder.resolve("out.wav");
        WaveFile.write(timeline, bank, file, true, Progress.NONE);
        try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
            AudioFormat format = in.getFormat();
            assertThat(format.getSampleRate()).isEqualTo(44_100f);
            assertThat(format.getSampleSizeInBits()).isEqualTo(16);
            assertThat(format.getChannels()).isEqualTo(2);
            byte[] bytes = in.readAllBytes();
            assertThat(bytes).hasSize((int) (in.getFrameLength() * 4));
            float[] samples = new float[bytes.length / 2];
            for (int i = 0; i < samples.length; i++) {
                int sample = (bytes[2 * i] & 0xFF) | (bytes[2 * i + 1] << 8);
                samples[i] = sample / 32_768f;
            }
            return samples;
        }
    }

    // Our own demand: within one sample of its ideal place over 64 bars.
    @Test
    void sixtyFourBarsOfSixteenthsAt97LandOnTheirSamples() throws Exception {
        Timeline timeline =
                Timeline.of(Phrases.of("RLRR LRLL"), ONCE.withLoops(64).withTempo(new Tempo(97)));
        List<Long> onsets = Onsets.of(written(timeline, ImpulseBank.bank()));
        assertThat(onsets).hasSize(64 * 16);
        List<Double> deviations = new ArrayList<>();
        for (int i = 0; i < onsets.size(); i++) {
            double ideal = i * 60.0 / 97 / 4 * NoteStream.RATE;
            deviations.add(Math.abs(onsets.get(i) - ideal));
        }
        assertThat(deviations).allMatch(deviation -> deviation <= 0.5 + 1e-6);
    }

    @Test
    void theLoudestSampleIsThreeDecibelsBelowFullScale() throws Exception {
        Timeline timeline = Timeline.of(Phrases.of(">B >K >B >K"), ONCE.withClick(true));
        float loudest = 0;
        for (float sample : written(timeline, Bank.ofTheJdk())) {
            loudest = Math.max(loudest, Math.abs(sample));
        }
        assertThat(20 * Math.log10(loudest)).isCloseTo(-3.0, within(0.05));
    }

    @Test
    void theLastStrokeRingsOut() throws Exception {
        Timeline timeline =
                Timeline.of(
                        org.kitweft.groove.Phrase.of(
                                Phrases.on("- - - - - - - - - - - - - - - R", "R=crash")),
                        ONCE);
        float[] samples = written(timeline, Bank.ofTheJdk());
        double seconds = samples.length / 2.0 / NoteStream.RATE;
        assertThat(seconds).isGreaterThan(timeline.tempo().seconds(timeline.to()) + 0.3);
        assertThat(Math.abs(samples[samples.length - 1])).isLessThan(0.001f);
    }

    @Test
    void progressIsToldAndCanStopItLeavingNoFile() {
        Timeline timeline = Timeline.of(Phrases.of("RLRR LRLL"), ONCE.withLoops(4));
        Path file = folder.resolve("out.wav");
        List<Double> parts = new ArrayList<>();
        Progress stopping =
                part -> {
                    parts.add(part);
                    return part < 0.7;
                };
        assertThatThrownBy(
                        () -> WaveFile.write(timeline, ImpulseBank.bank(), file, false, stopping))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("stopped before it was done");
        assertThat(parts).isSorted().hasSizeGreaterThan(5);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void anExistingFileIsOnlyReplacedWhenAsked() throws IOException {
        Path file = Files.writeString(folder.resolve("out.wav"), "mine");
        Timeline timeline = Timeline.of(Phrases.of("RLRR LRLL"), ONCE);
        assertThatThrownBy(
                        () ->
                                WaveFile.write(
                                        timeline, ImpulseBank.bank(), file, false, Progress.NONE))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(file).hasContent("mine");
    }

    @Test
    void silenceIsWrittenToo() throws Exception {
        Timeline timeline = Timeline.of(Phrases.of("- - - -"), ONCE);
        assertThat(written(timeline, ImpulseBank.bank())).containsOnly(0f);
    }
}
