package org.kitweft.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;

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
        write(text, content);
        return text.toString();
    }

    /**
     * Writes it out while it is made, for what may be too much to hold.
     *
     * @param out is flushed now and then, and stays open
     */
    static void write(Writer out, Content content) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter));
            content.writeTo(json);
            json.flush();
            out.write("\n");
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
