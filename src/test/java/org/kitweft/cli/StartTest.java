package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.HeadlessException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class StartTest {

    @Test
    void withoutAWindowTheOpeningGrooveIsShown() {
        Run run = Run.start();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .startsWith(">R (L) R R >L R (L) (L)\n")
                .contains("Hi-hat", "Stickings of 8 strokes", "Write its files with:");
    }

    @Test
    void theCommandThatIsNamedWeavesTheOpeningGroove() {
        String shown = Start.WRITE_ITS_FILES.replaceFirst(".*kitweft\\.jar ", "");
        List<String> args = new ArrayList<>();
        Matcher word = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(shown);
        while (word.find()) {
            args.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        List<String> silently = args.subList(0, args.indexOf("--midi"));
        String opening = Run.start().out();
        assertThat(Run.of(silently.toArray(String[]::new)).out())
                .isEqualTo(opening.substring(0, opening.indexOf("\nWrite its files")));
    }

    @Test
    void aWindowThatCannotOpenGivesWayToTheText() {
        Run run =
                Run.in(
                        StandardCharsets.UTF_8,
                        terminal ->
                                Start.run(
                                                terminal,
                                                Optional.of(
                                                        () -> {
                                                            throw new HeadlessException("none");
                                                        }))
                                        .orElseThrow());
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith(">R (L) R R");
    }

    @Test
    void aPlainConsoleGetsPlainSigns() {
        Run run =
                Run.in(
                        StandardCharsets.US_ASCII,
                        terminal -> Cli.run(terminal, "groove", ">RL", "--meter", "6/8"));
        assertThat(run.out()).contains("6/8, 4 steps a beat, dotted quarter = 90", "|>R ");
        assertThat(run.out().replace("?", "")).isEqualTo(run.out());
    }
}
