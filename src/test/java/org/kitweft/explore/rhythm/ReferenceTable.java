package org.kitweft.explore.rhythm;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows of a table under {@code shared/reference}, whose comment lines name the source. */
final class ReferenceTable {
    private ReferenceTable() {}

    static List<CSVRecord> rows(String name) throws IOException {
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get();
        try (Reader reader = Files.newBufferedReader(Path.of("shared", "reference", name));
                CSVParser parser = format.parse(reader)) {
            return parser.getRecords();
        }
    }
}
