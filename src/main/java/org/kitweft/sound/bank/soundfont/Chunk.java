package org.kitweft.sound.bank.soundfont;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A growing RIFF chunk: four letters, a length, and little-endian content of even length. */
final class Chunk {
    private ByteBuffer buffer;

    /**
     * Starts a chunk named {@code id}, with room for {@code expected} bytes before it must grow.
     */
    Chunk(String id, int expected) {
        buffer = ByteBuffer.allocate(expected + 16).order(ByteOrder.LITTLE_ENDIAN);
        letters(id, 4);
        int32(0);
    }

    Chunk int8(int value) {
        room(1).put((byte) value);
        return this;
    }

    Chunk int16(int value) {
        room(2).putShort((short) value);
        return this;
    }

    Chunk int32(int value) {
        room(4).putInt(value);
        return this;
    }

    /** ASCII letters, filled with zeros up to {@code width}. */
    Chunk letters(String text, int width) {
        byte[] ascii = text.getBytes(StandardCharsets.US_ASCII);
        if (ascii.length > width) {
            throw new IllegalArgumentException(
                    "\"%s\" is longer than %d letters".formatted(text, width));
        }
        room(width).put(Arrays.copyOf(ascii, width));
        return this;
    }

    /** A text with at least one zero after it, of even length. */
    Chunk text(String text) {
        return letters(text, (text.length() + 2) / 2 * 2);
    }

    Chunk chunk(Chunk inner) {
        byte[] bytes = inner.bytes();
        room(bytes.length).put(bytes);
        return this;
    }

    /** The chunk with its length filled in. */
    byte[] bytes() {
        int content = buffer.position() - 8;
        if (content % 2 != 0) {
            int8(0);
        }
        buffer.putInt(4, content);
        return Arrays.copyOf(buffer.array(), buffer.position());
    }

    private ByteBuffer room(int bytes) {
        if (buffer.remaining() < bytes + 1) {
            ByteBuffer larger =
                    ByteBuffer.allocate(
                                    Math.max(buffer.capacity() * 2, buffer.position() + bytes + 1))
                            .order(ByteOrder.LITTLE_ENDIAN);
            larger.put(buffer.flip());
            buffer = larger;
        }
        return buffer;
    }
}
