package org.kitweft.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
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
    void writesWhereASymbolicLinkLeadsAndKeepsTheLink() throws IOException {
        Path real = Files.writeString(folder.resolve("real.txt"), "one");
        Path near = Files.createSymbolicLink(folder.resolve("near.txt"), Path.of("real.txt"));
        Path far = Files.createSymbolicLink(folder.resolve("far.txt"), near);
        SafeFile.write(far, Existing.REPLACE, out -> out.write("two".getBytes(UTF_8)));
        assertThat(real).hasContent("two");
        assertThat(far).isSymbolicLink();
        assertThat(near).isSymbolicLink();
        Path loose = Files.createSymbolicLink(folder.resolve("loose.txt"), Path.of("new.txt"));
        SafeFile.write(loose, Existing.KEEP, out -> out.write("three".getBytes(UTF_8)));
        assertThat(loose).isSymbolicLink();
        assertThat(folder.resolve("new.txt")).hasContent("three");
    }

    @Test
    void linksThatGoRoundAreRefused() throws IOException {
        Path round = Files.createSymbolicLink(folder.resolve("round"), Path.of("round"));
        assertThatThrownBy(() -> SafeFile.write(round, Existing.REPLACE, out -> out.write(1)))
                .hasMessage("cannot write %s: its links go round", round);
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void neverReplacesAPipeOrAFolder() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
        Path link = Files.createSymbolicLink(folder.resolve("link"), pipe);
        for (Existing existing : Existing.values()) {
            for (Path target : List.of(pipe, link)) {
                assertThatThrownBy(() -> SafeFile.write(target, existing, out -> out.write(1)))
                        .hasMessage("cannot write %s: it is no regular file", target);
            }
            assertThatThrownBy(() -> SafeFile.write(folder, existing, out -> out.write(1)))
                    .hasMessage("cannot write %s: it is a folder", folder);
        }
        assertThat(Files.exists(pipe) && !Files.isRegularFile(pipe)).isTrue();
        assertThat(link).isSymbolicLink();
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
