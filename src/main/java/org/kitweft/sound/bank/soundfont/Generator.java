package org.kitweft.sound.bank.soundfont;

/**
 * The synthesis parameters used here, by their number in the <i>SoundFont Technical
 * Specification</i> 2.04 (2006), section 8.1.2.
 */
public enum Generator {
    /** Mod LFO to volume, centibels. */
    MOD_LFO_TO_VOLUME(13),
    /** Chorus send, 0.1 %. */
    CHORUS_SEND(15),
    /** Reverb send, 0.1 %. */
    REVERB_SEND(16),
    /** &minus;500 left to 500 right, 0.1 %. */
    PAN(17),
    /** Delay of the mod LFO, timecents. */
    DELAY_MOD_LFO(21),
    /** Rate of the mod LFO, cents above 8.176 Hz. */
    FREQUENCY_MOD_LFO(22),
    /** Delay of the vibrato LFO, timecents. */
    DELAY_VIBRATO_LFO(23),
    /** Rate of the vibrato LFO, cents above 8.176 Hz. */
    FREQUENCY_VIBRATO_LFO(24),
    /** Attack of the volume envelope, timecents. */
    ATTACK(34),
    /** Hold of the volume envelope, timecents. */
    HOLD(35),
    /** Fall of the volume envelope by 100 dB, timecents. */
    DECAY(36),
    /** Fall to which the volume envelope decays, centibels. */
    SUSTAIN(37),
    /** Fall of the volume envelope by 100 dB after the key is let go, timecents. */
    RELEASE(38),
    /** Which instrument a preset's zone plays; written by the writer. */
    INSTRUMENT(41),
    /** Lowest and highest key; written by the writer. */
    KEY_RANGE(43),
    /** Lowest and highest velocity; written by the writer. */
    VELOCITY_RANGE(44),
    /** Shift of pitch, semitones. */
    COARSE_TUNE(51),
    /** Which sample a zone plays; written by the writer. */
    SAMPLE(53),
    /** 0 plays to the end, 1 loops. */
    SAMPLE_MODES(54),
    /** Cents from key to key, 100 normal. */
    SCALE_TUNING(56),
    /** Sounds of one class other than 0 stop each other. */
    EXCLUSIVE_CLASS(57);

    private final int number;

    Generator(int number) {
        this.number = number;
    }

    /** Its number in a file. */
    public int number() {
        return number;
    }

    /**
     * The amount that stands for {@code seconds}: 1200 log2(seconds), held inside the standard's
     * range.
     */
    public static int timecents(double seconds) {
        double cents = 1200 * StrictMath.log(seconds) / StrictMath.log(2);
        return (int) Math.round(Math.max(-12000, Math.min(8000, cents)));
    }

    /** The amount that stands for {@code hertz} of an LFO: 1200 log2(hertz / 8.176). */
    public static int lfoCents(double hertz) {
        return (int) Math.round(1200 * StrictMath.log(hertz / 8.176) / StrictMath.log(2));
    }
}
