package org.kitweft.score.musicxml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.Fraction;
import org.graalvm.polyglot.Context;
import org.graalvm.polyglot.Value;

/**
 * Reads MusicXML with a library that is not ours: musicxml-io from the npm registry, run by a
 * JavaScript engine inside the build. One for each thread; takes about a second to open.
 */
final class LibraryReader implements AutoCloseable {
    private final Context context =
            Context.newBuilder("js").option("engine.WarnInterpreterOnly", "false").build();
    private final Value onsets;

    LibraryReader() throws IOException {
        context.eval("js", script("musicxml-io.js"));
        context.eval("js", script("onsets.js"));
        onsets = context.getBindings("js").getMember("onsets");
    }

    private static String script(String name) throws IOException {
        String path = "musicxml-io/" + name;
        try (InputStream in = LibraryReader.class.getResourceAsStream(path)) {
            return new String(
                    Objects.requireNonNull(in, path).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The notes that begin to sound, repeats played out. */
    NavigableSet<MusicXmlReader.Onset> read(byte[] file) {
        NavigableSet<MusicXmlReader.Onset> found = new TreeSet<>();
        onsets.execute(new String(file, StandardCharsets.UTF_8))
                .asString()
                .lines()
                .map(LibraryReader::onset)
                .forEach(found::add);
        return found;
    }

    private static MusicXmlReader.Onset onset(String line) {
        int slash = line.indexOf('/');
        int space = line.indexOf(' ');
        return new MusicXmlReader.Onset(
                Fraction.of(
                        Integer.parseInt(line.substring(0, slash)),
                        Integer.parseInt(line.substring(slash + 1, space))),
                Integer.parseInt(line.substring(space + 1)));
    }

    @Override
    public void close() {
        context.close();
    }
}
