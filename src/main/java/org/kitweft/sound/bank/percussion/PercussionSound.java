package org.kitweft.sound.bank.percussion;

import org.kitweft.sound.bank.voice.Voice;

/**
 * What one key of the percussion channel plays.
 *
 * @param key 27 to 87
 * @param name at most 16 ASCII letters
 * @param voice how it sounds
 * @param level dB against the common loudness of all percussion
 * @param pan &minus;500 (player's left) to 500 (right)
 * @param exclusiveClass sounds of one class other than 0 stop each other
 */
public record PercussionSound(
        int key, String name, Voice voice, double level, int pan, int exclusiveClass) {
    /** A sound in the middle that stops no other. */
    public static PercussionSound of(int key, String name, Voice voice) {
        return new PercussionSound(key, name, voice, 0, 0, 0);
    }

    /** Louder or softer than the common loudness. */
    public PercussionSound level(double decibels) {
        return new PercussionSound(key, name, voice, decibels, pan, exclusiveClass);
    }

    /** Placed as the player hears it. */
    public PercussionSound pan(int place) {
        return new PercussionSound(key, name, voice, level, place, exclusiveClass);
    }

    /** Stops others of this class, and is stopped by them. */
    public PercussionSound exclusive(int number) {
        return new PercussionSound(key, name, voice, level, pan, number);
    }
}
