package org.kitweft.band;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.kitweft.groove.Role;
import org.kitweft.pattern.Dynamic;

/**
 * One player's part of a style.
 *
 * @param reason why it is played so, in plain language
 * @param program MIDI program, from 0
 * @param low lowest key of its range
 * @param high highest key
 * @param loudness velocity of a plain note
 * @param length how long notes last, in percent of the time to the next
 * @param voices how chords are voiced; empty for a line of single notes
 * @param figures what it repeats, all of one length; empty where it only follows punches
 * @param opening what it plays in the phrase's first bar instead
 * @param kick what it plays with the bass drum, by the stroke's place in the bar; empty: it does
 *     not lock
 * @param between a figure whose steps fill in where no bass drum is within a step
 * @param strikesChanges whether a new chord is struck whole, or its root played, wherever the
 *     figure is not silent
 * @param followsClave whether the halves of its figures change places with the clave's direction
 * @param fill what it does in a fill
 * @param punch what it does in a punch
 */
record StyleLine(
        String reason,
        int program,
        int low,
        int high,
        int loudness,
        int length,
        Optional<Voices> voices,
        List<BandFigure> figures,
        Optional<BandFigure> opening,
        Map<MetricPlace, FigureStep> kick,
        Optional<BandFigure> between,
        boolean strikesChanges,
        boolean followsClave,
        InSection fill,
        InSection punch) {

    /** Roots lie in the lowest octave of a bass and their octaves in the next. */
    private static final int BASS_RANGE = 23;

    /** An octave and a half hold every inversion, and keep least motion from drifting off. */
    private static final int CHORD_RANGE = 17;

    /** How chords are voiced: by which kind, in how many voices. */
    record Voices(VoicingKind kind, int count) {
        Voices {
            Objects.requireNonNull(kind, "kind");
            check("voices", count, 2, 5);
        }
    }

    StyleLine {
        check("program", program, 0, 127);
        int range = voices.isPresent() ? CHORD_RANGE : BASS_RANGE;
        check("low", low, 0, 127 - range);
        check("high", high, low + range, 127);
        check("loudness", loudness, 40, 110);
        check("length", length, 10, 100);
        figures = List.copyOf(figures);
        kick = Map.copyOf(kick);
        if (reason.isBlank()) {
            throw new IllegalArgumentException("a line needs its reason");
        }
        if (figures.stream().map(figure -> figure.steps().size()).distinct().count() > 1) {
            throw new IllegalArgumentException("the figures of a line have one length");
        }
        if (!kick.isEmpty() && kick.size() < MetricPlace.values().length) {
            throw new IllegalArgumentException(
                    "kick: expected a voice for downbeat, beat, offbeat and other");
        }
    }

    private static void check(String what, int value, int from, int to) {
        if (value < from || value > to) {
            throw new IllegalArgumentException(
                    "%s %d: expected %d to %d".formatted(what, value, from, to));
        }
    }

    /** What is struck where nothing else is said. */
    FigureStep plain() {
        return FigureStep.note(voices.isPresent() ? "x" : "1", Dynamic.PLAIN);
    }

    /** What a line does in a section of a role. */
    InSection in(Role role) {
        return switch (role) {
            case TIME -> InSection.FIGURE;
            case FILL -> fill;
            case PUNCH -> punch;
        };
    }
}
