package org.kitweft.score.font;

/** A cut of the text font. */
public enum TextStyle {
    /** For running text. */
    REGULAR("SourceSans3-Regular", "Source Sans 3"),
    /** For letters that must be found at a glance: sticking. */
    SEMIBOLD("SourceSans3-Semibold", "Source Sans 3 Semibold"),
    /** For titles. */
    BOLD("SourceSans3-Bold", "Source Sans 3 Bold"),
    /** For bar numbers and asides. */
    ITALIC("SourceSans3-It", "Source Sans 3 Italic");

    private final String file;
    private final String fullName;

    TextStyle(String file, String fullName) {
        this.file = file;
        this.fullName = fullName;
    }

    /** The full name that the font itself states, as {@code Font.getFontName} gives it. */
    public String fullName() {
        return fullName;
    }

    /** The name of the font file in the jar, without its ending. */
    String file() {
        return file;
    }
}
