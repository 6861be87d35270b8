package org.kitweft.band;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.kitweft.kit.UnknownNameException;

/** The styles that come with the program; their files stand under {@code shared/styles}. */
public final class BuiltInStyles {
    private static final List<String> NAMES =
            List.of("rock", "funk", "swing", "bossa", "samba", "salsa", "ballad");

    private BuiltInStyles() {}

    /** Their names. */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * Refuses a name that no style has.
     *
     * @throws UnknownNameException with the nearest name
     */
    static void checkName(String name) {
        if (!NAMES.contains(name)) {
            throw new UnknownNameException("style", name, "the built-in styles", NAMES);
        }
    }

    /**
     * Loads a style.
     *
     * @throws UnknownNameException with the nearest name, if there is none such
     */
    public static Style load(String name) {
        checkName(name);
        String resource = "/org/kitweft/shared/styles/" + name + ".json";
        try (InputStream stream =
                Objects.requireNonNull(
                        BuiltInStyles.class.getResourceAsStream(resource), resource)) {
            return StyleFile.parse(
                    new String(stream.readAllBytes(), StandardCharsets.UTF_8), name + ".json");
        } catch (IOException e) {
            throw new UncheckedIOException("the built-in style cannot be read: " + resource, e);
        }
    }
}
