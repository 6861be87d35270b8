package org.kitweft.pattern;

/**
 * A typed text (a sticking, a layer's figure) that cannot be read: what was found where, and what
 * was expected.
 *
 * <p>The message is one line. {@link #excerpt()} shows the text with a caret under the place, so
 * that window and command line point at the same character. The text itself is kept whole.
 */
public final class TextFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private static final int EXCERPT_SIDE = 30;

    private final String text;
    private final int index;
    private final String expected;

    /**
     * @param what the kind of text, e.g. {@code sticking}
     * @param text the whole text
     * @param index the place of the fault, 0 to the length of the text
     * @param expected what would have been right there
     */
    public TextFormatException(String what, String text, int index, String expected) {
        super(
                "%s, character %d: %s, expected %s"
                        .formatted(what, index + 1, found(text, index), expected));
        this.text = text;
        this.index = index;
        this.expected = expected;
    }

    private static String found(String text, int index) {
        return index >= text.length()
                ? "the text ends"
                : "found '%s'".formatted(visible(Character.toString(text.codePointAt(index))));
    }

    /** The whole text, as it was typed. */
    public String text() {
        return text;
    }

    /** The place of the fault, 0 to the length of the text. */
    public int index() {
        return index;
    }

    /** What would have been right there. */
    public String expected() {
        return expected;
    }

    /** Two lines: the text around the fault, cut where it is long, and a caret under the fault. */
    public String excerpt() {
        int from = Math.max(0, index - EXCERPT_SIDE);
        int to = Math.min(text.length(), index + EXCERPT_SIDE);
        String before = (from > 0 ? "…" : "") + visible(text.substring(from, index));
        String after = visible(text.substring(index, to)) + (to < text.length() ? "…" : "");
        return before + after + "\n" + " ".repeat(before.codePointCount(0, before.length())) + "^";
    }

    private static String visible(String part) {
        return part.replaceAll("\\p{Cntrl}", " ");
    }
}
