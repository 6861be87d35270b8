package org.kitweft.sound.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.groove.Place;
import org.kitweft.groove.Practice;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.UnknownNameException;
import org.kitweft.sound.AudioLine;
import org.kitweft.sound.Course;
import org.kitweft.sound.MidiOutput;
import org.kitweft.sound.Phrases;
import org.kitweft.sound.PlayOut;
import org.kitweft.sound.PlaySettings;
import org.kitweft.sound.PlayerListener;
import org.kitweft.sound.synth.ImpulseBank;
import org.kitweft.sound.synth.NoteStream;
import org.kitweft.sound.synth.Onsets;

@Timeout(120)
class LivePlayerTest {
    private static final PlaySettings TWICE =
            PlaySettings.DEFAULT.withLoops(2).withTempo(new Tempo(97)).withLevel(1);
    private static final int PLENTY = 100_000;
    private static final double SIXTEENTH = 60.0 / 97 / 4 * NoteStream.RATE;

    @TempDir Path folder;

    private final FakeLines lines = new FakeLines();
    private final FakeMidi midi = new FakeMidi();
    private final Recorder recorder = new Recorder();
    private LivePlayer player;

    @BeforeEach
    void open() {
        player = new LivePlayer(ImpulseBank::bank, lines, midi);
        player.addListener(recorder);
    }

    @AfterEach
    void close() {
        player.close();
        lines.room.release(PLENTY);
    }

    @Test
    void whatIsPlayedReachesTheLineOnItsFrames() throws InterruptedException {
        lines.room.release(PLENTY);
        assertThat(PlayOut.play(player, Phrases.of("RLRR LRLL"), TWICE)).isEmpty();
        List<Long> onsets = Onsets.of(lines.samples());
        assertThat(onsets).hasSize(32);
        for (int i = 0; i < 32; i++) {
            assertThat((double) (onsets.get(i) - onsets.get(0)))
                    .isCloseTo(i * SIXTEENTH, within(0.5001));
        }
        assertThat(recorder.told).containsExactly("playing", "stopped", "silent");
        assertThat(player.isPlaying()).isFalse();
    }

    @Test
    void whatIsPlayedBeforeTheBankIsReadyWaitsForIt() throws InterruptedException {
        CountDownLatch made = new CountDownLatch(1);
        FakeLines others = new FakeLines();
        others.room.release(PLENTY);
        try (LivePlayer early =
                new LivePlayer(
                        () -> {
                            awaitQuietly(made);
                            return ImpulseBank.bank();
                        },
                        others,
                        midi)) {
            assertThat(early.notice()).get().asString().contains("sound bank");
            Recorder told = new Recorder();
            early.addListener(told);
            early.settings(TWICE.withLoops(1));
            early.show(Phrases.of("RLRR LRLL"));
            early.play();
            assertThat(early.isPlaying()).isTrue();
            made.countDown();
            assertThat(told.next()).isEqualTo("playing");
            assertThat(told.next()).isEqualTo("stopped");
            assertThat(told.next()).isEqualTo("silent");
            assertThat(Onsets.of(others.samples())).hasSize(16);
            assertThat(early.notice()).isEmpty();
        }
    }

    private static void awaitQuietly(CountDownLatch latch) throws IOException {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }

    @Test
    void theTrainerRisesAtTheSeamOfTwoLoopsOnItsFrameAndTellsEachLoop() throws Exception {
        List<String> loops = new CopyOnWriteArrayList<>();
        player.addListener(
                new PlayerListener() {
                    @Override
                    public void loop(int number, Practice.Loop loop) {
                        loops.add(number + " at " + loop.tempo().beatsPerMinute());
                    }
                });
        Practice practice = new Practice(new Tempo(90), 31, 1, new Tempo(150), false);
        PlaySettings rising =
                PlaySettings.DEFAULT
                        .withLoops(4)
                        .withLevel(1)
                        .withCourse(new Course.Practised(practice));
        lines.room.release(PLENTY);
        PlayOut.play(player, Phrases.of("RLRR LRLL"), rising);
        List<Long> onsets = Onsets.of(lines.samples());
        assertThat(onsets).hasSize(4 * 16);
        double ideal = onsets.get(0);
        for (int i = 0; i < onsets.size(); i++) {
            assertThat((double) onsets.get(i)).isCloseTo(ideal, within(0.5001 + 0.5));
            int tempo = new int[] {90, 121, 150, 150}[i / 16];
            ideal += 60.0 / tempo / 4 * NoteStream.RATE;
        }
        assertThat(loops).containsExactly("1 at 90", "2 at 121", "3 at 150", "4 at 150");
    }

