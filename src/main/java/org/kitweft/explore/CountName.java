package org.kitweft.explore;

/**
 * What can be counted: name, definition and meaning in one place, for window, command line and
 * files. A definition speaks of a sticking of n strokes (rests not counted) with letters v1…vn and
 * of the set C(v) of sounds that letter v chooses from.
 */
public enum CountName {
    /** All stickings of that length. */
    STICKINGS(
            "stickings",
            "(number of letters that have choices)^n",
            "Stickings of this length: every stroke picks one of the letters."),
    /** Each letter stays in one place. */
    ONE_PLACE_PER_LETTER(
            "onePlacePerLetter",
            "product of |C(v)| over the letters that occur",
            "Ways to play this sticking with each letter staying on one sound throughout."),
    /** Each stroke goes its own way. */
    PLACE_PER_STROKE(
            "placePerStroke",
            "product of |C(vi)| over the strokes",
            "Ways to play this sticking when every stroke chooses its sound."),
    /** Any sticking, each stroke its own way. */
    ANY_STICKING(
            "anySticking",
            "(sum of |C(v)| over the letters that have choices)^n",
            "Ways to play any sticking of this length, every stroke choosing letter and sound."),
    /** What can be told apart by ear. */
    ANY_STICKING_DIFFERENT_SOUND(
            "anyStickingDifferentSound",
            "|union of the C(v)|^n",
            "Patterns of this length that sound different, no matter which letter plays them."),
    /** Any sticking, wherever one starts. */
    ANY_STICKING_UP_TO_START(
            "anyStickingUpToStart",
            "orbits of the anySticking words of length n under rotation (necklaces)",
            "The ways to play any sticking, counted once where they differ only in the starting"
                    + " stroke."),
    /** What can be told apart by ear, wherever one starts. */
    DIFFERENT_SOUND_UP_TO_START(
            "differentSoundUpToStart",
            "orbits of the anyStickingDifferentSound words of length n under rotation (necklaces)",
            "The patterns that sound different, counted once where they differ only in the"
                    + " starting stroke."),
    /** What the rules leave. */
    UNDER_RULES(
            "underRules",
            "place-per-stroke assignments of this sticking that keep all rules",
            "Ways to play this sticking, every stroke choosing its sound, that keep all your"
                    + " rules.");

    private final String id;
    private final String definition;
    private final String words;

    CountName(String id, String definition, String words) {
        this.id = id;
        this.definition = definition;
        this.words = words;
    }

    /** The name in data, e.g. {@code placePerStroke}. */
    public String id() {
        return id;
    }

    /** The exact definition. */
    public String definition() {
        return definition;
    }

    /** One sentence that a learner understands. */
    public String words() {
        return words;
    }
}
