package org.kitweft.band;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.kitweft.pattern.TextFormatException;

/**
 * A chord symbol and what it stands for.
 *
 * @param root its root
 * @param suffix what is written after the root, slash and bass left out: {@code m7b5}
 * @param degrees its tones from the root, the root itself included
 * @param slashBass the bass written after a slash
 */
public record Chord(
        PitchName root,
        String suffix,
        SortedSet<ChordDegree> degrees,
        Optional<PitchName> slashBass) {

    /** Steps and semitones up, by semitones: how a root is named when all is transposed. */
    private static final int[] STEPS_UP = {0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};

    public Chord {
        Objects.requireNonNull(root, "root");
        Objects.requireNonNull(suffix, "suffix");
        Objects.requireNonNull(slashBass, "slashBass");
        degrees = Collections.unmodifiableSortedSet(new TreeSet<>(degrees));
        if (degrees.size() < 2 || !degrees.first().equals(new ChordDegree(1, 0))) {
            throw new IllegalArgumentException("a chord has its root and at least one tone more");
        }
    }

    /**
     * Reads a chord symbol as the trade writes it: {@code Dm7}, {@code F#m7b5}, {@code Bbmaj9},
     * {@code C7(b9,#11)}, {@code Am/G}.
     *
     * @throws TextFormatException naming the position and what was expected there
     */
    public static Chord parse(String text) {
        return new ChordParser("chord", text, 0, text.length()).parse();
    }

    /** The tones from the root up, spelled right. */
    public List<PitchName> tones() {
        return degrees.stream().map(degree -> degree.on(root)).toList();
    }

    /** What the bass plays: the tone after the slash, or the root. */
    public PitchName bass() {
        return slashBass.orElse(root);
    }

    /** The tone of a degree, if the chord has it: 3 finds a minor third too. */
    public Optional<ChordDegree> degree(int number) {
        return degrees.stream().filter(degree -> degree.number() == number).findFirst();
    }

    /** The same chord higher or lower; root and bass take their plainest names. */
    public Chord transposed(int semitones) {
        int up = Math.floorMod(semitones, 12);
        if (up == 0) {
            return this;
        }
        return new Chord(
                root.up(STEPS_UP[up], up).simplified(),
                suffix,
                degrees,
                slashBass.map(bass -> bass.up(STEPS_UP[up], up).simplified()));
    }

    /** The symbol, as it reads back to this chord. */
    public String text() {
        return root.text() + suffix + slashBass.map(bass -> "/" + bass.text()).orElse("");
    }

    /** The symbol and its tones, for people: {@code Cm7 (C Eb G Bb)}. */
    public String spelled() {
        return text()
                + tones().stream().map(PitchName::text).collect(Collectors.joining(" ", " (", ")"));
    }

    @Override
    public String toString() {
        return text();
    }
}
