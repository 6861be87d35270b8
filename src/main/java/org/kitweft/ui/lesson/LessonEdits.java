package org.kitweft.ui.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.kitweft.band.Backing;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.Session;

/** What can be done to items and phrases of the open lesson: from one session to the next. */
public final class LessonEdits {
    private LessonEdits() {}

    /** The groove of now as one more item, which is then the one being edited. */
    public static Session addGroove(Session session) {
        Lesson lesson = session.lesson();
        String title = "Groove %d".formatted(lesson.items().size() + 1);
        LessonItem item =
                new LessonItem(
                        title, session.role(), session.recipe(), session.tempo(), List.of(), "");
        return session.taken().with(lesson.withItem(item), OptionalInt.of(lesson.items().size()));
    }

    /**
     * The phrase of now as one more phrase of the lesson, or in place of the one it was opened
     * from; the session itself where there is no phrase.
     */
    public static Session keepPhrase(Session session) {
        PhraseDraft draft = session.draft();
        if (draft.plan().isEmpty()) {
            return session;
        }
        Lesson lesson = session.lesson();
        int count = lesson.phrases().size();
        int index = draft.kept().orElse(count);
        // A band that nobody has asked for is not written down.
        Optional<Backing> band =
                Optional.of(draft.backing()).filter(b -> !b.equals(Backing.DEFAULT));
        LessonPhrase phrase =
                index < count
                        ? lesson.phrases()
                                .get(index)
                                .withPlan(draft.plan().get())
                                .withBand(band)
                                .withTempo(session.tempo())
                        : new LessonPhrase(
                                "Phrase %d".formatted(count + 1),
                                draft.plan().get(),
                                band,
                                session.tempo(),
                                List.of(),
                                "");
        Lesson kept = index < count ? lesson.withPhrase(index, phrase) : lesson.withPhrase(phrase);
        return session.with(kept, session.item()).with(draft.withKept(OptionalInt.of(index)));
    }

    /** A phrase of the lesson with its band, to be played and edited. */
    public static Session openPhrase(Session session, int index) {
        LessonPhrase phrase = session.lesson().phrases().get(index);
        PhraseDraft draft =
                session.draft()
                        .with(phrase.plan())
                        .with(phrase.band().orElse(Backing.DEFAULT))
                        .withPlays(true)
                        .withKept(OptionalInt.of(index));
        return session.with(phrase.tempo()).with(draft);
    }

    /** The lesson without a phrase; one that is being edited stays, as one not kept yet. */
    public static Session removePhrase(Session session, int index) {
        List<LessonPhrase> phrases = new ArrayList<>(session.lesson().phrases());
        phrases.remove(index);
        OptionalInt kept = session.draft().kept();
        OptionalInt next =
                kept.isEmpty() || kept.getAsInt() == index
                        ? OptionalInt.empty()
                        : OptionalInt.of(kept.getAsInt() - (kept.getAsInt() > index ? 1 : 0));
        return session.with(session.draft().withKept(next))
                .with(session.lesson().withPhrases(phrases), session.item());
    }

    /** A phrase one place up (-1) or down (1); the session itself where it cannot go. */
    public static Session movePhrase(Session session, int index, int direction) {
        List<LessonPhrase> phrases = new ArrayList<>(session.lesson().phrases());
        int to = index + direction;
        if (to < 0 || to >= phrases.size()) {
            return session;
        }
        Collections.swap(phrases, index, to);
        return session.with(session.lesson().withPhrases(phrases), session.item())
                .with(session.draft().withKept(swapped(session.draft().kept(), index, to)));
    }

    private static OptionalInt swapped(OptionalInt place, int one, int other) {
        if (place.equals(OptionalInt.of(one))) {
            return OptionalInt.of(other);
        }
        return place.equals(OptionalInt.of(other)) ? OptionalInt.of(one) : place;
    }

    /** A phrase with another title. */
    static Session phraseTitle(Session session, int index, String title) {
        LessonPhrase phrase = session.lesson().phrases().get(index).withTitle(title);
        return session.with(session.lesson().withPhrase(index, phrase), session.item());
    }

    /** A phrase with other remarks. */
    static Session phraseRemarks(Session session, int index, String remarks) {
        LessonPhrase phrase = session.lesson().phrases().get(index).withRemarks(remarks);
        return session.with(session.lesson().withPhrase(index, phrase), session.item());
    }

    /** A phrase in a line: bars, what its sections are for, its band's style. */
    static String described(LessonPhrase phrase) {
        String sections =
                phrase.plan().sections().stream()
                        .map(section -> section.role().id())
                        .collect(Collectors.joining(", "));
        String band = phrase.playingBand().map(b -> ", band: " + b.style()).orElse("");
        return "%d bars: %s%s".formatted(phrase.plan().bars(), sections, band);
    }

    /**
     * The groove of now in place of that of the item being edited, and the phrase of now kept as
     * {@link #keepPhrase} does: what is saved with the lesson. What is only heard in the grid is
     * not kept, and goes on being heard.
     */
    public static Session keepChanges(Session session) {
        Session kept = keepItem(keepPhrase(session.untaken()));
        return session.with(kept.lesson(), kept.item())
                .with(session.draft().withKept(kept.draft().kept()));
    }

    private static Session keepItem(Session session) {
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

    /** Whether groove or phrase of now differ from what the lesson has of them. */
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
        return session.with(session.lesson().withItems(items), swapped(session.item(), index, to));
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
