package org.kitweft.ui.window;

import java.awt.Component;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Asks for files, and before one is overwritten. */
final class FileDialogs {
    private final Component owner;
    private String folder;

    FileDialogs(Component owner, String folder) {
        this.owner = owner;
        this.folder = folder;
    }

    /** What dialogs stand before. */
    Component owner() {
        return owner;
    }

    /** The folder used last; empty: none yet. */
    String folder() {
        return folder;
    }

    /** A file to open. */
    Optional<Path> toOpen(String title, String kind, String... extensions) {
        JFileChooser chooser = chooser(title, kind, extensions);
        return chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chosen(chooser))
                : Optional.empty();
    }

    /**
     * A file to write. If it exists, the user has been asked and wants it replaced.
     *
     * @param proposal its name at first, without extension
     */
    Optional<Path> toSave(String title, String kind, String proposal, String extension) {
        return toSave(title, kind, proposal, List.of(extension));
    }

    /** The same for a file of one of several kinds; the first where its name says none. */
    Optional<Path> toSave(String title, String kind, String proposal, List<String> extensions) {
        JFileChooser chooser = chooser(title, kind, extensions.toArray(String[]::new));
        chooser.setSelectedFile(
                new File(chooser.getCurrentDirectory(), plain(proposal) + "." + extensions.get(0)));
        while (chooser.showSaveDialog(owner) == JFileChooser.APPROVE_OPTION) {
            Path path = withExtension(chosen(chooser), extensions);
            if (!Files.exists(path) || replaces(path)) {
                return Optional.of(path);
            }
        }
        return Optional.empty();
    }

    private boolean replaces(Path path) {
        Object[] answers = {"Replace", "Keep it"};
        return JOptionPane.showOptionDialog(
                        owner,
                        "%s exists already.".formatted(path.getFileName()),
                        "Replace the file?",
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.WARNING_MESSAGE,
                        null,
                        answers,
                        answers[1])
                == 0;
    }

    private JFileChooser chooser(String title, String kind, String... extensions) {
        JFileChooser chooser =
                folder.isEmpty() ? new JFileChooser() : new JFileChooser(new File(folder));
        chooser.setDialogTitle(title);
        chooser.setFileFilter(new FileNameExtensionFilter(kind, extensions));
        return chooser;
    }

    private Path chosen(JFileChooser chooser) {
        Path path = chooser.getSelectedFile().toPath();
        Path parent = path.toAbsolutePath().getParent();
        folder = parent == null ? "" : parent.toString();
        return path;
    }

    /** The path with the first extension, unless it has one of them. */
    static Path withExtension(Path path, List<String> extensions) {
        for (String extension : extensions) {
            if (withExtension(path, extension).equals(path)) {
                return path;
            }
        }
        return withExtension(path, extensions.get(0));
    }

    /** The path with the extension, unless it has it. */
    static Path withExtension(Path path, String extension) {
        String name = String.valueOf(path.getFileName());
        return name.toLowerCase(Locale.ROOT).endsWith("." + extension)
                ? path
                : path.resolveSibling(name + "." + extension);
    }

    /** A name without what file systems refuse. */
    static String plain(String name) {
        String plain = name.strip().replaceAll("[^\\p{L}\\p{N} ()+_-]", "").strip();
        return plain.isEmpty() ? "groove" : plain.substring(0, Math.min(60, plain.length()));
    }
}
