package org.kitweft.ui.mix;

import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Part;
import org.kitweft.sound.Strip;
import org.kitweft.ui.play.PlayModel;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;

/**
 * What the mixer shows and does; the mix itself is a part of the session, and is undone with it.
 */
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

    private final SessionModel session;
    private final PlayModel play;

    MixModel(SessionModel session, PlayModel play) {
        this.session = session;
        this.play = play;
    }

    Mix mix() {
        return session.session().playing().mix();
    }

    Strip strip(Part part) {
        return mix().strip(part);
    }

    static String name(Part part) {
        return NAMES.getOrDefault(part, part.id());
    }

    void level(Part part, int percent) {
        turn("Level of the " + part.id(), part, s -> s.withLevel((double) percent / FULL));
    }

    void pan(Part part, int percent) {
        turn("Pan of the " + part.id(), part, s -> s.withPan((double) percent / FULL));
    }

    /** Ends the turning under way: what follows is undone for itself. */
    void seal() {
        session.seal();
    }

    void muted(Part part, boolean muted) {
        session.edit("Mute", with(part, strip -> strip.withMuted(muted)));
    }

    void solo(Part part, boolean solo) {
        session.edit("Solo", with(part, strip -> strip.withSolo(solo)));
    }

    /** As at first. */
    void reset(Part part) {
        session.edit("Reset the " + part.id(), with(part, strip -> Mix.DEFAULT.strip(part)));
    }

    /** All strips as at first. */
    void reset() {
        session.edit("Reset the mixer", with(Mix.DEFAULT));
    }

    private void turn(String name, Part part, UnaryOperator<Strip> change) {
        session.keepEditing(name, with(part, change));
    }

    private Session with(Part part, UnaryOperator<Strip> change) {
        return with(mix().with(part, change.apply(strip(part))));
    }

    private Session with(Mix mix) {
        Session now = session.session();
        return now.with(now.playing().with(mix));
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
