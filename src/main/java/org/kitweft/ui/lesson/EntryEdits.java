package org.kitweft.ui.lesson;

import org.kitweft.lesson.Lesson;
import org.kitweft.ui.session.Session;

/** What can be done to a line of the drawer's list, be it an item or a phrase. */
final class EntryEdits {
    private EntryEdits() {}

    /** Its title, which may be empty. */
    static String title(Session session, Entry at) {
        Lesson lesson = session.lesson();
        return at.phrase()
                ? lesson.phrases().get(at.index()).title()
                : lesson.items().get(at.index()).title();
    }

    /** Its remarks. */
    static String remarks(Session session, Entry at) {
        Lesson lesson = session.lesson();
        return at.phrase()
                ? lesson.phrases().get(at.index()).remarks()
                : lesson.items().get(at.index()).remarks();
    }

    /** With another title. */
    static Session title(Session session, Entry at, String title) {
        return at.phrase()
                ? LessonEdits.phraseTitle(session, at.index(), title)
                : LessonEdits.title(session, at.index(), title);
    }

    /** With other remarks. */
    static Session remarks(Session session, Entry at, String remarks) {
        return at.phrase()
                ? LessonEdits.phraseRemarks(session, at.index(), remarks)
                : LessonEdits.remarks(session, at.index(), remarks);
    }

    /** Opened: what plays now. */
    static Session open(Session session, Entry at) {
        return at.phrase()
                ? LessonEdits.openPhrase(session, at.index())
                : session.opened(at.index());
    }

    /** One place up (-1) or down (1); items stay above phrases. */
    static Session move(Session session, Entry at, int direction) {
        return at.phrase()
                ? LessonEdits.movePhrase(session, at.index(), direction)
                : LessonEdits.move(session, at.index(), direction);
    }

    /** The lesson without it. */
    static Session remove(Session session, Entry at) {
        return at.phrase()
                ? LessonEdits.removePhrase(session, at.index())
                : LessonEdits.remove(session, at.index());
    }
}
