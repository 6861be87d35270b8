package org.kitweft.sound.bank;

import org.kitweft.sound.bank.soundfont.Span;

/**
 * A dynamic layer: velocities that share one sample. MIDI has no rule for dynamics; the bounds are
 * common practice, no source, so that ghost notes, plain strokes and accents fall into different
 * layers.
 */
enum Layer {
    SOFT("s", 0, 59, 0.36),
    PLAIN("m", 60, 99, 0.66),
    HARD("h", 100, 127, 1.0);

    private final String letter;
    private final int low;
    private final int high;
    private final double strength;

    Layer(String letter, int low, int high, double strength) {
        this.letter = letter;
        this.low = low;
        this.high = high;
        this.strength = strength;
    }

    /** Ends the names of its samples. */
    String letter() {
        return letter;
    }

    Span velocities() {
        return new Span(low, high);
    }

    /**
     * How much softer than the hardest stroke its loudest is played, dB: gain goes with the square
     * of velocity.
     */
    double softer() {
        return 40 * StrictMath.log10(127.0 / high);
    }

    /** Speed of the stroke that is rendered, hardest 1. */
    double strength() {
        return strength;
    }
}
