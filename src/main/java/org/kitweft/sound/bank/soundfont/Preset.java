package org.kitweft.sound.bank.soundfont;

import java.util.List;

/**
 * What a program change calls.
 *
 * @param name at most 20 ASCII letters
 * @param bank 0 to 127, or 128 for percussion
 * @param program 0 to 127
 * @param parts the instruments it plays, each on its keys
 */
public record Preset(String name, int bank, int program, List<Part> parts) {
    /** The bank that stands for the percussion channel (section 7.2). */
    public static final int PERCUSSION_BANK = 128;

    /**
     * One instrument of a preset.
     *
     * @param instrument its name
     * @param keys keys on which it plays
     * @param transposition semitones added
     */
    public record Part(String instrument, Span keys, int transposition) {}

    public Preset {
        parts = List.copyOf(parts);
        if (bank < 0 || bank > PERCUSSION_BANK || program < 0 || program > 127) {
            throw new IllegalArgumentException(
                    "preset %s: bank 0 to 128 and program 0 to 127, not %d and %d"
                            .formatted(name, bank, program));
        }
    }

    /** A preset that plays one instrument on all keys. */
    public static Preset of(String name, int program, String instrument) {
        return new Preset(name, 0, program, List.of(new Part(instrument, Span.ALL, 0)));
    }
}
