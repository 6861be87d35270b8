package org.kitweft.sound.synth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoteStreamTest {
    private static final int SNARE = 38;
    private static final int PERCUSSION = 10;

    @ParameterizedTest(name = "read in parts of {0}")
    @ValueSource(ints = {60, 192, 441, 4096})
    void everyOnsetLandsOnItsFrame(int part) throws IOException {
        List<Long> frames = new ArrayList<>();
        Random random = new Random(7);
        for (long frame = 0; frames.size() < 300; frame += 500 + random.nextInt(3000)) {
            frames.add(frame);
        }
        assertThat(Onsets.of(render(frames, 1, part))).isEqualTo(frames);
    }

    @Test
    void strokesAtOneInstantSoundTogether() throws IOException {
        // Six limbs' worth of keys at one time stamp; the synthesizer moves them apart by 1 us
        // each.
        List<Long> frames = List.of(0L, 1000L, 44_101L, 88_203L, 132_307L);
        assertThat(Onsets.of(render(frames, 6, 192))).isEqualTo(frames);
    }

    @Test
    void manyHoursInTheOnsetsAreStillExact() throws IOException {
        try (NoteStream stream = NoteStream.open(ImpulseBank.bank())) {
            float[] samples = new float[NoteStream.CHANNELS * NoteStream.RATE];
            for (int second = 0; second < 600; second++) {
                stream.read(samples, NoteStream.RATE);
            }
            long at = stream.position() + 12_345;
            stream.on(at, PERCUSSION, -1, SNARE, 127);
            stream.read(samples, NoteStream.RATE);
            assertThat(Onsets.of(samples)).containsExactly(12_345L);
        }
    }

    /** The JDK's bank has noises that differ from machine to machine: compared with themselves. */
    @Test
    void silenceEndsWhatSounds() throws IOException {
        float ringing = halfASecondOn(false);
        assertThat(ringing).isPositive();
        // What is left is the room: the synthesizer's reverberation.
        assertThat(halfASecondOn(true)).isBetween(0f, ringing / 4);
    }

    /** How loud a cymbal still is, silenced after a tenth of a second or not. */
    private static float halfASecondOn(boolean silenced) throws IOException {
        try (NoteStream stream = NoteStream.open(Bank.ofTheJdk())) {
            float[] samples = new float[NoteStream.CHANNELS * 4410];
            stream.on(0, PERCUSSION, -1, 49, 127);
            stream.read(samples, 4410);
            if (silenced) {
                stream.silence();
            }
            for (int tenth = 1; tenth < 6; tenth++) {
                stream.read(samples, 4410);
            }
            return loudest(samples);
        }
    }

    /** On the first start the JDK makes a folder for its preferences: no news for a musician. */
    @Test
    void whatTheSynthesizerKeepsInPreferencesIsNoNews() throws IOException {
        NoteStream.open(ImpulseBank.bank()).close();
        Logger preferences = Logger.getLogger("java.util.prefs");
        assertThat(preferences.isLoggable(Level.INFO)).isFalse();
        assertThat(preferences.isLoggable(Level.WARNING)).isTrue();
    }

    private static float loudest(float[] samples) {
        float loudest = 0;
        for (float sample : samples) {
            loudest = Math.max(loudest, Math.abs(sample));
        }
        return loudest;
    }

    private static float[] render(List<Long> frames, int together, int part) throws IOException {
        long last = frames.get(frames.size() - 1);
        int parts = (int) (last + 2000) / part + 1;
        float[] all = new float[NoteStream.CHANNELS * parts * part];
        float[] samples = new float[NoteStream.CHANNELS * part];
        try (NoteStream stream = NoteStream.open(ImpulseBank.bank())) {
            int next = 0;
            for (int done = 0; done < parts; done++) {
                long ahead = stream.position() + part + NoteStream.AHEAD;
                while (next < frames.size() && frames.get(next) < ahead) {
                    for (int key = SNARE; key < SNARE + together; key++) {
                        stream.on(frames.get(next), PERCUSSION, -1, key, 100);
                        stream.off(frames.get(next) + 400, PERCUSSION, key);
                    }
                    next++;
                }
                stream.read(samples, part);
                System.arraycopy(samples, 0, all, done * samples.length, samples.length);
            }
        }
        return all;
    }
}
