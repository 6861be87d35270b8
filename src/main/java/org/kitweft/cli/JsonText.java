package org.kitweft.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** JSON answers: indented, with the same line ends on every system. */
final class JsonText {

    /** Writes one JSON value. */
    @FunctionalInterface
    interface Content {
        void writeTo(JsonGenerator json) throws IOException;
    }

    private JsonText() {}

    static String of(Content content) {
        StringWriter text = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
            content.writeTo(json);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory does not fail", e);
        }
        return text + "\n";
    }
}
