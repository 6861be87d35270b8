package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The program as a process of its own. */
class ProcessTest {

    @Test
    void answersDoNotDependOnTheCountryNorOnItsCharacterSet()
            throws IOException, InterruptedException {
        String[] args = {"groove", ">RLRR", "--layer", "hi-hat.foot@2: - x"};
        Process process =
                program(
                        List.of(
                                "-Duser.language=ar",
                                "-Duser.country=EG",
                                "-Dfile.encoding=US-ASCII"),
                        args);
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        assertThat(out).isEqualTo(Run.of(args).out());
    }

    @Test
    void withoutADisplayItShowsTheOpeningGroove() throws IOException, InterruptedException {
        Process process = program(List.of("-Djava.awt.headless=true"));
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        assertThat(out).isEqualTo(Run.start().out());
    }

    private static Process program(List<String> options, String... args) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(
                List.of("-cp", System.getProperty("java.class.path"), "org.kitweft.Kitweft"));
        command.addAll(List.of(args));
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    }
}
