package org.kitweft.explore.role;

import org.kitweft.kit.Sound;

/**
 * What kind of thing sounds. Read from the General MIDI percussion key on the percussion channel,
 * else from the General MIDI program, else from the notehead; the tables are {@code
 * gm1-percussion.csv}, {@code gm2-percussion.csv} and {@code gm1-programs.csv} in {@code
 * shared/reference}.
 */
public enum SoundFamily {
    /** Bass drums. */
    BASS_DRUM,
    /** The snare, its stick sounds and the hand clap that takes its place. */
    SNARE,
    /** Toms, hand drums, kettledrums. */
    DRUM,
    /** The two cymbals on a pedal. */
    HI_HAT,
    /** Cymbals that a pulse is played on. */
    RIDE,
    /** Cymbals that mark: crash, splash, Chinese. */
    CRASH,
    /** Cowbells, blocks, claves and what else has a short bright pitch. */
    BELL,
    /** Bars and other things of definite pitch. */
    BAR;

    /** The family of a sound. */
    public static SoundFamily of(Sound sound) {
        if (sound.channel() == Sound.PERCUSSION_CHANNEL) {
            return ofKey(sound);
        }
        return sound.program().isPresent()
                ? ofProgram(sound.program().getAsInt())
                : ofNotehead(sound);
    }

    private static SoundFamily ofKey(Sound sound) {
        return switch (sound.key()) {
            case 35, 36 -> BASS_DRUM;
            case 37, 38, 39, 40 -> SNARE;
            case 41, 43, 45, 47, 48, 50, 60, 61, 62, 63, 64, 65, 66, 78, 79, 86, 87 -> DRUM;
            case 42, 44, 46 -> HI_HAT;
            case 51, 53, 59 -> RIDE;
            case 49, 52, 55, 57 -> CRASH;
            case 54, 56, 67, 68, 69, 70, 75, 76, 77, 80, 81, 82, 83, 85 -> BELL;
            default -> ofNotehead(sound);
        };
    }

    /** Programs count from 0. */
    private static SoundFamily ofProgram(int program) {
        return switch (program) {
            case 47, 116, 117, 118 -> DRUM;
            case 112, 113, 115 -> BELL;
            case 119 -> CRASH;
            default -> BAR;
        };
    }

    private static SoundFamily ofNotehead(Sound sound) {
        return switch (sound.notehead()) {
            case X, CIRCLE_X -> RIDE;
            case DIAMOND, TRIANGLE -> BELL;
            case NORMAL, SLASH, SQUARE, CROSS -> DRUM;
        };
    }

    /** Whether a cymbal or a bell: what a drummer keeps a pulse on. */
    public boolean keepsPulse() {
        return this == HI_HAT || this == RIDE || this == BELL;
    }
}
