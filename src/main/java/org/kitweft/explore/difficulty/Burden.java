package org.kitweft.explore.difficulty;

/** What makes a groove hard. What each costs stands in {@link Effort} and {@link Difficulty}. */
public enum Burden {
    /** Several limbs have something to do. */
    LIMBS("limbs that play"),
    /** Limbs strike at one instant. */
    TOGETHER("limbs striking together"),
    /** Limbs move between surfaces. */
    TRAVEL("way between surfaces"),
    /** One limb strikes several steps in a row. */
    RUNS("strokes in a row by one limb"),
    /** The hands go across each other. */
    CROSSINGS("hands going across"),
    /** A layer strikes where nothing else does, or comes round with something else than the bar. */
    INDEPENDENCE("layers on their own"),
    /** A limb changes between ghost, plain and accent. */
    DYNAMICS("changes of dynamic"),
    /** Flams, drags, multiple bounces. */
    ORNAMENTS("ornaments");

    private final String words;

    Burden(String words) {
        this.words = words;
    }

    /** The burden in a sentence. */
    public String words() {
        return words;
    }
}
