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

    /**
     * The same lasting so many bars in all: its longest section of time, or where it has none its
     * longest section, gets longer or shorter.
     *
     * @throws IllegalArgumentException if the other sections leave no bar for it
     */
    public PhrasePlan withBars(int bars) {
        int longest = 0;
        for (int i = 1; i < sections.size(); i++) {
            if (goesBefore(sections.get(i), sections.get(longest))) {
                longest = i;
            }
        }
        PlannedSection stretched = sections.get(longest);
        int left = bars - (bars() - stretched.bars());
        if (left < 1) {
            throw new IllegalArgumentException(
                    "%d bars: the other sections of the phrase take %d already"
                            .formatted(bars, bars() - stretched.bars()));
        }
        return with(longest, stretched.withBars(left));
    }

    private static boolean goesBefore(PlannedSection one, PlannedSection other) {
        boolean time = one.role() == Role.TIME;
        boolean sameKind = time == (other.role() == Role.TIME);
        return sameKind ? one.bars() > other.bars() : time;
    }

    /**
     * Which section a bar stands in.
     *
     * @param bar of the phrase, from 1
     * @return its index, from 0
     * @throws IllegalArgumentException if the phrase does not have the bar
     */
    public int sectionAt(int bar) {
        int before = 0;
        for (int i = 0; i < sections.size(); i++) {
            before += sections.get(i).bars();
            if (bar >= 1 && bar <= before) {
                return i;
            }
        }
        throw new IllegalArgumentException(
                "bar %d: the phrase has bars 1 to %d".formatted(bar, before));
    }

    /** The bar a section starts with, from 1. */
    public int firstBar(int index) {
        return 1 + sections.subList(0, index).stream().mapToInt(PlannedSection::bars).sum();
    }

    /** The bar a section ends with. */
    public int lastBar(int index) {
        return firstBar(index) + sections.get(index).bars() - 1;
    }
}
