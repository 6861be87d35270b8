package org.kitweft.sound.live;

import java.util.List;
import java.util.Optional;
import org.kitweft.sound.AudioLine;

/** The system's ways out for sound; tests have their own. */
public interface OutputLines {
    /** Those there are now; the first is the system's own choice. */
    List<AudioLine> list();

    /**
     * Opens one; may take a while.
     *
     * @param line which; empty: the system's own choice
     * @param bufferFrames the longest buffer that is wanted
     * @throws LineLostException if it is not to be had
     */
    OutputLine open(Optional<AudioLine> line, int bufferFrames) throws LineLostException;
}
