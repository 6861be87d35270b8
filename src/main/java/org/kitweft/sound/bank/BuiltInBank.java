package org.kitweft.sound.bank;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.kitweft.file.SafeFile;
import org.kitweft.file.SafeFile.Existing;
import org.kitweft.sound.bank.soundfont.Sample;
import org.kitweft.sound.bank.soundfont.SoundFont;
import org.kitweft.sound.bank.soundfont.SoundFontWriter;

/**
 * Kitweft's own sound bank: a SoundFont 2 file computed here, no recording in it. Percussion on
 * bank 128, program 0 (keys 27 to 87); all 128 programs of General MIDI on bank 0.
 *
 * <p>The same version gives the same bytes on every machine. Building takes some seconds of two
 * cores, so do it away from the event thread; {@link #cachedIn} does it once.
 */
public final class BuiltInBank {
    /** Raised whenever the bank's bytes change, so that an older copy is not used again. */
    public static final int VERSION = 2;

    /** The bank's name inside the file. */
    public static final String NAME = "Kitweft";

    private static final String COMMENT =
            "Computed from the physics of membranes, bars, strings and plates. Kitweft bank version "
                    + VERSION
                    + ".";

    private static final String LICENCE = "Apache-2.0";

    private BuiltInBank() {}

    /** The file's bytes. */
    public static byte[] build() {
        return build(BankProgress.NONE);
    }

    /**
     * The file's bytes, watched.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} or an interrupt stops
     *     it
     */
    public static byte[] build(BankProgress progress) {
        return Seal.close(SoundFontWriter.bytes(compute(progress)));
    }

    /** The bank as values, before it is written and sealed. */
    static SoundFont compute(BankProgress progress) {
        BankPlan plan = BankPlan.whole();
        List<Sample> samples = Renderer.render(plan.blueprints(), progress);
        return new SoundFont(
                NAME, Seal.comment(COMMENT), LICENCE, samples, plan.instruments(), plan.presets());
    }

    /** What {@link #cachedIn} calls its file. */
    public static String fileName() {
        return "kitweft-bank-" + VERSION + ".sf2";
    }

    /**
     * What is wrong with {@code bank} as this version's built-in bank, in one line; empty if
     * nothing.
     */
    public static Optional<String> fault(byte[] bank) {
        return Seal.fault(bank, COMMENT);
    }

    /** {@link #cachedIn(Path, BankProgress)}, unwatched. */
    public static Path cachedIn(Path folder) throws IOException {
        return cachedIn(folder, BankProgress.NONE);
    }

    /**
     * The bank as a file in {@code folder}, which is made if need be. Built the first time; a copy
     * of another version stays beside it untouched; a damaged one of this version is built anew.
     *
     * @throws IOException if the folder can't be written; no half-written file is left
     * @throws java.util.concurrent.CancellationException if stopped; nothing is written then
     */
    public static Path cachedIn(Path folder, BankProgress progress) throws IOException {
        Path file = folder.resolve(fileName());
        if (Files.isRegularFile(file) && fault(Files.readAllBytes(file)).isEmpty()) {
            return file;
        }
        byte[] bank = build(progress);
        Files.createDirectories(folder);
        return write(bank, file, Existing.REPLACE);
    }

    /**
     * Writes a copy for the user.
     *
     * @param replace whether a file that exists is replaced
     * @throws java.nio.file.FileAlreadyExistsException if it exists and is not to be replaced
     * @throws IOException if it can't be written, in a sentence that names it; no half-written file
     *     is left
     */
    public static Path export(byte[] bank, Path target, boolean replace) throws IOException {
        return write(bank, target, replace ? Existing.REPLACE : Existing.KEEP);
    }

    private static Path write(byte[] bank, Path target, Existing existing) throws IOException {
        SafeFile.write(target, existing, out -> out.write(bank));
        return target;
    }
}
