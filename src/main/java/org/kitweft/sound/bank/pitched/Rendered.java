package org.kitweft.sound.bank.pitched;

import org.kitweft.sound.bank.render.Wave;

/**
 * A rendered note.
 *
 * @param wave its samples
 * @param loopStart first sample of the loop
 * @param loopEnd just after the loop's last sample; 0 for a wave that ends
 */
public record Rendered(Wave wave, int loopStart, int loopEnd) {
    /** A wave that ends. */
    static Rendered ending(Wave wave) {
        return new Rendered(wave, 0, 0);
    }

    /** Whether it goes on. */
    public boolean loops() {
        return loopEnd > 0;
    }
}
