package org.kitweft.sound.bank.soundfont;

/**
 * A controller's pull on a generator (SoundFont 2.04, section 7.4 and 8.2).
 *
 * @param source what drives it, as the standard packs it into 16 bits
 * @param destination what it changes
 * @param amount how much at full travel, in the destination's unit
 */
public record Modulator(int source, Generator destination, int amount) {
    /** A controller number instead of one of the standard's own sources. */
    private static final int IS_CONTROLLER = 0x80;

    /** Linear, from 0 to 1, rising with controller {@code number}. */
    public static Modulator ofController(int number, Generator destination, int amount) {
        return new Modulator(IS_CONTROLLER | number, destination, amount);
    }
}
