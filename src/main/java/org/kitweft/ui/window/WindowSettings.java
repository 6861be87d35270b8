package org.kitweft.ui.window;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.file.SafeFile;
import org.kitweft.groove.Tempo;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.ui.theme.Theme;

/**
 * What the window remembers from one day to the next. The level is left out on purpose: sound
 * starts low every time.
 *
 * @param width of the window in pixels
 * @param height of the window in pixels
 * @param maximised whether it fills the screen
 * @param theme its looks
 * @param zoom its size of type in percent
 * @param tempo beats a minute
 * @param lessonDrawer whether the lesson is shown
 * @param folder where files were opened or saved last; empty: the user's own
 * @param bank the user's own sound bank; empty: the built-in one
 * @param weights what counts for a role
 * @param mix the balance of the mixer, as {@link org.kitweft.ui.mix.MixText} writes it
 * @param staff how the staff is written
 */
record WindowSettings(
        int width,
        int height,
        boolean maximised,
        Theme theme,
        int zoom,
        int tempo,
        boolean lessonDrawer,
        String folder,
        String bank,
        RoleWeights weights,
        String mix,
        NotationOptions staff) {

    static final WindowSettings FIRST =
            new WindowSettings(
                    1280,
                    800,
                    false,
                    Theme.DESKTOP,
                    100,
                    Tempo.DEFAULT.beatsPerMinute(),
                    false,
                    "",
                    "",
                    RoleWeights.DEFAULT,
                    "",
                    NotationOptions.DEFAULT);

    private static final int SMALLEST_SIDE = 400;
    private static final int LARGEST_SIDE = 20_000;

    WindowSettings {
        width = within(width, SMALLEST_SIDE, LARGEST_SIDE);
        height = within(height, SMALLEST_SIDE, LARGEST_SIDE);
        zoom = within(zoom, Theme.SMALLEST, Theme.LARGEST);
        tempo = within(tempo, Tempo.SLOWEST, Tempo.FASTEST);
    }

    private static int within(int value, int least, int most) {
        return Math.max(least, Math.min(most, value));
    }

    /** Where the settings lie on this system: in the user's folder for settings. */
    static Path file(Map<String, String> environment, String system, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        Path folder;
        if (name.contains("win")) {
            folder = under(environment.get("APPDATA"), home.resolve("AppData/Roaming"));
        } else if (name.contains("mac")) {
            folder = home.resolve("Library/Application Support");
        } else {
            folder = under(environment.get("XDG_CONFIG_HOME"), home.resolve(".config"));
        }
        return folder.resolve("kitweft").resolve("window.properties");
    }

    private static Path under(@Nullable String named, Path otherwise) {
        return named == null || named.isBlank() ? otherwise : Path.of(named);
    }

    /**
     * Reads the settings; without a file they are as on the first start. What cannot be understood
     * is as on the first start too: settings are a convenience, not a document.
     *
     * @throws IOException if there is a file and it cannot be read
     */
    static WindowSettings read(Path file) throws IOException {
        if (!Files.exists(file)) {
            return FIRST;
        }
        Properties p = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            p.load(reader);
        } catch (IllegalArgumentException e) {
            throw new IOException("%s has a fault: %s".formatted(file, e.getMessage()), e);
        }
        return new WindowSettings(
                number(p, "width", FIRST.width()),
                number(p, "height", FIRST.height()),
                Boolean.parseBoolean(p.getProperty("maximised")),
                theme(p.getProperty("theme", "")),
                number(p, "zoom", FIRST.zoom()),
                number(p, "tempo", FIRST.tempo()),
                Boolean.parseBoolean(p.getProperty("lessonDrawer")),
                p.getProperty("folder", ""),
                p.getProperty("bank", ""),
                weights(p.getProperty("weights", "")),
                p.getProperty("mix", ""),
                staff(p));
    }

    private static NotationOptions staff(Properties p) {
        NotationOptions first = FIRST.staff();
        return first.withSticking(ticked(p, "staffSticking", first.sticking()))
                .withCounting(ticked(p, "staffCounting", first.counting()))
                .withOneVoice(ticked(p, "staffOneVoice", first.oneVoice()))
                .withFoldRepeats(ticked(p, "staffRepeats", first.foldRepeats()));
    }

    private static boolean ticked(Properties p, String key, boolean otherwise) {
        String text = p.getProperty(key, "");
        return text.matches("true|false") ? Boolean.parseBoolean(text) : otherwise;
    }

    private static int number(Properties p, String key, int otherwise) {
        String text = p.getProperty(key, "");
        return text.matches("\\d{1,6}") ? Integer.parseInt(text) : otherwise;
    }

    private static RoleWeights weights(String text) {
        try {
            return RoleWeights.parse(text);
        } catch (IllegalArgumentException e) {
            return FIRST.weights();
        }
    }

    private static Theme theme(String name) {
        for (Theme theme : Theme.values()) {
            if (theme.name().equalsIgnoreCase(name)) {
                return theme;
            }
        }
        return FIRST.theme();
    }

    /**
     * Writes the settings, making their folder if need be.
     *
     * @throws IOException if they cannot be written
     */
    void write(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Properties p = new Properties();
        p.setProperty("width", Integer.toString(width));
        p.setProperty("height", Integer.toString(height));
        p.setProperty("maximised", Boolean.toString(maximised));
        p.setProperty("theme", theme.name().toLowerCase(Locale.ROOT));
        p.setProperty("zoom", Integer.toString(zoom));
        p.setProperty("tempo", Integer.toString(tempo));
        p.setProperty("lessonDrawer", Boolean.toString(lessonDrawer));
        p.setProperty("folder", folder());
        p.setProperty("bank", bank);
        p.setProperty("weights", weights.text());
        p.setProperty("mix", mix);
        p.setProperty("staffSticking", Boolean.toString(staff.sticking()));
        p.setProperty("staffCounting", Boolean.toString(staff.counting()));
        p.setProperty("staffOneVoice", Boolean.toString(staff.oneVoice()));
        p.setProperty("staffRepeats", Boolean.toString(staff.foldRepeats()));
        SafeFile.write(
                file,
                SafeFile.Existing.REPLACE,
                out -> {
                    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
                    p.store(writer, "Kitweft's window");
                    writer.flush();
                });
    }

    WindowSettings withTheme(Theme other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                other,
                zoom,
                tempo,
                lessonDrawer,
                folder,
                bank,
                weights,
                mix,
                staff);
    }

    WindowSettings withZoom(int other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                theme,
                other,
                tempo,
                lessonDrawer,
                folder,
                bank,
                weights,
                mix,
                staff);
    }

    WindowSettings withFolder(String other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                theme,
                zoom,
                tempo,
                lessonDrawer,
                other,
                bank,
                weights,
                mix,
                staff);
    }

    WindowSettings withBank(String other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                theme,
                zoom,
                tempo,
                lessonDrawer,
                folder,
                other,
                weights,
                mix,
                staff);
    }

    WindowSettings withMix(String other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                theme,
                zoom,
                tempo,
                lessonDrawer,
                folder,
                bank,
                weights,
                other,
                staff);
    }

    WindowSettings withLessonDrawer(boolean other) {
        return new WindowSettings(
                width, height, maximised, theme, zoom, tempo, other, folder, bank, weights, mix,
                staff);
    }

    WindowSettings withTempo(int other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                theme,
                zoom,
                other,
                lessonDrawer,
                folder,
                bank,
                weights,
                mix,
                staff);
    }

    WindowSettings withWindow(int otherWidth, int otherHeight, boolean max) {
        return new WindowSettings(
                otherWidth,
                otherHeight,
                max,
                theme,
                zoom,
                tempo,
                lessonDrawer,
                folder,
                bank,
                weights,
                mix,
                staff);
    }

    WindowSettings with(RoleWeights other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                theme,
                zoom,
                tempo,
                lessonDrawer,
                folder,
                bank,
                other,
                mix,
                staff);
    }

    WindowSettings withStaff(NotationOptions other) {
        return new WindowSettings(
                width,
                height,
                maximised,
                theme,
                zoom,
                tempo,
                lessonDrawer,
                folder,
                bank,
                weights,
                mix,
                other);
    }
}
