package org.kitweft.sound.live;

/**
 * An open way out for sound: 44.1 kHz, 16 bit little-endian, stereo. Used by one thread, but may be
 * closed and asked for its position by others.
 */
public interface OutputLine extends AutoCloseable {
    /** Frames that its buffer holds. */
    int bufferFrames();

    /**
     * Plays frames; waits until the buffer has room for them.
     *
     * @param bytes whole frames
     * @throws LineLostException if the line does not take them any more
     */
    void write(byte[] bytes) throws LineLostException;

    /** Frames that were heard of those written since the line was opened. */
    long framesHeard();

    /** Nothing more is written for a while; what was written has been heard. */
    void rest();

    /** Gives the line back; a write that waits ends. */
    @Override
    void close();
}
