package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.kitweft.sound.Note;

/**
 * The keys that are held: lets each go in its time, or as soon as a note silences it, across loop
 * seams and edits.
 */
final class Keys {
    private record Held(long endFrame, Note note) {}

    private final List<Held> held = new ArrayList<>();
    private final NoteSink sink;

    Keys(NoteSink sink) {
        this.sink = sink;
    }

    /** Strikes a key; call in the order of frames. */
    void strike(long frame, long endFrame, Note note) {
        release(frame);
        held.removeIf(
                other -> {
                    boolean silenced = note.silences(other.note);
                    if (silenced) {
                        sink.off(frame, other.note);
                    }
                    return silenced;
                });
        sink.on(frame, note);
        held.add(new Held(endFrame, note));
    }

    /** Lets all keys go whose time is over at a frame. */
    void release(long frame) {
        held.stream()
                .filter(key -> key.endFrame <= frame)
                .sorted(Comparator.comparingLong(Held::endFrame))
                .forEach(key -> sink.off(key.endFrame, key.note));
        held.removeIf(key -> key.endFrame <= frame);
    }

    /** Lets all keys go at a frame. */
    void releaseAll(long frame) {
        held.forEach(key -> sink.off(frame, key.note));
        held.clear();
    }
}
