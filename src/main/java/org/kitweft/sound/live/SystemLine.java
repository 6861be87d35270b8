package org.kitweft.sound.live;

import javax.sound.sampled.SourceDataLine;

/** A line of the JDK's sound system. */
final class SystemLine implements OutputLine {
    private final SourceDataLine line;
    private boolean resting = true;

    /**
     * @param line open, not started yet
     */
    SystemLine(SourceDataLine line) {
        this.line = line;
    }

    @Override
    public int bufferFrames() {
        return line.getBufferSize() / line.getFormat().getFrameSize();
    }

    @Override
    public void write(byte[] bytes) throws LineLostException {
        if (resting) {
            resting = false;
            line.start();
        }
        // A line that is closed, or whose device is gone, takes less than it is given.
        if (line.write(bytes, 0, bytes.length) < bytes.length) {
            throw new LineLostException("the audio line was taken away");
        }
    }

    @Override
    public long framesHeard() {
        return line.getLongFramePosition();
    }

    @Override
    public void rest() {
        resting = true;
        line.stop();
        line.flush();
    }

    @Override
    public void close() {
        line.close();
    }
}
