package org.kitweft.score.font;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.fontbox.util.autodetect.FontFileFinder;

/**
 * Finds fonts of this computer by the characters they have. Looks at no file before it is asked:
 * that takes up to a second, and most pages never ask. Safe to share between threads.
 */
public final class SystemFonts {
    /** No font at all. */
    public static final SystemFonts NONE = new SystemFonts(List::of);

    /** Upright sans-serif first, since they stand beside one. Parts of file names; our own list. */
    private static final List<String> UNLIKE =
            List.of("italic", "oblique", "-it.", "mono", "condensed", "narrow", "light", "serif");

    private static final List<String> HEAVY = List.of("bold", "black", "heavy", "demi");

    private final Supplier<List<Path>> files;
    private final Map<Path, List<SystemFont>> read = new HashMap<>();
    private final Map<Integer, Optional<SystemFont>> upright = new HashMap<>();
    private final Map<Integer, Optional<SystemFont>> bold = new HashMap<>();
    private List<Path> found = List.of();
    private boolean looked;

    private SystemFonts(Supplier<List<Path>> files) {
        this.files = files;
    }

    /** Those where the system keeps its fonts. */
    public static SystemFonts ofThisComputer() {
        return new SystemFonts(
                () ->
                        new FontFileFinder()
                                .find().stream().map(URI::getPath).map(Path::of).toList());
    }

    /** Those in some files. */
    public static SystemFonts of(List<Path> files) {
        List<Path> copy = List.copyOf(files);
        return new SystemFonts(() -> copy);
    }

    /** A font that has a sign for a character, if there is one. */
    synchronized Optional<SystemFont> with(int codePoint, boolean heavy) {
        if (!looked) {
            found =
                    files.get().stream()
                            .filter(SystemFonts::isReadable)
                            .sorted(Comparator.<Path>naturalOrder())
                            .toList();
            looked = true;
        }
        return (heavy ? bold : upright).computeIfAbsent(codePoint, c -> search(c, heavy));
    }

    private Optional<SystemFont> search(int codePoint, boolean heavy) {
        return found.stream()
                .sorted(Comparator.comparingInt((Path file) -> unlikeness(file, heavy)))
                .flatMap(file -> read.computeIfAbsent(file, SystemFonts::read).stream())
                .filter(font -> font.font().canDisplay(codePoint))
                .findFirst();
    }

    private static boolean isReadable(Path file) {
        String name = name(file);
        return name.endsWith(".ttf") || name.endsWith(".otf") || name.endsWith(".ttc");
    }

    private static int unlikeness(Path file, boolean heavy) {
        String name = name(file);
        boolean isHeavy = HEAVY.stream().anyMatch(name::contains);
        // Fonts with TrueType outlines can be embedded in a PDF, so they come first.
        return 2 * (int) UNLIKE.stream().filter(name::contains).count()
                + (isHeavy == heavy ? 0 : 1)
                + (name.endsWith(".ttf") ? 0 : 1);
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    }

    private static List<SystemFont> read(Path file) {
        List<SystemFont> fonts = new ArrayList<>();
        try {
            for (Font font : Font.createFonts(file.toFile())) {
                fonts.add(new SystemFont(font, file));
            }
        } catch (IOException | FontFormatException e) {
            // One of the computer's many fonts is broken: others may have the character.
            return List.of();
        }
        return fonts;
    }
}
