package org.kitweft.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The rows of a table under {@code shared/reference}; each table names its source at its head. */
public final class ReferenceTable {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get();

    private ReferenceTable() {}

    /** All rows, e.g. of {@code rudiments.csv}. */
    public static List<CSVRecord> rows(String file) {
        String resource = "/org/kitweft/shared/reference/" + file;
        try (InputStream stream =
                        Objects.requireNonNull(
                                ReferenceTable.class.getResourceAsStream(resource), resource);
                Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return FORMAT.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
