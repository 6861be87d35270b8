package org.kitweft.sound.midi;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.nio.ByteBuffer;

/**
 * Whether the bytes of a standard MIDI file are all there. A reader may take a file that was cut
 * for a shorter one and leave notes out in silence.
 */
final class Wholeness {
    private static final int NAME = 4;
    private static final int HEADER = 6;

    private Wholeness() {}

    /**
     * Goes from chunk to chunk; contents are not looked at.
     *
     * @throws IOException saying of the file what it lacks
     */
    static void check(byte[] bytes, String file) throws IOException {
        if (bytes.length == 0) {
            throw new IOException("%s is empty: expected a MIDI file".formatted(file));
        }
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        if (!name(rest).equals("MThd")) {
            throw new IOException("%s is no MIDI file".formatted(file));
        }
        int header = length(rest, file);
        if (header < HEADER) {
            throw new IOException("%s is damaged: its header is too short".formatted(file));
        }
        int tracks = Short.toUnsignedInt(rest.getShort(rest.position() + Short.BYTES));
        rest.position(rest.position() + header);
        for (int found = 0; found < tracks; ) {
            if (!rest.hasRemaining()) {
                throw new IOException(
                        "%s is cut short: it has %d of %d tracks".formatted(file, found, tracks));
            }
            found += name(rest).equals("MTrk") ? 1 : 0;
            int length = length(rest, file);
            rest.position(rest.position() + length);
        }
    }

    private static String name(ByteBuffer rest) {
        byte[] name = new byte[Math.min(NAME, rest.remaining())];
        rest.get(name);
        return new String(name, US_ASCII);
    }

    /** At most what is left. */
    private static int length(ByteBuffer rest, String file) throws IOException {
        long length =
                rest.remaining() < Integer.BYTES
                        ? Long.MAX_VALUE
                        : Integer.toUnsignedLong(rest.getInt());
        if (length > rest.remaining()) {
            throw new IOException(
                    "%s is cut short: expected more after its %d bytes"
                            .formatted(file, rest.capacity()));
        }
        return (int) length;
    }
}
