package org.kitweft.sound.bank.pitched;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.sound.bank.soundfont.Preset;

/**
 * Which instrument stands for each of the 128 programs of General MIDI 1 (RP-003, 1991), counted
 * from 0. Only those that the bank computes sound as named; the rest get their nearest relative, so
 * that no file falls silent.
 */
public final class Families {
    private record Row(int from, int to, String instrument) {}

    private static final String TINE = "Electric Piano";
    private static final String PLUCKED = "Electric Bass";
    private static final String HORN = "Horn";

    private static final List<Row> ROWS =
            List.of(
                    new Row(0, 5, TINE),
                    new Row(6, 7, PLUCKED),
                    new Row(8, 10, "Glockenspiel"),
                    new Row(11, 11, "Vibraphone"),
                    new Row(12, 12, "Marimba"),
                    new Row(13, 13, "Xylophone"),
                    new Row(14, 14, "Glockenspiel"),
                    new Row(15, 15, "Vibraphone"),
                    new Row(16, 23, HORN),
                    new Row(24, 31, PLUCKED),
                    new Row(32, 32, "Acoustic Bass"),
                    new Row(33, 39, "Electric Bass"),
                    new Row(40, 44, HORN),
                    new Row(45, 46, PLUCKED),
                    new Row(47, 47, "Timpani"),
                    new Row(48, 54, HORN),
                    new Row(55, 59, "Brass Section"),
                    new Row(60, 60, HORN),
                    new Row(61, 63, "Brass Section"),
                    new Row(64, 87, HORN),
                    new Row(88, 103, TINE),
                    new Row(104, 107, PLUCKED),
                    new Row(108, 108, "Marimba"),
                    new Row(109, 111, HORN),
                    new Row(112, 113, "Glockenspiel"),
                    new Row(114, 114, "Vibraphone"),
                    new Row(115, 115, "Xylophone"),
                    new Row(116, 116, "Djembe"),
                    new Row(117, 118, "Melodic Tom"),
                    new Row(119, 119, "Vibraphone"),
                    new Row(120, 126, TINE),
                    new Row(127, 127, "Timpani"));

    private Families() {}

    /** A preset for each program. */
    public static List<Preset> presets() {
        List<Preset> presets = new ArrayList<>();
        for (Row row : ROWS) {
            for (int program = row.from(); program <= row.to(); program++) {
                presets.add(Preset.of(row.instrument(), program, row.instrument()));
            }
        }
        return presets;
    }
}