    @Test
    void everyStepIsToldWithItsHits() throws InterruptedException {
        lines.room.release(PLENTY);
        PlayOut.play(
                player,
                Phrases.of("R - L -"),
                TWICE.withLoops(1).withMuted(Set.of(Limb.LEFT_HAND)));
        assertThat(recorder.places).hasSize(16).startsWith(new Place(1, 1), new Place(1, 2));
        assertThat(recorder.struckTogether.subList(0, 4)).containsExactly(1, 0, 0, 0);
    }

    @Test
    void endlessPlayingGoesOnUntilItIsStopped() throws InterruptedException {
        player.settings(TWICE.withLoops(PlaySettings.ENDLESS));
        player.show(Phrases.of("RLRR LRLL"));
        player.play();
        assertThat(recorder.next()).isEqualTo("playing");
        lines.room.release(5000); // over 20 s
        assertThat(recorder.firstStroke.await(60, TimeUnit.SECONDS)).isTrue();
        assertThat(player.isPlaying()).isTrue();
        player.stop();
        assertThat(player.isPlaying()).isFalse();
        lines.room.release(PLENTY);
        assertThat(recorder.next()).isEqualTo("stopped");
        assertThat(recorder.next()).isEqualTo("silent");
    }

    @Test
    void anEditWhilePlayingIsHeardWithoutAGapOrADoubleStroke() throws InterruptedException {
        player.settings(TWICE.withLoops(PlaySettings.ENDLESS));
        player.show(Phrases.of("RLRR LRLL"));
        player.play();
        assertThat(recorder.next()).isEqualTo("playing");
        lines.room.release(500);
        recorder.firstStroke.await();
        player.show(Phrases.of("RLLR LRRL"));
        player.settings(TWICE.withLoops(3).withMuted(Set.of()));
        lines.room.release(PLENTY);
        assertThat(recorder.next()).isEqualTo("stopped");
        assertThat(recorder.next()).isEqualTo("silent");
        List<Long> onsets = Onsets.of(lines.samples());
        for (int i = 0; i < onsets.size(); i++) {
            assertThat((double) (onsets.get(i) - onsets.get(0)))
                    .isCloseTo(i * SIXTEENTH, within(0.5001));
        }
    }

    @Test
    void aLineTakenAwayStopsPlayingInOneLineAndAnotherPlayGoesOn() throws InterruptedException {
        // The line that was opened at the start takes everything; the next fails halfway.
        lines.failAfter = 400;
        player.useLine(new AudioLine("fake", "Fake line"));
        lines.room.release(PLENTY);
        Optional<String> fault = PlayOut.play(player, Phrases.of("RLRR LRLL"), TWICE);
        assertThat(fault).contains("the audio line was taken away; play again when it is back");
        assertThat(player.isPlaying()).isFalse();
        lines.failAfter = Integer.MAX_VALUE;
        assertThat(PlayOut.play(player, Phrases.of("RLRR LRLL"), TWICE)).isEmpty();
    }

    @Test
    void withoutADeviceItSaysSoAndComesBackWhenThereIsOne() throws InterruptedException {
        lines.none = true;
        try (LivePlayer silent = new LivePlayer(ImpulseBank::bank, lines, midi)) {
            lines.room.release(PLENTY);
            assertThat(PlayOut.play(silent, Phrases.of("RLRR LRLL"), TWICE))
                    .contains("no audio device: none here");
            assertThat(silent.notice()).contains("no audio device: none here");
            assertThat(silent.isPlaying()).isFalse();
            lines.none = false;
            assertThat(PlayOut.play(silent, Phrases.of("RLRR LRLL"), TWICE)).isEmpty();
            assertThat(silent.notice()).isEmpty();
        }
    }

    @Test
    void withoutADeviceExternalMidiIsStillPlayed() throws InterruptedException {
        lines.none = true;
        try (LivePlayer silent = new LivePlayer(ImpulseBank::bank, lines, midi)) {
            silent.useMidiOutput(Optional.of(FakeMidi.OUTPUT));
            assertThat(
                            PlayOut.play(
                                    silent,
                                    Phrases.of("R K"),
                                    TWICE.withLoops(1).withTempo(new Tempo(400))))
                    .isEmpty();
        }
        midi.closed.await();
        assertThat(midi.keysStruck()).hasSize(16).startsWith(38, 36, 38, 36);
    }

