package org.kitweft.sound.synth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.kitweft.sound.bank.BuiltInBank;

/**
 * Kitweft's own bank, kept as a file so that it is computed once: that takes seconds, reading it
 * milliseconds.
 *
 * @param folder where the file is kept; made if need be
 */
public record BuiltIn(Path folder) implements Bank.Source {

    /**
     * Kept where the system keeps such files for a user: {@code XDG_CACHE_HOME} or {@code ~/.cache}
     * (XDG Base Directory Specification), {@code ~/Library/Caches} on macOS, {@code LOCALAPPDATA}
     * on Windows.
     */
    public static BuiltIn ofTheUser() {
        return new BuiltIn(
                folder(
                        System.getenv(),
                        System.getProperty("os.name"),
                        System.getProperty("user.home")));
    }

    static Path folder(Map<String, String> environment, String system, String home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows") && environment.containsKey("LOCALAPPDATA")) {
            return Path.of(environment.get("LOCALAPPDATA"), "Kitweft");
        }
        if (name.startsWith("mac")) {
            return Path.of(home, "Library", "Caches", "Kitweft");
        }
        String cache = environment.getOrDefault("XDG_CACHE_HOME", "");
        return Path.of(cache.isBlank() ? home + "/.cache" : cache, "kitweft");
    }

    /** Whether the file is there, so that loading takes no time to speak of. */
    public boolean isKept() {
        return Files.isRegularFile(folder.resolve(BuiltInBank.fileName()));
    }

    /**
     * The bytes of the file, computed if they are not kept yet; takes seconds then.
     *
     * @throws IOException if the file is there and cannot be read
     */
    public byte[] bytes() throws IOException {
        Path file;
        try {
            file = BuiltInBank.cachedIn(folder);
        } catch (IOException e) {
            return BuiltInBank.build(); // nowhere to keep it
        }
        return Files.readAllBytes(file);
    }

    @Override
    public Bank load() throws IOException {
        Path file;
        try {
            file = BuiltInBank.cachedIn(folder);
        } catch (IOException e) {
            // Nowhere to keep it: computed anew, for this time only.
            return Bank.of(BuiltInBank.NAME, BuiltInBank.build());
        }
        return Bank.read(file);
    }
}
