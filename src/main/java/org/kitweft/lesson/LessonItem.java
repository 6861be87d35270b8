package org.kitweft.lesson;

import java.util.List;
import java.util.Objects;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;

/**
 * One groove of a lesson, with what is said about it. Immutable; the {@code with…} methods make
 * changed copies.
 *
 * @param title for people; may be empty
 * @param role what the groove is for
 * @param recipe what it is woven from
 * @param tempo the tempo it opens with
 * @param tempoSteps tempos to work through in turn, in beats a minute, {@value Tempo#SLOWEST} to
 *     {@value Tempo#FASTEST}; at most {@value #MAX_TEMPO_STEPS}, empty if there are none
 * @param remarks lines separated by {@code \n}; may be empty
 * @param unknown what the lesson's file said about it beyond what this program knows
 */
public record LessonItem(
        String title,
        Role role,
        Recipe recipe,
        Tempo tempo,
        List<Integer> tempoSteps,
        String remarks,
        UnknownFields unknown) {
    /** The most tempo steps of an item. */
    public static final int MAX_TEMPO_STEPS = 100;

    public LessonItem {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(tempo, "tempo");
        tempoSteps = List.copyOf(tempoSteps);
        Objects.requireNonNull(remarks, "remarks");
        Objects.requireNonNull(unknown, "unknown");
        checkTempoSteps(tempoSteps);
    }

    static void checkTempoSteps(List<Integer> tempoSteps) {
        if (tempoSteps.size() > MAX_TEMPO_STEPS) {
            throw new IllegalArgumentException(
                    "%d tempo steps: expected at most %d"
                            .formatted(tempoSteps.size(), MAX_TEMPO_STEPS));
        }
        for (int step : tempoSteps) {
            if (step < Tempo.SLOWEST || step > Tempo.FASTEST) {
                throw new IllegalArgumentException(
                        "tempo step %d: expected %d to %d beats a minute"
                                .formatted(step, Tempo.SLOWEST, Tempo.FASTEST));
            }
        }
    }

    /** An item made here, not read from a file. */
    public LessonItem(
            String title,
            Role role,
            Recipe recipe,
            Tempo tempo,
            List<Integer> tempoSteps,
            String remarks) {
        this(title, role, recipe, tempo, tempoSteps, remarks, UnknownFields.NONE);
    }

    /** The same with another title. */
    public LessonItem withTitle(String other) {
        return new LessonItem(other, role, recipe, tempo, tempoSteps, remarks, unknown);
    }

    /** The same for another role. */
    public LessonItem withRole(Role other) {
        return new LessonItem(title, other, recipe, tempo, tempoSteps, remarks, unknown);
    }

    /** The same woven from another recipe. */
    public LessonItem withRecipe(Recipe other) {
        return new LessonItem(title, role, other, tempo, tempoSteps, remarks, unknown);
    }

    /** The same at another tempo. */
    public LessonItem withTempo(Tempo other) {
        return new LessonItem(title, role, recipe, other, tempoSteps, remarks, unknown);
    }

    /** The same with exactly these tempo steps. */
    public LessonItem withTempoSteps(List<Integer> other) {
        return new LessonItem(title, role, recipe, tempo, other, remarks, unknown);
    }

    /** The same with other remarks. */
    public LessonItem withRemarks(String other) {
        return new LessonItem(title, role, recipe, tempo, tempoSteps, other, unknown);
    }
}
