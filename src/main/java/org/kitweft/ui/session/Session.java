package org.kitweft.ui.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.TextFormatException;

/**
 * All that the user edits, as one value: undo goes back to an older one. Immutable.
 *
 * @param text the sticking as it is typed, which may be wrong just now; then the recipe still has
 *     the last right one
 * @param recipe what the groove is woven from
 * @param tempo how fast
 * @param role what the groove is for
 * @param choices the sounds to count with, for each letter that the user has chosen for
 * @param rules what variations must keep
 * @param lesson the open lesson
 * @param item which item of the lesson is being edited, from 0, if one is
 * @param draft the phrase and the band; a section that is open in the grid follows recipe and role
 * @param own what was in the grid before something is only heard there; empty: what is in the grid
 *     is the user's own
 */
public record Session(
        String text,
        Recipe recipe,
        Tempo tempo,
        Role role,
        Choices choices,
        List<Rule> rules,
        Lesson lesson,
        OptionalInt item,
        PhraseDraft draft,
        Optional<Own> own,
        Playing playing) {

    /** A recipe and its role as the user made, opened or took them. */
    public record Own(Recipe recipe, Role role) {}

    public Session {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(tempo, "tempo");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(choices, "choices");
        rules = List.copyOf(rules);
        Objects.requireNonNull(lesson, "lesson");
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(own, "own");
        Objects.requireNonNull(playing, "playing");
        draft = draft.following(recipe, role);
        if (item.isPresent() && item.getAsInt() >= lesson.items().size()) {
            throw new IllegalArgumentException(
                    "item %d of a lesson with %d"
                            .formatted(item.getAsInt() + 1, lesson.items().size()));
        }
        OptionalInt kept = draft.kept();
        if (kept.isPresent() && kept.getAsInt() >= lesson.phrases().size()) {
            throw new IllegalArgumentException(
                    "phrase %d of a lesson with %d"
                            .formatted(kept.getAsInt() + 1, lesson.phrases().size()));
        }
    }

    /** What a new user finds: the opening groove. */
    public static Session opening() {
        return of(OpeningGroove.recipe(), Tempo.DEFAULT);
    }

    /** A groove to begin with and an empty lesson. */
    public static Session of(Recipe recipe, Tempo tempo) {
        return new Session(
                recipe.sticking().text(),
                recipe,
                tempo,
                Role.TIME,
                Choices.NONE,
                List.of(),
                new Lesson("", "", List.of()),
                OptionalInt.empty(),
                PhraseDraft.NONE,
                Optional.empty(),
                Playing.FIRST);
    }

    /** The sticking, or why the text is none. */
    public Optional<TextFormatException> fault() {
        try {
            Sticking.parse(text);
            return Optional.empty();
        } catch (TextFormatException e) {
            return Optional.of(e);
        }
    }

    /** The same with another text; the recipe follows where the text can be read. */
    public Session typed(String other) {
        Recipe read;
        try {
            read = recipe.with(Sticking.parse(other));
        } catch (TextFormatException e) {
            read = recipe;
        }
        return new Session(
                other,
                read,
                tempo,
                role,
                choices,
                rules,
                lesson,
                item,
                draft,
                Optional.empty(),
                playing);
    }

    /** The same with another recipe; the text follows where the sticking is another. */
    public Session with(Recipe other) {
        String written =
                other.sticking().equals(recipe.sticking()) ? text : other.sticking().text();
        return new Session(
                written,
                other,
                tempo,
                role,
                choices,
                rules,
                lesson,
                item,
                draft,
                Optional.empty(),
                playing);
    }

    /**
     * The same with another swing, in percent of a pair of steps: in the grid and in all of the
     * phrase, for a band swings as one.
     */
    public Session withSwing(int percent) {
        return new Session(
                text,
                swung(recipe, percent),
                tempo,
                role,
                choices,
                rules,
                lesson,
                item,
                draft.mapped(section -> section.with(swung(section.recipe(), percent))),
                own.map(before -> new Own(swung(before.recipe(), percent), before.role())),
                playing);
    }

    private static Recipe swung(Recipe recipe, int percent) {
        return recipe.with(recipe.grid().withSwing(percent));
    }

    /** The same with another sticking; single strokes that went elsewhere come back. */
    public Session fresh(Sticking sticking) {
        Voicing voicing = recipe.voicing().withStrokes(new TreeMap<>());
        return new Session(
                sticking.text(),
                recipe.with(sticking).with(voicing),
                tempo,
                role,
                choices,
                withoutPins(),
                lesson,
                item,
                draft,
                Optional.empty(),
                playing);
    }

    /** The same on another kit, the phrase too, each letter as it plainly is there. */
    public Session on(Kit kit) {
        Recipe moved = KitChange.on(recipe, kit);
        return new Session(
                text,
                moved,
                tempo,
                role,
                Choices.NONE,
                withoutPins(),
                lesson,
                item,
                KitChange.on(draft, kit),
                Optional.empty(),
                playing);
    }

    /**
     * The same for a player of the other hand: the kit mirrored if it can be, and what one hand or
     * foot played given to the other, in the phrase too. It sounds the same.
     */
    public Session mirrored() {
        Recipe other = KitChange.mirrored(recipe);
        return new Session(
                other.sticking().text(),
                other,
                tempo,
                role,
                KitChange.mirrored(choices),
                rules,
                lesson,
                item,
                KitChange.mirrored(draft),
                Optional.empty(),
                playing);
    }

    private List<Rule> withoutPins() {
        return rules.stream().filter(rule -> !(rule instanceof Rule.Pin)).toList();
    }

    /** The same with a stroke pinned to a sound, or no longer pinned if it was. */
    public Session pinned(int stroke, SoundName sound) {
        Rule.Pin pin = new Rule.Pin(stroke, sound);
        List<Rule> next =
                new ArrayList<>(
                        rules.stream()
                                .filter(r -> !(r instanceof Rule.Pin p && p.index() == stroke))
                                .toList());
        if (!rules.contains(pin)) {
            next.add(pin);
        }
        return with(next);
    }

    /** The same at another tempo. */
    public Session with(Tempo other) {
        return new Session(
                text, recipe, other, role, choices, rules, lesson, item, draft, own, playing);
    }

    /** The same played otherwise. */
    public Session with(Playing other) {
        return new Session(
                text, recipe, tempo, role, choices, rules, lesson, item, draft, own, other);
    }

    /** The same for another role. */
    public Session with(Role other) {
        return new Session(
                text,
                recipe,
                tempo,
                other,
                choices,
                rules,
                lesson,
                item,
                draft,
                own.map(before -> new Own(before.recipe(), other)),
                playing);
    }

    /** The same with other sounds to count with. */
    public Session with(Choices other) {
        return new Session(
                text, recipe, tempo, role, other, rules, lesson, item, draft, own, playing);
    }

    /** The same with exactly these rules. */
    public Session with(List<Rule> other) {
        return new Session(
                text, recipe, tempo, role, choices, other, lesson, item, draft, own, playing);
    }

    /** The same with another lesson: its items and phrases are closed, the phrase built too. */
    public Session with(Lesson other) {
        return new Session(
                text,
                recipe,
                tempo,
                role,
                choices,
                rules,
                other,
                OptionalInt.empty(),
                draft.withoutPlan(),
                Optional.empty(),
                playing);
    }

    /** The same with another lesson and the place in it. */
    public Session with(Lesson other, OptionalInt at) {
        return new Session(
                text, recipe, tempo, role, choices, rules, other, at, draft, own, playing);
    }

    /** The same with the groove of an item of the lesson, to be edited. */
    public Session opened(int index) {
        LessonItem opened = lesson.items().get(index);
        return new Session(
                opened.recipe().sticking().text(),
                opened.recipe(),
                opened.tempo(),
                opened.role(),
                Choices.NONE,
                List.of(),
                lesson,
                OptionalInt.of(index),
                draft.withOpen(OptionalInt.empty()).withPlays(false),
                Optional.empty(),
                playing);
    }

    /** The same with another phrase or band; what is open in it is in the grid from now on. */
    public Session with(PhraseDraft other) {
        if (other.open().isEmpty() || other.open().equals(draft.open())) {
            // A section that is closed keeps what was heard in it: closing it takes that.
            return new Session(
                    text,
                    recipe,
                    tempo,
                    role,
                    choices,
                    rules,
                    lesson,
                    item,
                    other,
                    other.open().equals(draft.open()) ? own : Optional.empty(),
                    playing);
        }
        PlannedSection shown = other.plan().orElseThrow().sections().get(other.open().getAsInt());
        return new Session(
                shown.recipe().sticking().text(),
                shown.recipe(),
                tempo,
                shown.role(),
                Choices.NONE,
                List.of(),
                lesson,
                OptionalInt.empty(),
                other,
                Optional.empty(),
                playing);
    }

    /** The same, with what is in the grid now only heard there: it has not been taken yet. */
    Session heardOver(Session before) {
        return withOwn(
                Optional.of(before.own.orElseGet(() -> new Own(before.recipe, before.role))));
    }

    /** The same, with what is in the grid taken: from now on it is the user's own. */
    public Session taken() {
        return own.isEmpty() ? this : withOwn(Optional.empty());
    }

    /** The same with what is the user's own in the grid: what was only heard is gone. */
    public Session untaken() {
        return own.map(before -> with(before.recipe()).with(before.role())).orElse(this);
    }

    private Session withOwn(Optional<Own> other) {
        return new Session(
                text, recipe, tempo, role, choices, rules, lesson, item, draft, other, playing);
    }

    /**
     * The sounds that each letter of the sticking chooses from: those the user chose, else {@link
     * Choices#usual}.
     */
    public Choices choicesInUse() {
        Choices usual = Choices.usual(recipe.sticking(), recipe.kit(), recipe.voicing(), rules);
        Map<Letter, List<SoundName>> all = new EnumMap<>(Letter.class);
        for (Letter letter : recipe.sticking().letters()) {
            List<SoundName> chosen = choices.of(letter);
            List<SoundName> own = chosen.isEmpty() ? usual.of(letter) : chosen;
            if (!own.isEmpty()) {
                all.put(letter, own);
            }
        }
        return new Choices(all);
    }

    /** The sounds that a letter's limb can strike at all, in the kit's order. */
    public List<SoundName> soundsFor(Letter letter) {
        return Choices.everything(letter, recipe.kit(), recipe.voicing());
    }

    /** Who plays a letter. */
    public Limb limb(Letter letter) {
        return recipe.voicing()
                .letter(letter)
                .map(voiced -> voiced.limb())
                .orElse(Voicing.limbOf(letter, recipe.kit()));
    }
}
