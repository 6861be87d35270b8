package org.kitweft.groove;

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
}
