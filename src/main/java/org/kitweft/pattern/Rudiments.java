package org.kitweft.pattern;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The 40 international rudiments (Percussive Arts Society, 1984), read from {@code
 * shared/reference/rudiments.csv}, which says how sure each row is.
 */
public final class Rudiments {
    private static final String TABLE = "/org/kitweft/shared/reference/rudiments.csv";
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get();

    private final List<Rudiment> all;

    private Rudiments(List<Rudiment> all) {
        this.all = List.copyOf(all);
    }

    /** Reads the table that comes with the program. */
    public static Rudiments load() {
        try (InputStream table =
                        Objects.requireNonNull(Rudiments.class.getResourceAsStream(TABLE), TABLE);
                Reader reader = new InputStreamReader(table, StandardCharsets.UTF_8)) {
            return new Rudiments(FORMAT.parse(reader).stream().map(Rudiments::rudiment).toList());
        } catch (IOException e) {
            throw new UncheckedIOException("the rudiment table cannot be read: " + TABLE, e);
        }
    }

    private static Rudiment rudiment(CSVRecord row) {
        return new Rudiment(
                Integer.parseInt(row.get("number")),
                row.get("name"),
                row.get("family"),
                Sticking.parse(row.get("sticking")),
                row.get("even_steps").equals("yes"),
                row.get("rhythm"));
    }

    /** All of them, by number. */
    public List<Rudiment> all() {
        return all;
    }

    /**
     * The rudiment of a number or a name; upper and lower case, spaces and hyphens do not count.
     */
    public Optional<Rudiment> find(String numberOrName) {
        String wanted = bare(numberOrName);
        return all.stream()
                .filter(
                        r ->
                                bare(r.name()).equals(wanted)
                                        || String.valueOf(r.number()).equals(wanted))
                .findFirst();
    }

    private static String bare(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}
