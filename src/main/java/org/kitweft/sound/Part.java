package org.kitweft.sound;

import java.util.Arrays;
import java.util.List;
import org.kitweft.kit.UnknownNameException;

/** Who plays: each part is a track of its own and can be left out. In the order of the tracks. */
public enum Part {
    /** The hits of the phrase. */
    DRUMS("drums"),
    /** The metronome. */
    CLICK("click"),
    /** The band's bass. */
    BASS("bass"),
    /** The band's chords that keep time. */
    COMPING("comping"),
    /** The band's chords that mark accents. */
    PUNCHES("punches");

    private final String id;

    Part(String id) {
        this.id = id;
    }

    /** The name in commands and files, also of its track. */
    public String id() {
        return id;
    }

    /** All names. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(Part::id).toList();
    }

    /**
     * The part of a name.
     *
     * @throws UnknownNameException with the nearest name, if there is none such
     */
    public static Part of(String id) {
        return Arrays.stream(values())
                .filter(part -> part.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new UnknownNameException("part", id, "the parts", ids()));
    }
}
