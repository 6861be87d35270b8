package org.kitweft.sound.bank.physics;

/**
 * One way a body vibrates, as it sounds after a strike.
 *
 * @param frequency in Hz, above 0
 * @param amplitude of the decaying sine at its start, linear; the sign is its phase
 * @param decay seconds until it has fallen by 60 dB, above 0
 */
public record Mode(double frequency, double amplitude, double decay) {
    public Mode {
        if (!(frequency > 0) || !(decay > 0) || !Double.isFinite(amplitude)) {
            throw new IllegalArgumentException(
                    "a mode has frequency and decay above 0 and a finite amplitude, this one "
                            + "%s Hz, %s s, %s".formatted(frequency, decay, amplitude));
        }
    }

    /** The same mode, {@code factor} times as strong. */
    public Mode scaled(double factor) {
        return new Mode(frequency, amplitude * factor, decay);
    }
}
