package org.kitweft.sound.bank.soundfont;

/** A mono sample of 16 bits. Immutable; not copied, so the maker hands its array over for good. */
public final class Sample {
    /** Shortest sample that the standard promises to play (section 7.10). */
    public static final int MIN_LENGTH = 48;

    private final String name;
    private final short[] pcm;
    private final int rate;
    private final int rootKey;
    private final int loopStart;
    private final int loopEnd;

    private Sample(String name, short[] pcm, int rate, int rootKey, int loopStart, int loopEnd) {
        if (name.isEmpty()
                || name.length() > 20
                || !name.chars().allMatch(c -> c > 31 && c < 127)) {
            throw new IllegalArgumentException(
                    "a sample's name has 1 to 20 ASCII letters, not \"" + name + "\"");
        }
        if (pcm.length < MIN_LENGTH
                || loopStart < 0
                || loopEnd > pcm.length
                || loopStart > loopEnd) {
            throw new IllegalArgumentException(
                    "sample %s: %d frames with loop %d to %d; at least %d, loop inside"
                            .formatted(name, pcm.length, loopStart, loopEnd, MIN_LENGTH));
        }
        this.name = name;
        this.pcm = pcm;
        this.rate = rate;
        this.rootKey = rootKey;
        this.loopStart = loopStart;
        this.loopEnd = loopEnd;
    }

    /** A sample that plays to its end. */
    public static Sample ending(String name, short[] pcm, int rate, int rootKey) {
        return new Sample(name, pcm, rate, rootKey, 0, 0);
    }

    /**
     * A sample that goes on from {@code loopStart} to just before {@code loopEnd}, over and over.
     */
    public static Sample looping(
            String name, short[] pcm, int rate, int rootKey, int loopStart, int loopEnd) {
        return new Sample(name, pcm, rate, rootKey, loopStart, loopEnd);
    }

    public String name() {
        return name;
    }

    /** Number of frames. */
    public int length() {
        return pcm.length;
    }

    /** One frame, &minus;32768 to 32767. */
    public short frame(int index) {
        return pcm[index];
    }

    /** A copy as doubles, &minus;1 to 1. */
    public double[] toDoubles() {
        double[] copy = new double[pcm.length];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = pcm[i] / 32768.0;
        }
        return copy;
    }

    /** Frames a second. */
    public int rate() {
        return rate;
    }

    /** The key at which it sounds as it was made. */
    public int rootKey() {
        return rootKey;
    }

    /** Whether it has a loop. */
    public boolean loops() {
        return loopEnd > loopStart;
    }

    public int loopStart() {
        return loopStart;
    }

    public int loopEnd() {
        return loopEnd;
    }
}
