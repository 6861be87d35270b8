package org.kitweft.sound.live;

import org.kitweft.sound.Note;

/** Takes notes by the frame they sound on. */
interface NoteSink {
    /** A note begins. */
    void on(long frame, Note note);

    /** A note ends. */
    void off(long frame, Note note);
}
