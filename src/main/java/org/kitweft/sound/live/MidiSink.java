package org.kitweft.sound.live;

/** An open external MIDI device. */
public interface MidiSink extends AutoCloseable {
    /**
     * Sends a message at once.
     *
     * @param status the status byte, channel included
     * @param data1 first data byte
     * @param data2 second data byte; 0 where there is none
     */
    void send(int status, int data1, int data2);

    @Override
    void close();
}
