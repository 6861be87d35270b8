package org.kitweft.kit;

import java.util.Optional;

/** The shape of a note, named as the MusicXML 4.0 type {@code notehead-value} names it. */
public enum Notehead {
    /** The oval head of ordinary notes. */
    NORMAL("normal"),
    /** A saltire, for cymbals. */
    X("x"),
    /** A saltire in a circle. */
    CIRCLE_X("circle-x"),
    /** A diamond, for bells. */
    DIAMOND("diamond"),
    /** A triangle, for cowbells. */
    TRIANGLE("triangle"),
    /** A slanted stroke. */
    SLASH("slash"),
    /** A square. */
    SQUARE("square"),
    /** A plus. */
    CROSS("cross");

    private final String id;

    Notehead(String id) {
        this.id = id;
    }

    /** The notehead of a MusicXML name. */
    public static Optional<Notehead> of(String id) {
        for (Notehead notehead : values()) {
            if (notehead.id.equals(id)) {
                return Optional.of(notehead);
            }
        }
        return Optional.empty();
    }

    /** The MusicXML name. */
    public String id() {
        return id;
    }
}
