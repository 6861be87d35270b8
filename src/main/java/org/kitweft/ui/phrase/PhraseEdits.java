package org.kitweft.ui.phrase;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.RoleVoicings;
import org.kitweft.kit.Kit;
import org.kitweft.lesson.LessonItem;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.Session;

/**
 * What can be done to the phrase being built: from one session to the next. What cannot be done is
 * refused with a sentence for people.
 */
final class PhraseEdits {
    /** How long a section is at first where nothing says so: a punch and a fill are short. */
    private static final int BARS_OF_TIME = 2;

    private PhraseEdits() {}

    /** The sticking in the grid in all three roles, as a phrase that plays from now on. */
    static Session ofOne(Session session, int bars) {
        Recipe recipe = session.recipe();
        Kit kit = recipe.kit();
        PhrasePlan plan =
                PhrasePlan.ofOne(
                        recipe,
                        RoleVoicings.fill(recipe.voicing(), kit),
                        RoleVoicings.punch(recipe.voicing(), kit),
                        bars);
        return session.with(
                session.draft().with(plan).withKept(OptionalInt.empty()).withPlays(true));
    }

    /** The groove in the grid as one more section at the end. */
    static Session addGroove(Session session) {
        return add(session, session.role(), session.recipe());
    }

    /** The groove of a lesson's item as one more section at the end. */
    static Session addItem(Session session, int index) {
        LessonItem item = session.lesson().items().get(index);
        return add(session, item.role(), item.recipe());
    }

    private static Session add(Session session, Role role, Recipe recipe) {
        PhraseDraft draft = session.draft();
        int bars = role == Role.TIME ? BARS_OF_TIME : 1;
        PlannedSection section = new PlannedSection(role, recipe, bars);
        Optional<PhrasePlan> before = draft.plan();
        if (before.isPresent()) {
            checkKit(before.get().sections().get(0).recipe().kit(), recipe.kit());
        }
        PhrasePlan plan =
                before.map(p -> p.plus(p.sections().size(), section))
                        .orElseGet(() -> new PhrasePlan(List.of(section)));
        return session.with(draft.with(plan).withOpen(draft.open()).withPlays(true));
    }

    private static void checkKit(Kit phrase, Kit groove) {
        if (!phrase.equals(groove)) {
            throw new IllegalArgumentException(
                    "the phrase is on the kit %s, the groove on %s: a phrase is on one kit"
                            .formatted(named(phrase), named(groove)));
        }
    }

    private static String named(Kit kit) {
        return kit.name() + (kit.leftHanded() ? " (left-handed)" : "");
    }

    /** A section at another place. */
    static Session move(Session session, int from, int to) {
        int last = plan(session).sections().size() - 1;
        int target = Math.max(0, Math.min(last, to));
        OptionalInt open = session.draft().open();
        OptionalInt then = open;
        if (open.isPresent()) {
            then = OptionalInt.of(whereAfterMove(open.getAsInt(), from, target));
        }
        return changed(session, plan -> plan.moved(from, target), then);
    }

    private static int whereAfterMove(int index, int from, int to) {
        if (index == from) {
            return to;
        }
        int without = index > from ? index - 1 : index;
        return without >= to ? without + 1 : without;
    }

    /** A section that lasts another number of bars, at least one. */
    static Session bars(Session session, int index, int bars) {
        return changed(
                session,
                plan -> plan.with(index, plan.sections().get(index).withBars(Math.max(1, bars))),
                session.draft().open());
    }

    /** The whole phrase in another number of bars. */
    static Session length(Session session, int bars) {
        return changed(session, plan -> plan.withBars(bars), session.draft().open());
    }

    /** A section for another role; one that is open in the grid changes there too. */
    static Session role(Session session, int index, Role role) {
        if (session.draft().open().equals(OptionalInt.of(index))) {
            return session.with(role);
        }
        return changed(
                session,
                plan -> plan.with(index, plan.sections().get(index).with(role)),
                session.draft().open());
    }

    /** The phrase without a section; without its last one there is none any more. */
    static Session remove(Session session, int index) {
        if (plan(session).sections().size() == 1) {
            return session.with(session.draft().withoutPlan());
        }
        OptionalInt open = session.draft().open();
        OptionalInt then =
                open.isEmpty() || open.getAsInt() == index
                        ? OptionalInt.empty()
                        : OptionalInt.of(open.getAsInt() - (open.getAsInt() > index ? 1 : 0));
        return changed(session, plan -> plan.without(index), then);
    }

    /** A section in the grid: it follows what is edited there. */
    static Session open(Session session, int index) {
        return session.with(session.draft().withOpen(OptionalInt.of(index)));
    }

    /** No section in the grid any more: what is edited there is the groove alone. */
    static Session close(Session session) {
        return session.with(session.draft().withOpen(OptionalInt.empty()));
    }

    /** The phrase plays, or the groove. */
    static Session plays(Session session, boolean phrase) {
        return session.with(
                session.draft().withPlays(phrase && session.draft().plan().isPresent()));
    }

    private static Session changed(
            Session session, UnaryOperator<PhrasePlan> change, OptionalInt open) {
        return session.with(session.draft().with(change.apply(plan(session))).withOpen(open));
    }

    private static PhrasePlan plan(Session session) {
        return session.draft().plan().orElseThrow();
    }
}