    @Test
    void anotherLineThatIsNotToBeHadIsToldAndTheFormerStays() throws InterruptedException {
        lines.room.release(PLENTY);
        PlayOut.play(player, Phrases.of("RLRR LRLL"), TWICE);
        recorder.told.clear();
        lines.none = true;
        player.useLine(new AudioLine("other", "Other line"));
        assertThat(recorder.next()).isEqualTo("fault: no audio device: none here");
        assertThat(PlayOut.play(player, Phrases.of("RLRR LRLL"), TWICE)).isEmpty();
    }

    @Test
    void aMidiOutputThatIsGoneIsTold() throws InterruptedException {
        player.useMidiOutput(Optional.of(new MidiOutput("other", "Other output")));
        assertThat(recorder.next()).isEqualTo("fault: MIDI output Other output is gone");
    }

    @Test
    void aCorruptBankIsToldInOneLineAndTheFormerStays() throws Exception {
        Path file = Files.writeString(folder.resolve("broken.sf2"), "RIFF and nothing more");
        player.useBank(file);
        assertThat(recorder.next()).startsWith("fault: sound bank " + file).doesNotContain("\n");
        lines.room.release(PLENTY);
        PlayOut.play(player, Phrases.of("RLRR LRLL"), TWICE);
        assertThat(Onsets.of(lines.samples())).hasSize(32);
    }

    @Test
    void aBankThatFailsBeforeAnybodyListensIsKeptAsTheNoticeUntilOneIsThere() throws Exception {
        try (LivePlayer other =
                new LivePlayer(
                        () -> {
                            throw new IOException("the bank is gone");
                        },
                        lines,
                        midi)) {
            BlockingQueue<Optional<String>> notices = new LinkedBlockingQueue<>();
            while (!other.notice().equals(Optional.of("the bank is gone"))) {
                Thread.onSpinWait(); // until the bank was tried and the JDK's is there
            }
            other.addListener(
                    new PlayerListener() {
                        @Override
                        public void notice(Optional<String> why) {
                            notices.add(why);
                        }
                    });
            Path good = folder.resolve("good.sf2");
            ImpulseBank.write(good);
            other.useBank(good);
            Optional<String> told = notices.take();
            while (told.isPresent()) {
                told = notices.take();
            }
            assertThat(other.notice()).isEmpty();
        }
    }

    @Test
    void aBankThatCannotBeHadGivesWayToTheJdks() throws InterruptedException {
        CountDownLatch listening = new CountDownLatch(1);
        try (LivePlayer other =
                new LivePlayer(
                        () -> {
                            awaitQuietly(listening);
                            throw new IOException("the bank is gone");
                        },
                        lines,
                        midi)) {
            other.addListener(recorder);
            listening.countDown();
            lines.room.release(PLENTY);
            other.show(Phrases.of("RLRR LRLL"));
            other.settings(TWICE);
            other.play();
            assertThat(List.of(recorder.next(), recorder.next()))
                    .containsExactlyInAnyOrder("fault: the bank is gone", "playing");
            assertThat(recorder.next()).isEqualTo("stopped");
        }
    }

    @Test
    void aStrokeIsHeardAtOnceWithoutPlaying() throws InterruptedException {
        Kit kit = BuiltInKits.load("five-piece");
        lines.room.release(PLENTY);
        PlayOut.play(player, Phrases.of("- - - -"), TWICE);
        recorder.told.clear();
        int before = lines.samples().length;
        player.strike(kit, kit.find("crash"), 100);
        assertThat(recorder.next()).isEqualTo("silent");
        float[] samples = lines.samples();
        List<Long> onsets = Onsets.of(Arrays.copyOfRange(samples, before, samples.length));
        assertThat(onsets).hasSize(1);
        assertThat(onsets.get(0)).isLessThan(NoteStream.RATE / 100);
        assertThat(player.isPlaying()).isFalse();
    }

    @Test
    void aStrokeOnASoundTheKitLacksIsRefused() {
        Kit kit = BuiltInKits.load("five-piece");
        assertThatThrownBy(() -> player.strike(kit, new SoundName("gong", "edge"), 100))
                .isInstanceOf(UnknownNameException.class);
    }

    @Test
    void playWithoutAPhraseDoesNothing() {
        player.play();
        assertThat(player.isPlaying()).isFalse();
    }

    @Test
    void closingGivesTheLineBack() throws InterruptedException {
        lines.room.release(PLENTY);
        PlayOut.play(player, Phrases.of("RLRR LRLL"), TWICE);
        player.close();
        while (lines.closed.get() < lines.opened.get()) {
            Thread.onSpinWait(); // the test's timeout bounds it
        }
        assertThat(lines.opened).hasValue(1);
    }
}
