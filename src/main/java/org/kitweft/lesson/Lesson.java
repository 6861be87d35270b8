package org.kitweft.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A document for one week: grooves with remarks, in the order they are worked on, and the phrases
 * they are put together to. Immutable; the {@code with…} methods make changed copies.
 *
 * @param title for people; may be empty while a lesson is being written
 * @param remarks about the whole lesson, lines separated by {@code \n}; may be empty
 * @param items at most {@value #MAX_ITEMS}; none while a lesson is being written
 * @param phrases at most {@value #MAX_PHRASES}
 * @param unknown what its file said beyond what this program knows
 */
public record Lesson(
        String title,
        String remarks,
        List<LessonItem> items,
        List<LessonPhrase> phrases,
        UnknownFields unknown) {
    /** The most items of a lesson. */
    public static final int MAX_ITEMS = 500;

    /** The most phrases of a lesson. */
    public static final int MAX_PHRASES = 100;

    public Lesson {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(remarks, "remarks");
        items = List.copyOf(items);
        phrases = List.copyOf(phrases);
        Objects.requireNonNull(unknown, "unknown");
        if (items.size() > MAX_ITEMS) {
            throw new IllegalArgumentException(
                    "%d items: a lesson has at most %d".formatted(items.size(), MAX_ITEMS));
        }
        if (phrases.size() > MAX_PHRASES) {
            throw new IllegalArgumentException(
                    "%d phrases: a lesson has at most %d".formatted(phrases.size(), MAX_PHRASES));
        }
    }

    /** A lesson without phrases made here, not read from a file. */
    public Lesson(String title, String remarks, List<LessonItem> items) {
        this(title, remarks, items, List.of(), UnknownFields.NONE);
    }

    /** The same with another title. */
    public Lesson withTitle(String other) {
        return new Lesson(other, remarks, items, phrases, unknown);
    }

    /** The same with other remarks. */
    public Lesson withRemarks(String other) {
        return new Lesson(title, other, items, phrases, unknown);
    }

    /** The same with exactly these items. */
    public Lesson withItems(List<LessonItem> other) {
        return new Lesson(title, remarks, other, phrases, unknown);
    }

    /** The same with one more item at its end. */
    public Lesson withItem(LessonItem item) {
        List<LessonItem> more = new ArrayList<>(items);
        more.add(item);
        return withItems(more);
    }

    /** The same with one item exchanged for another; {@code index} counts from 0. */
    public Lesson withItem(int index, LessonItem item) {
        List<LessonItem> changed = new ArrayList<>(items);
        changed.set(index, item);
        return withItems(changed);
    }

    /** The same with exactly these phrases. */
    public Lesson withPhrases(List<LessonPhrase> other) {
        return new Lesson(title, remarks, items, other, unknown);
    }

    /** The same with one more phrase at its end. */
    public Lesson withPhrase(LessonPhrase phrase) {
        List<LessonPhrase> more = new ArrayList<>(phrases);
        more.add(phrase);
        return withPhrases(more);
    }

    /** The same with one phrase exchanged for another; {@code index} counts from 0. */
    public Lesson withPhrase(int index, LessonPhrase phrase) {
        List<LessonPhrase> changed = new ArrayList<>(phrases);
        changed.set(index, phrase);
        return withPhrases(changed);
    }
}
