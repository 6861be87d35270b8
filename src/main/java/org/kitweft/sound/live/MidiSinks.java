package org.kitweft.sound.live;

import java.io.IOException;
import java.util.List;
import org.kitweft.sound.MidiOutput;

/** The system's external MIDI outputs; tests have their own. */
public interface MidiSinks {
    /** Those there are now. */
    List<MidiOutput> list();

    /**
     * Opens one.
     *
     * @throws IOException if it is not to be had, in one line for people
     */
    MidiSink open(MidiOutput output) throws IOException;
}
