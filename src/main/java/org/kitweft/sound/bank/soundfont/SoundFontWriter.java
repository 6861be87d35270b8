package org.kitweft.sound.bank.soundfont;

import java.util.List;

/**
 * Writes a {@link SoundFont} as a file. Source: <i>SoundFont Technical Specification</i> version
 * 2.04 (2006): RIFF form {@code sfbk} of three lists, {@code INFO} (texts), {@code sdta} (all
 * samples in a row) and {@code pdta} (nine tables, see {@link PresetData}). Files say version 2.01,
 * since nothing newer is used.
 */
public final class SoundFontWriter {
    /** Zero frames that must follow each sample (section 6.1). */
    static final int GAP = 46;

    private SoundFontWriter() {}

    /** The file's bytes; the same bank gives the same bytes. */
    public static byte[] bytes(SoundFont bank) {
        int frames = bank.samples().stream().mapToInt(s -> s.length() + GAP).sum();
        Chunk file = new Chunk("RIFF", frames * 2 + 400_000).letters("sfbk", 4);
        file.chunk(information(bank));
        file.chunk(samples(bank.samples(), frames));
        file.chunk(PresetData.of(bank));
        return file.bytes();
    }

    private static Chunk information(SoundFont bank) {
        return new Chunk("LIST", 512)
                .letters("INFO", 4)
                .chunk(new Chunk("ifil", 4).int16(2).int16(1))
                .chunk(new Chunk("isng", 8).text("EMU8000"))
                .chunk(new Chunk("INAM", 32).text(bank.name()))
                .chunk(new Chunk("ICOP", 64).text(bank.copyright()))
                .chunk(new Chunk("ICMT", 256).text(bank.comment()));
    }

    private static Chunk samples(List<Sample> samples, int frames) {
        Chunk data = new Chunk("smpl", frames * 2);
        for (Sample sample : samples) {
            for (int i = 0; i < sample.length(); i++) {
                data.int16(sample.frame(i));
            }
            for (int i = 0; i < GAP; i++) {
                data.int16(0);
            }
        }
        return new Chunk("LIST", frames * 2 + 32).letters("sdta", 4).chunk(data);
    }
}
