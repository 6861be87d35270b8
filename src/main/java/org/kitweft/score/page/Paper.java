package org.kitweft.score.page;

/** A size of paper, in points of 1/72 inch. */
public enum Paper {
    /** ISO 216: 210 by 297 mm. */
    A4("a4", 210 * 72 / 25.4, 297 * 72 / 25.4),
    /** ANSI/ASME Y14.1 size A: 8.5 by 11 inches. */
    LETTER("letter", 612, 792);

    private final String id;
    private final double width;
    private final double height;

    Paper(String id, double width, double height) {
        this.id = id;
        this.width = width;
        this.height = height;
    }

    /** Its name in commands and files. */
    public String id() {
        return id;
    }

    /** Its width in points. */
    public double width() {
        return width;
    }

    /** Its height in points. */
    public double height() {
        return height;
    }
}
