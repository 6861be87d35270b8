package org.kitweft.sound.wave;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.kitweft.sound.synth.NoteStream;

/** The header of a RIFF/WAVE file of plain 16-bit stereo samples. */
final class WaveHeader {
    static final int BYTES_PER_FRAME = NoteStream.CHANNELS * Short.BYTES;

    private static final int LENGTH = 44;
    private static final int FORMAT_LENGTH = 16;
    private static final int PCM = 1;

    /** The length fields have 32 bits. */
    static final long MOST_FRAMES = (0xFFFF_FFFFL - LENGTH) / BYTES_PER_FRAME;

    private WaveHeader() {}

    static byte[] of(long frames) {
        long size = frames * BYTES_PER_FRAME;
        return ByteBuffer.allocate(LENGTH)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(ascii("RIFF"))
                .putInt((int) (LENGTH - 8 + size))
                .put(ascii("WAVE"))
                .put(ascii("fmt "))
                .putInt(FORMAT_LENGTH)
                .putShort((short) PCM)
                .putShort((short) NoteStream.CHANNELS)
                .putInt(NoteStream.RATE)
                .putInt(NoteStream.RATE * BYTES_PER_FRAME)
                .putShort((short) BYTES_PER_FRAME)
                .putShort((short) Short.SIZE)
                .put(ascii("data"))
                .putInt((int) size)
                .array();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
