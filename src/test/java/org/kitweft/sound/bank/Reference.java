package org.kitweft.sound.bank;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Rows of the published tables in {@code shared/reference}. */
final class Reference {
    private Reference() {}

    static List<CSVRecord> rows(String table) {
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get();
        String path = "/org/kitweft/shared/reference/" + table;
        try (var reader =
                new InputStreamReader(
                        Objects.requireNonNull(Reference.class.getResourceAsStream(path), path),
                        StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
