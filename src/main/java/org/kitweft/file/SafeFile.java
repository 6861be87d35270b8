package org.kitweft.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file beside its target and moves it into place when it is whole: whoever reads the
 * target sees the former file or the new one, never a part. A symbolic link stays, and the file it
 * leads to is written; what exists and is no regular file, as a device, is never replaced.
 */
public final class SafeFile {

    /** What happens where the target exists already. */
    public enum Existing {
        /** The file is refused and stays as it is. */
        KEEP,
        /** The file is replaced. */
        REPLACE,
        /** The file is replaced and its former content kept beside it, with {@code ~} appended. */
        REPLACE_WITH_BACKUP
    }

    /** Writes the content of a file. */
    @FunctionalInterface
    public interface Content {
        /** Writes everything; the stream is buffered and closed by the caller. */
        void writeTo(OutputStream out) throws IOException;
    }

    /** More links after another than people make; as many as Linux follows. */
    private static final int MOST_LINKS = 40;

    private SafeFile() {}

    /**
     * Writes a file. If anything fails, the target is as it was and nothing is left beside it.
     *
     * @throws FileAlreadyExistsException if the target exists and is to be kept
     * @throws IOException if it cannot be written; the message is a sentence that names the file
     */
    public static void write(Path target, Existing existing, Content content) throws IOException {
        Path whole = followed(target);
        if (Files.isDirectory(whole)) {
            throw new IOException("cannot write %s: it is a folder".formatted(target));
        }
        if (Files.exists(whole) && !Files.isRegularFile(whole)) {
            throw new IOException("cannot write %s: it is no regular file".formatted(target));
        }
        refuseIfKept(whole, target, existing);
        Path folder = whole.getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IOException(
                    "cannot write %s: there is no folder %s".formatted(target, folder));
        }
        Path beside = temporaryBeside(whole, target);
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside))) {
                content.writeTo(out);
            }
            refuseIfKept(whole, target, existing);
            if (existing == Existing.REPLACE_WITH_BACKUP && Files.exists(whole)) {
                Path backup = whole.resolveSibling(whole.getFileName() + "~");
                Files.copy(whole, backup, StandardCopyOption.REPLACE_EXISTING);
            }
            move(beside, whole);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (IOException e) {
            throw new IOException("cannot write %s: %s".formatted(target, reason(e)), e);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** Where symbolic links lead, even if nothing is there yet. */
    private static Path followed(Path target) throws IOException {
        Path at = target.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(at); links++) {
            if (links == MOST_LINKS) {
                throw new IOException("cannot write %s: its links go round".formatted(target));
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        return at;
    }

    private static void refuseIfKept(Path whole, Path target, Existing existing)
            throws FileAlreadyExistsException {
        if (existing == Existing.KEEP && Files.exists(whole)) {
            throw new FileAlreadyExistsException(
                    target.toString(), null, "the file exists already and was not replaced");
        }
    }

    private static Path temporaryBeside(Path whole, Path target) throws IOException {
        try {
            // Not Files.createTempFile: its files are for the owner only, and the move keeps that.
            Path beside =
                    whole.resolveSibling(
                            ".%s.%s.part"
                                    .formatted(
                                            whole.getFileName(),
                                            Long.toHexString(ProcessHandle.current().pid())));
            Files.deleteIfExists(beside);
            return Files.createFile(beside);
        } catch (IOException e) {
            throw new IOException("cannot write %s: %s".formatted(target, reason(e)), e);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "the folder or file is write-protected";
        }
        if (e instanceof FileSystemException refused) {
            return refused.getReason() == null ? "the system refuses it" : refused.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
