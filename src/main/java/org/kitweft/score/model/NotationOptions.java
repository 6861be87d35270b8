package org.kitweft.score.model;

/**
 * What is written. Immutable; the {@code with…} methods make changed copies.
 *
 * @param oneVoice whether hands and feet share one voice, all stems up
 * @param sticking whether sticking letters stand under the notes
 * @param counting whether counting syllables stand under them
 * @param foldRepeats whether bars that come round are written once, between repeat signs; else
 *     every bar is written out
 * @param headings whether a section of a phrase says what it is for
 */
public record NotationOptions(
        boolean oneVoice,
        boolean sticking,
        boolean counting,
        boolean foldRepeats,
        boolean headings) {

    /** Two voices, sticking letters, every bar written out, headings where sections differ. */
    public static final NotationOptions DEFAULT =
            new NotationOptions(false, true, false, false, true);

    /** The same in one voice or two. */
    public NotationOptions withOneVoice(boolean other) {
        return new NotationOptions(other, sticking, counting, foldRepeats, headings);
    }

    /** The same with sticking letters or without. */
    public NotationOptions withSticking(boolean other) {
        return new NotationOptions(oneVoice, other, counting, foldRepeats, headings);
    }

    /** The same with counting syllables or without. */
    public NotationOptions withCounting(boolean other) {
        return new NotationOptions(oneVoice, sticking, other, foldRepeats, headings);
    }

    /** The same with repeats folded or written out. */
    public NotationOptions withFoldRepeats(boolean other) {
        return new NotationOptions(oneVoice, sticking, counting, other, headings);
    }

    /** The same with headings or without. */
    public NotationOptions withHeadings(boolean other) {
        return new NotationOptions(oneVoice, sticking, counting, foldRepeats, other);
    }
}
