package org.kitweft.sound.midi;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** The bricks of a Standard MIDI File (RP-001, 1996): chunks and variable-length quantities. */
final class Chunks {
    /** The greatest number that a variable-length quantity may hold: RP-001, section 1. */
    static final long GREATEST_QUANTITY = 0x0FFF_FFFF;

    private static final int SEVEN_BITS = 0x7F;
    private static final int MORE_FOLLOWS = 0x80;

    private Chunks() {}

    /** The header chunk. */
    static byte[] header(int type, int tracks, int perQuarter) {
        byte[] content =
                ByteBuffer.allocate(6)
                        .putShort((short) type)
                        .putShort((short) tracks)
                        .putShort((short) perQuarter)
                        .array();
        return chunk("MThd", content);
    }

    /** A chunk of a type of four letters. */
    static byte[] chunk(String type, byte[] content) {
        return ByteBuffer.allocate(8 + content.length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .putInt(content.length)
                .put(content)
                .array();
    }

    /**
     * Appends a number, seven bits a byte, the highest first.
     *
     * @throws IllegalArgumentException if the format cannot hold it
     */
    static void quantity(ByteArrayOutputStream out, long number) {
        if (number < 0 || number > GREATEST_QUANTITY) {
            throw new IllegalArgumentException(
                    "a MIDI file holds lengths of 0 to %d, not %d"
                            .formatted(GREATEST_QUANTITY, number));
        }
        for (int shift = 21; shift > 0; shift -= 7) {
            if (number >>> shift > 0) {
                out.write((int) (number >>> shift & SEVEN_BITS) | MORE_FOLLOWS);
            }
        }
        out.write((int) (number & SEVEN_BITS));
    }
}
