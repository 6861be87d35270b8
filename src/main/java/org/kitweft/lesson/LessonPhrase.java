package org.kitweft.lesson;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.kitweft.band.Backing;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.Tempo;

/**
 * One phrase of a lesson: bars of time, a fill, a punch, with what is said about it and the band
 * that goes with it. Immutable; the {@code with…} methods make changed copies.
 *
 * @param title for people; may be empty
 * @param plan its sections
 * @param band what was asked of a band, if one was ever asked; its chart may be longer than the
 *     phrase, then its first bars count
 * @param tempo the tempo it opens with
 * @param tempoSteps tempos to work through in turn, as a {@link LessonItem} has them
 * @param remarks lines separated by {@code \n}; may be empty
 * @param unknown what the lesson's file said about it beyond what this program knows
 */
public record LessonPhrase(
        String title,
        PhrasePlan plan,
        Optional<Backing> band,
        Tempo tempo,
        List<Integer> tempoSteps,
        String remarks,
        UnknownFields unknown) {

    public LessonPhrase {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(band, "band");
        Objects.requireNonNull(tempo, "tempo");
        tempoSteps = List.copyOf(tempoSteps);
        Objects.requireNonNull(remarks, "remarks");
        Objects.requireNonNull(unknown, "unknown");
        LessonItem.checkTempoSteps(tempoSteps);
    }

    /** A phrase made here, not read from a file. */
    public LessonPhrase(
            String title,
            PhrasePlan plan,
            Optional<Backing> band,
            Tempo tempo,
            List<Integer> tempoSteps,
            String remarks) {
        this(title, plan, band, tempo, tempoSteps, remarks, UnknownFields.NONE);
    }

    /** The band that plays along; empty too where it was switched off. */
    public Optional<Backing> playingBand() {
        return band.filter(Backing::on);
    }

    /** The same with another title. */
    public LessonPhrase withTitle(String other) {
        return new LessonPhrase(other, plan, band, tempo, tempoSteps, remarks, unknown);
    }

    /** The same with other sections. */
    public LessonPhrase withPlan(PhrasePlan other) {
        return new LessonPhrase(title, other, band, tempo, tempoSteps, remarks, unknown);
    }

    /** The same with another band. */
    public LessonPhrase withBand(Optional<Backing> other) {
        return new LessonPhrase(title, plan, other, tempo, tempoSteps, remarks, unknown);
    }

    /** The same at another tempo. */
    public LessonPhrase withTempo(Tempo other) {
        return new LessonPhrase(title, plan, band, other, tempoSteps, remarks, unknown);
    }

    /** The same with other remarks. */
    public LessonPhrase withRemarks(String other) {
        return new LessonPhrase(title, plan, band, tempo, tempoSteps, other, unknown);
    }
}
