package org.kitweft.groove;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A phrase before it is woven: bars of time, then a fill, then a punch, or any other order of
 * sections. Immutable; edits make new plans.
 *
 * @param sections in playing order, at least one; all on one kit; {@value Groove#MAX_BARS} bars at
 *     most in all
 */
public record PhrasePlan(List<PlannedSection> sections) {
    /** The lengths in bars that phrases usually have. Common practice, no source. */
    public static final Set<Integer> USUAL_BARS = Set.of(4, 8, 12);

    public PhrasePlan {
        sections = List.copyOf(sections);
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("a phrase has at least one section");
        }
        if (sections.stream().map(s -> s.recipe().kit()).distinct().count() > 1) {
            throw new IllegalArgumentException("the sections of a phrase are on one kit");
        }
        int bars = sections.stream().mapToInt(PlannedSection::bars).sum();
        if (bars > Groove.MAX_BARS) {
            throw new IllegalArgumentException(
                    "a phrase of %d bars: expected at most %d".formatted(bars, Groove.MAX_BARS));
        }
    }

    /**
     * Bars of time, one bar of fill, one bar of punch.
     *
     * @param bars of the whole phrase, from 3
     */
    public static PhrasePlan of(Recipe time, Recipe fill, Recipe punch, int bars) {
        if (bars < 3) {
            throw new IllegalArgumentException(
                    "a phrase of %d bars: time, fill and punch need at least 3".formatted(bars));
        }
        return new PhrasePlan(
                List.of(
                        new PlannedSection(Role.TIME, time, bars - 2),
                        new PlannedSection(Role.FILL, fill, 1),
                        new PlannedSection(Role.PUNCH, punch, 1)));
    }

    /**
     * One sticking in all three roles: time as the recipe has it, the fill and the punch on
     * voicings of their own.
     *
     * @param bars of the whole phrase, from 3
     */
    public static PhrasePlan ofOne(Recipe recipe, Voicing fill, Voicing punch, int bars) {
        return of(recipe, recipe.with(fill), recipe.with(punch), bars);
    }

    /** The phrase. */
    public Phrase weave() {
        return new Phrase(sections.stream().map(PlannedSection::weave).toList());
    }

    /** Its length in bars. */
    public int bars() {
        return sections.stream().mapToInt(PlannedSection::bars).sum();
    }

    /** The same with one section exchanged; {@code index} counts from 0. */
    public PhrasePlan with(int index, PlannedSection section) {
        List<PlannedSection> changed = new ArrayList<>(sections);
        changed.set(index, section);
        return new PhrasePlan(changed);
    }

    /** The same with a section more, before the one at {@code index} or at the end. */
    public PhrasePlan plus(int index, PlannedSection section) {
        List<PlannedSection> changed = new ArrayList<>(sections);
        changed.add(index, section);
        return new PhrasePlan(changed);
    }

    /** The same without a section; the last one cannot go. */
    public PhrasePlan without(int index) {
        List<PlannedSection> changed = new ArrayList<>(sections);
        changed.remove(index);
        return new PhrasePlan(changed);
    }

    /** The same with a section at another place. */
    public PhrasePlan moved(int from, int to) {
        List<PlannedSection> changed = new ArrayList<>(sections);
        changed.add(to, changed.remove(from));
        return new PhrasePlan(changed);
    }
}
