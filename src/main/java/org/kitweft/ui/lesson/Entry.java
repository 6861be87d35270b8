package org.kitweft.ui.lesson;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;

/**
 * A line of the lesson drawer's list: an item, or below the items a phrase.
 *
 * @param phrase whether it is a phrase
 * @param index of the item or phrase in the lesson, from 0
 * @param title for people; never blank
 * @param detail shown when the mouse rests on it
 * @param tempo beats a minute
 */
record Entry(boolean phrase, int index, String title, String detail, int tempo) {

    /** All of a lesson, items first. */
    static List<Entry> of(Lesson lesson) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < lesson.items().size(); i++) {
            LessonItem item = lesson.items().get(i);
            String sticking = item.recipe().sticking().text();
            entries.add(
                    new Entry(
                            false,
                            i,
                            named(item.title(), sticking),
                            sticking,
                            item.tempo().beatsPerMinute()));
        }
        for (int i = 0; i < lesson.phrases().size(); i++) {
            LessonPhrase phrase = lesson.phrases().get(i);
            String detail = LessonEdits.described(phrase);
            entries.add(
                    new Entry(
                            true,
                            i,
                            named(phrase.title(), detail),
                            detail,
                            phrase.tempo().beatsPerMinute()));
        }
        return entries;
    }

    private static String named(String title, String otherwise) {
        return title.isBlank() ? otherwise : title;
    }
}
