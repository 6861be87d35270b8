package org.kitweft.ui.mix;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.JSlider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Part;
import org.kitweft.sound.Strip;
import org.kitweft.ui.play.FakePlayer;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.FaultsFail;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Theme;

class MixModelTest {
    private final FakePlayer player = new FakePlayer();
    private final SessionModel session = new SessionModel(Session.opening());
    private final PlayModel play =
            new PlayModel(session, new Playhead(), Runnable::run, new FaultsFail());
    private final MixModel model = new MixModel(session, play);

    @Test
    void whatIsTurnedReachesThePlayerAndResetBringsItBack() {
        play.attach(player);
        model.level(Part.BASS, 25);
        model.pan(Part.BASS, -40);
        model.muted(Part.CLICK, true);
        Mix mix = player.settings().mix();
        assertThat(mix.strip(Part.BASS)).isEqualTo(new Strip(false, false, 0.25, -0.4));
        assertThat(mix.hears(Part.CLICK)).isFalse();
        model.reset(Part.BASS);
        assertThat(player.settings().mix().strip(Part.BASS))
                .isEqualTo(Mix.DEFAULT.strip(Part.BASS));
        model.reset();
        assertThat(player.settings().mix()).isEqualTo(Mix.DEFAULT);
    }

    /** A drag of the fader tells many levels; it is one edit. */
    @Test
    void aDragOfAFaderIsUndoneAsOne() {
        play.attach(player);
        JSlider level = levelOfDrums();
        int first = level.getValue();
        for (int goal : new int[] {20, 80}) {
            level.setValueIsAdjusting(true);
            for (int value = 30; value != goal; value += Integer.signum(goal - value)) {
                level.setValue(value);
            }
            level.setValue(goal);
            level.setValueIsAdjusting(false);
        }
        assertThat(player.settings().mix().strip(Part.DRUMS).level()).isEqualTo(0.8);
        assertThat(session.undoName()).contains("Level of the drums");
        session.undo();
        assertThat(player.settings().mix().strip(Part.DRUMS).level()).isEqualTo(0.2);
        assertThat(level.getValue()).isEqualTo(20);
        session.undo();
        assertThat(player.settings().mix()).isEqualTo(Mix.DEFAULT);
        assertThat(level.getValue()).isEqualTo(first);
        assertThat(session.undoName()).isEmpty();
        session.redo();
        assertThat(player.settings().mix().strip(Part.DRUMS).level()).isEqualTo(0.2);
    }

    private JSlider levelOfDrums() {
        Theme.LIGHT.install(100);
        return (JSlider) new MixerPanel(session, play).focusTarget();
    }

    @Test
    void whyAPartIsNotHeardIsSaid() {
        assertThat(model.unheard(Part.CLICK)).isEqualTo("click is off");
        play.change(s -> s.withClick(true));
        assertThat(model.unheard(Part.CLICK)).isEmpty();
        model.solo(Part.DRUMS, true);
        assertThat(model.unheard(Part.CLICK)).isEqualTo("another is solo");
        assertThat(model.unheard(Part.DRUMS)).isEmpty();
        model.muted(Part.DRUMS, true);
        assertThat(model.unheard(Part.DRUMS)).isEqualTo("muted");
    }

    @ParameterizedTest
    @CsvSource({"1, 0.0 dB", "0.5, −6.0 dB", "0.1, −20.0 dB", "0, silent"})
    void levelsAreToldInDecibels(double level, String text) {
        assertThat(MixModel.levelText(Strip.at(level))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0, middle", "-0.3, 30 left", "1, 100 right", "0.001, middle"})
    void panIsToldBySide(double pan, String text) {
        assertThat(MixModel.panText(Strip.at(1).withPan(pan))).isEqualTo(text);
    }

    @Test
    void theBalanceIsRememberedButNotMuteAndSolo() {
        Mix mix =
                Mix.DEFAULT
                        .with(Part.BASS, new Strip(true, true, 0.31, -0.5))
                        .with(Part.PUNCHES, Strip.at(0.05));
        Mix read = MixText.parse(MixText.print(mix));
        assertThat(read.strip(Part.BASS)).isEqualTo(new Strip(false, false, 0.31, -0.5));
        assertThat(read.strip(Part.PUNCHES)).isEqualTo(Strip.at(0.05));
        assertThat(read.strip(Part.DRUMS)).isEqualTo(Mix.DEFAULT.strip(Part.DRUMS));
        assertThat(MixText.print(Mix.DEFAULT)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"''", "nonsense", "bass 101 0", "bass 50 -101", "tuba 50 0", "bass 50"})
    void whatCannotBeReadIsAsAtFirst(String text) {
        assertThat(MixText.parse(text)).isEqualTo(Mix.DEFAULT);
    }
}
