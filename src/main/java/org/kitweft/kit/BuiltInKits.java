package org.kitweft.kit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The kits that come with the program; their files stand under {@code shared/kits}. */
public final class BuiltInKits {
    /** The name of the kit that is meant where none is named. */
    public static final String DEFAULT = "five-piece";

    private static final List<String> NAMES =
            List.of(DEFAULT, "extended", "hand-drums", "marimba", "vibraphone", "timpani");

    private BuiltInKits() {}

    /** Their names. */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * Loads a kit.
     *
     * @throws UnknownNameException with the nearest name, if there is none such
     */
    public static Kit load(String name) {
        if (!NAMES.contains(name)) {
            throw new UnknownNameException("kit", name, "the built-in kits", NAMES);
        }
        String resource = "/org/kitweft/shared/kits/" + name + ".json";
        try (InputStream stream =
                Objects.requireNonNull(BuiltInKits.class.getResourceAsStream(resource), resource)) {
            return KitFile.parse(
                    new String(stream.readAllBytes(), StandardCharsets.UTF_8), name + ".json");
        } catch (IOException e) {
            throw new UncheckedIOException("the built-in kit cannot be read: " + resource, e);
        }
    }
}
