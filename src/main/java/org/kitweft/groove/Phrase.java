package org.kitweft.groove;

import java.util.ArrayList;
import java.util.List;

/**
 * Grooves one after the other: bars of time, then a fill, then a punch, or a single groove. This is
 * what a player plays and a score shows.
 *
 * @param sections in playing order, at least one; all on one kit
 */
public record Phrase(List<Section> sections) {
    public Phrase {
        sections = List.copyOf(sections);
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("a phrase has at least one section");
        }
        if (sections.stream().map(s -> s.groove().kit()).distinct().count() > 1) {
            throw new IllegalArgumentException("the sections of a phrase are on one kit");
        }
    }

    /** A phrase of one groove that keeps time. */
    public static Phrase of(Groove groove) {
        return new Phrase(List.of(new Section(Role.TIME, groove)));
    }

    /** Its length in ticks. */
    public long ticks() {
        return sections.stream().mapToLong(section -> section.groove().ticks()).sum();
    }

    /** Its length in bars. */
    public int bars() {
        return sections.stream().mapToInt(section -> section.groove().bars()).sum();
    }

    /**
     * Some of its bars, to be practised alone: sections are cut at the bar lines.
     *
     * @param from the first bar, from 1
     * @param to the last bar
     * @throws IllegalArgumentException if the phrase does not have them
     */
    public Phrase bars(int from, int to) {
        if (from < 1 || to < from || to > bars()) {
            throw new IllegalArgumentException(
                    "bars %d to %d: the phrase has bars 1 to %d".formatted(from, to, bars()));
        }
        List<Section> cut = new ArrayList<>();
        int before = 0;
        for (Section section : sections) {
            int first = Math.max(from - before, 1);
            int last = Math.min(to - before, section.groove().bars());
            if (first <= last) {
                cut.add(new Section(section.role(), section.groove().bars(first, last)));
            }
            before += section.groove().bars();
        }
        return new Phrase(cut);
    }
}
