package org.kitweft.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * One run of a command in this process, with what it answered.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record Run(int code, String out, String err) {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** What is run. */
    @FunctionalInterface
    interface Body {
        int run(Terminal terminal);
    }

    static Run of(String... args) {
        return in(StandardCharsets.UTF_8, terminal -> Cli.run(terminal, args));
    }

    /** The program without a window. */
    static Run start(String... args) {
        return in(
                StandardCharsets.UTF_8,
                terminal -> Start.run(terminal, Optional.empty(), args).orElseThrow());
    }

    static Run in(Charset charset, Body body) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal =
                new Terminal(
                        new PrintStream(out, false, charset),
                        new PrintStream(err, true, charset),
                        charset);
        int code = body.run(terminal);
        terminal.out().flush();
        return new Run(code, out.toString(charset), err.toString(charset));
    }

    List<String> lines() {
        return out.lines().toList();
    }

    JsonNode json() throws JsonProcessingException {
        return MAPPER.readTree(out);
    }
}
