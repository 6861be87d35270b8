package org.kitweft.ui.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.session.Session;

/** What can be done to the items of the open lesson: from one session to the next. */
public final class LessonEdits {
    private LessonEdits() {}

    /** The groove of now as one more item, which is then the one being edited. */
    public static Session addGroove(Session session) {
        Lesson lesson = session.lesson();
        String title = "Groove %d".formatted(lesson.items().size() + 1);
        LessonItem item =
                new LessonItem(
                        title, session.role(), session.recipe(), session.tempo(), List.of(), "");
        return session.with(lesson.withItem(item), OptionalInt.of(lesson.items().size()));
    }

    /** The groove of now in place of that of the item being edited. */
    public static Session keepChanges(Session session) {
        if (session.item().isEmpty()) {
            return session;
        }
        int index = session.item().getAsInt();
        LessonItem item =
                session.lesson()
                        .items()
                        .get(index)
                        .withRecipe(session.recipe())
                        .withTempo(session.tempo())
                        .withRole(session.role());
        return session.with(session.lesson().withItem(index, item), session.item());
    }

    /** Whether the groove of now differs from that of the item being edited. */
    public static boolean hasChanges(Session session) {
        return !keepChanges(session).lesson().equals(session.lesson());
    }

    /** The lesson without an item. */
    public static Session remove(Session session, int index) {
        List<LessonItem> items = new ArrayList<>(session.lesson().items());
        items.remove(index);
        OptionalInt open = session.item();
        OptionalInt next =
                open.isEmpty() || open.getAsInt() == index
                        ? OptionalInt.empty()
                        : OptionalInt.of(
                                open.getAsInt() > index ? open.getAsInt() - 1 : open.getAsInt());
        return session.with(session.lesson().withItems(items), next);
    }

    /** An item one place up (-1) or down (1); the session itself where it cannot go. */
    public static Session move(Session session, int index, int direction) {
        List<LessonItem> items = new ArrayList<>(session.lesson().items());
        int to = index + direction;
        if (to < 0 || to >= items.size()) {
            return session;
        }
        Collections.swap(items, index, to);
        OptionalInt open = session.item();
        OptionalInt next = open;
        if (open.isPresent() && open.getAsInt() == index) {
            next = OptionalInt.of(to);
        } else if (open.isPresent() && open.getAsInt() == to) {
            next = OptionalInt.of(index);
        }
        return session.with(session.lesson().withItems(items), next);
    }

    /** An item with another title. */
    public static Session title(Session session, int index, String title) {
        LessonItem item = session.lesson().items().get(index).withTitle(title);
        return session.with(session.lesson().withItem(index, item), session.item());
    }

    /** An item with other remarks. */
    public static Session remarks(Session session, int index, String remarks) {
        LessonItem item = session.lesson().items().get(index).withRemarks(remarks);
        return session.with(session.lesson().withItem(index, item), session.item());
    }
}
