package org.kitweft.sound.bank.pitched;

/** Equal temperament on A4 = 440 Hz (ISO 16). */
final class Pitch {
    private Pitch() {}

    /** Frequency of a MIDI key, 69 = A4. */
    static double hertz(int key) {
        return 440 * StrictMath.pow(2, (key - 69) / 12.0);
    }
}
