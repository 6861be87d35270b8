package org.kitweft.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Ends notes where another one silences them: the next stroke of the same key, or a sound that
 * stops it, as a closed hi-hat does an open one.
 */
final class Held {
    private record Key(int channel, int key) {}

    private final List<Note> cut = new ArrayList<>();
    private final Map<Key, Integer> sounding = new HashMap<>();

    private Held() {}

    /**
     * The notes in time, each ending where it is silenced at the latest. Of two notes of one key at
     * one tick, which a key cannot play, the louder stays.
     */
    static List<Note> cut(List<Note> notes) {
        Held held = new Held();
        notes.stream().sorted(Note.IN_TIME).forEach(held::add);
        return held.cut;
    }

    private void add(Note note) {
        Key key = new Key(note.channel(), note.key());
        Integer before = sounding.get(key);
        if (before != null && cut.get(before).tick() == note.tick()) {
            cut.set(before, note); // sorted by velocity last: this one is not softer
            return;
        }
        end(key, note.tick());
        for (int stopped : note.stops()) {
            end(new Key(note.channel(), stopped), note.tick());
        }
        sounding.put(key, cut.size());
        cut.add(note);
    }

    private void end(Key key, long tick) {
        Integer index = sounding.get(key);
        if (index != null) {
            Note note = cut.get(index);
            if (note.tick() < tick && note.end() > tick) {
                cut.set(index, note.lasting(tick - note.tick()));
            }
        }
    }
}
