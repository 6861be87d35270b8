package org.kitweft.score.page;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The tables of a TrueType font (OpenType 1.9, chapter "Organization of an OpenType Font").
 *
 * <p>Needed for one thing: the PDF library applies the substitutions of a font's GSUB table to each
 * word it writes, which takes more time than the rest of a page, and we want none. The font in the
 * jar stays as it is; only what is handed to the library lacks these tables, as the subset embedded
 * in the PDF would anyway.
 */
final class SfntTables {
    private static final int HEADER = 12;
    private static final int RECORD = 16;
    private static final Set<String> FOR_LAYOUT = Set.of("GSUB", "GPOS", "GDEF");

    private SfntTables() {}

    /** The font without the tables for advanced layout. */
    static byte[] withoutLayout(byte[] font) {
        ByteBuffer in = ByteBuffer.wrap(font);
        int count = in.getShort(4);
        List<byte[]> records = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            byte[] record = new byte[RECORD];
            in.get(HEADER + i * RECORD, record);
            if (!FOR_LAYOUT.contains(new String(record, 0, 4, StandardCharsets.US_ASCII))) {
                records.add(record);
            }
        }
        ByteArrayOutputStream tables = new ByteArrayOutputStream();
        ByteBuffer head = ByteBuffer.allocate(HEADER + records.size() * RECORD);
        head.put(font, 0, 4).putShort((short) records.size()).position(HEADER);
        for (byte[] record : records) {
            ByteBuffer fields = ByteBuffer.wrap(record);
            int offset = fields.getInt(8);
            int length = fields.getInt(12);
            fields.putInt(8, head.capacity() + tables.size());
            head.put(record);
            tables.write(font, offset, length);
            while (tables.size() % 4 != 0) {
                tables.write(0);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(head.array());
        out.writeBytes(tables.toByteArray());
        return out.toByteArray();
    }
}
