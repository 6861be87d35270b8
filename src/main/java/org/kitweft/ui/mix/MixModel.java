package org.kitweft.ui.mix;

import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Part;
import org.kitweft.sound.Strip;
import org.kitweft.ui.play.PlayModel;

/** What the mixer shows and does; the mix itself is a part of how things are played. */
final class MixModel {
    /** Steps of a slider: level from 0 to it, pan from minus it to it. */
    static final int FULL = 100;

    private static final Map<Part, String> NAMES =
            Map.of(
                    Part.DRUMS, "Drums",
                    Part.CLICK, "Click",
                    Part.BASS, "Bass",
                    Part.COMPING, "Comping",
                    Part.PUNCHES, "Punches");

    private final PlayModel play;

    MixModel(PlayModel play) {
        this.play = play;
    }

    Mix mix() {
        return play.settings().mix();
    }

    Strip strip(Part part) {
        return mix().strip(part);
    }

    static String name(Part part) {
        return NAMES.getOrDefault(part, part.id());
    }

    void level(Part part, int percent) {
        change(part, strip -> strip.withLevel((double) percent / FULL));
    }

    void pan(Part part, int percent) {
        change(part, strip -> strip.withPan((double) percent / FULL));
    }

    void muted(Part part, boolean muted) {
        change(part, strip -> strip.withMuted(muted));
    }

    void solo(Part part, boolean solo) {
        change(part, strip -> strip.withSolo(solo));
    }

    /** As at first. */
    void reset(Part part) {
        change(part, strip -> Mix.DEFAULT.strip(part));
    }

    /** All strips as at first. */
    void reset() {
        play.change(settings -> settings.withMix(Mix.DEFAULT));
    }

    private void change(Part part, UnaryOperator<Strip> change) {
        play.change(
                settings ->
                        settings.withMix(
                                settings.mix()
                                        .with(part, change.apply(settings.mix().strip(part)))));
    }

    static int levelPercent(Strip strip) {
        return (int) Math.round(strip.level() * FULL);
    }

    static int panPercent(Strip strip) {
        return (int) Math.round(strip.pan() * FULL);
    }

    /** The gain in decibels, full level 0: {@code −4.4 dB}. */
    static String levelText(Strip strip) {
        return strip.level() == 0
                ? "silent"
                : String.format(Locale.ROOT, "%.1f dB", 20 * Math.log10(strip.level()))
                        .replace("-0.0", "0.0")
                        .replace('-', '−');
    }

    /** Where it stands: {@code middle}, {@code 30 left}. */
    static String panText(Strip strip) {
        int percent = panPercent(strip);
        return percent == 0 ? "middle" : Math.abs(percent) + (percent < 0 ? " left" : " right");
    }

    /** Why a part is not heard, as far as the mixer knows; empty if it is heard. */
    String unheard(Part part) {
        if (strip(part).muted()) {
            return "muted";
        }
        if (!mix().hears(part)) {
            return "another is solo";
        }
        return part == Part.CLICK && !play.settings().click() ? "click is off" : "";
    }
}
