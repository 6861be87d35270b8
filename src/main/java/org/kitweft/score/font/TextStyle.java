package org.kitweft.score.font;

/** A cut of the text font. */
public enum TextStyle {
    /** For running text. */
    REGULAR("SourceSans3-Regular"),
    /** For letters that must be found at a glance: sticking. */
    SEMIBOLD("SourceSans3-Semibold"),
    /** For titles. */
    BOLD("SourceSans3-Bold"),
    /** For bar numbers and asides. */
    ITALIC("SourceSans3-It");

    private final String file;

    TextStyle(String file) {
        this.file = file;
    }

    /** The name of the font file in the jar, without its ending. */
    String file() {
        return file;
    }
}
