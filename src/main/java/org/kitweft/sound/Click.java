package org.kitweft.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;

/**
 * The metronome: one note a beat, the first of each bar higher and louder.
 *
 * @param accentKey percussion key of a bar's first beat
 * @param beatKey percussion key of the other beats
 */
record Click(int accentKey, int beatKey) {
    /** High and low wood block: General MIDI 1 percussion, so every bank has them. */
    private static final Click WOOD_BLOCKS = new Click(76, 77);

    /** Metronome bell and click: General MIDI 2 percussion (RP-024), for kits with wood blocks. */
    private static final Click METRONOME = new Click(34, 33);

    /** Our own choice: the click leads, but does not drown a plain stroke. */
    private static final int ACCENT_VELOCITY = 110;

    private static final int BEAT_VELOCITY = 80;
    private static final long TICKS = Ticks.PER_QUARTER / 8;

    /** A click that no sound of the kit is mistaken for. */
    static Click beside(Kit kit) {
        boolean taken =
                kit.soundNames().stream()
                        .map(kit::sound)
                        .filter(sound -> sound.channel() == Sound.PERCUSSION_CHANNEL)
                        .anyMatch(
                                sound ->
                                        sound.key() == WOOD_BLOCKS.accentKey
                                                || sound.key() == WOOD_BLOCKS.beatKey);
        return taken ? METRONOME : WOOD_BLOCKS;
    }

    /** The clicks of whole bars. */
    List<Note> notes(Meter meter, long from, long to) {
        List<Note> notes = new ArrayList<>();
        for (long tick = from; tick < to; tick += meter.beatTicks()) {
            boolean first = (tick - from) % meter.barTicks() == 0;
            notes.add(
                    new Note(
                            tick,
                            TICKS,
                            tick,
                            Sound.PERCUSSION_CHANNEL,
                            OptionalInt.empty(),
                            first ? accentKey : beatKey,
                            first ? ACCENT_VELOCITY : BEAT_VELOCITY,
                            Set.of(),
                            Part.CLICK));
        }
        return notes;
    }
}
