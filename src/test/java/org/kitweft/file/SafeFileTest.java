package org.kitweft.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.file.SafeFile.Existing;

class SafeFileTest {
    @TempDir Path folder;

    @Test
    void writesANewFileAndLeavesNothingBeside() throws IOException {
        Path target = folder.resolve("a.txt");
        SafeFile.write(target, Existing.KEEP, out -> out.write("one".getBytes(UTF_8)));
        assertThat(target).hasContent("one");
        assertThat(folder).isDirectoryNotContaining(path -> !path.equals(target));
    }

    @Test
    void refusesToReplaceUnasked() throws IOException {
        Path target = Files.writeString(folder.resolve("a.txt"), "one");
        assertThatThrownBy(
                        () ->
                                SafeFile.write(
                                        target,
                                        Existing.KEEP,
                                        out -> out.write("two".getBytes(UTF_8))))
                .isInstanceOf(FileAlreadyExistsException.class)
                .hasMessageContaining("exists already");
        assertThat(target).hasContent("one");
    }

    @Test
    void keepsTheFormerContentAsBackup() throws IOException {
        Path target = Files.writeString(folder.resolve("a.txt"), "one");
        SafeFile.write(
                target, Existing.REPLACE_WITH_BACKUP, out -> out.write("two".getBytes(UTF_8)));
        assertThat(target).hasContent("two");
        assertThat(folder.resolve("a.txt~")).hasContent("one");
    }

    @Test
    void aWriterThatFailsHalfwayLeavesTheFormerFile() throws IOException {
        Path target = Files.writeString(folder.resolve("a.txt"), "one");
        assertThatThrownBy(
                        () ->
                                SafeFile.write(
                                        target,
                                        Existing.REPLACE,
                                        out -> {
                                            out.write("tw".getBytes(UTF_8));
                                            throw new IOException("no space left on device");
                                        }))
                .isInstanceOf(IOException.class)
                .hasMessage("cannot write %s: no space left on device", target);
        assertThat(target).hasContent("one");
        assertThat(folder).isDirectoryNotContaining(path -> !path.equals(target));
    }

    @Test
    void aMissingFolderIsNamed() {
        assertThatThrownBy(
                        () ->
                                SafeFile.write(
                                        folder.resolve("no/a.txt"),
                                        Existing.KEEP,
                                        out -> out.write(1)))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("there is no folder");
    }
}
