package org.kitweft.ui.session;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import org.kitweft.band.Backing;
import org.kitweft.band.ChordChart;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.pattern.TextFormatException;

/**
 * The phrase being built and the band that plays along: the part of a session that is beyond the
 * groove in the grid. Immutable.
 *
 * @param plan the sections; empty until there is one
 * @param open which section is open in the grid, from 0: it follows the groove there
 * @param plays whether the phrase is what plays, and not the groove; only where there is one
 * @param kept which phrase of the lesson it was opened from or kept as, from 0
 * @param typed the chords as they are typed, which may be wrong just now; then the backing still
 *     has the last right ones
 * @param backing what is asked of the band
 */
public record PhraseDraft(
        Optional<PhrasePlan> plan,
        OptionalInt open,
        boolean plays,
        OptionalInt kept,
        String typed,
        Backing backing) {
    /** No phrase yet, and the band off. */
    public static final PhraseDraft NONE =
            new PhraseDraft(
                    Optional.empty(),
                    OptionalInt.empty(),
                    false,
                    OptionalInt.empty(),
                    Backing.DEFAULT.chords(),
                    Backing.DEFAULT);

    public PhraseDraft {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(kept, "kept");
        Objects.requireNonNull(typed, "typed");
        Objects.requireNonNull(backing, "backing");
        int sections = plan.map(p -> p.sections().size()).orElse(0);
        if (open.isPresent() && open.getAsInt() >= sections) {
            throw new IllegalArgumentException(
                    "section %d of a phrase with %d".formatted(open.getAsInt() + 1, sections));
        }
        if (plays && plan.isEmpty()) {
            throw new IllegalArgumentException("there is no phrase to play");
        }
    }

    /**
     * Why the chords are not played as they are typed: they cannot be read, or they are longer than
     * the phrase that plays, of which the first bars are heard.
     */
    public Optional<TextFormatException> fault() {
        try {
            ChordChart.parse(typed, mostBars());
            return Optional.empty();
        } catch (TextFormatException e) {
            return Optional.of(e);
        }
    }

    private int mostBars() {
        return plays ? plan.orElseThrow().bars() : ChordChart.MOST_BARS;
    }

    /** The same with other chords typed; the backing follows where they can be read. */
    public PhraseDraft typed(String other) {
        Backing read;
        try {
            read = backing.withChords(other);
        } catch (TextFormatException e) {
            read = backing;
        }
        return new PhraseDraft(plan, open, plays, kept, other, read);
    }

    /** The same with another backing; what is typed follows where the chords are others. */
    public PhraseDraft with(Backing other) {
        String text = other.chords().equals(backing.chords()) ? typed : other.chords();
        return new PhraseDraft(plan, open, plays, kept, text, other);
    }

    /** The same with other sections, of which none is open. */
    public PhraseDraft with(PhrasePlan other) {
        return new PhraseDraft(
                Optional.of(other), OptionalInt.empty(), plays, kept, typed, backing);
    }

    /** The same without a phrase; the band stays. */
    public PhraseDraft withoutPlan() {
        return new PhraseDraft(
                Optional.empty(), OptionalInt.empty(), false, OptionalInt.empty(), typed, backing);
    }

    /** The same with another section open, or none. */
    public PhraseDraft withOpen(OptionalInt other) {
        return new PhraseDraft(plan, other, plays, kept, typed, backing);
    }

    /** The same where the phrase plays, or the groove. */
    public PhraseDraft withPlays(boolean other) {
        return new PhraseDraft(plan, open, other, kept, typed, backing);
    }

    /** The same kept in another place of the lesson, or in none. */
    public PhraseDraft withKept(OptionalInt other) {
        return new PhraseDraft(plan, open, plays, other, typed, backing);
    }

    /** The same with each section changed. */
    PhraseDraft mapped(UnaryOperator<PlannedSection> change) {
        return new PhraseDraft(
                plan.map(p -> new PhrasePlan(p.sections().stream().map(change).toList())),
                open,
                plays,
                kept,
                typed,
                backing);
    }

    /** The same, its open section being what the grid shows. */
    PhraseDraft following(Recipe recipe, Role role) {
        if (open.isEmpty()) {
            return this;
        }
        int index = open.getAsInt();
        PhrasePlan now = plan.orElseThrow();
        PlannedSection section = new PlannedSection(role, recipe, now.sections().get(index).bars());
        return section.equals(now.sections().get(index))
                ? this
                : new PhraseDraft(
                        Optional.of(now.with(index, section)), open, plays, kept, typed, backing);
    }
}
