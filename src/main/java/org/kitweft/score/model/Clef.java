package org.kitweft.score.model;

/** Which note stands on the middle line. */
public enum Clef {
    /** Two bars: places are surfaces, not pitches; read as the treble clef. */
    PERCUSSION(34),
    /** The middle line is B4. */
    TREBLE(34),
    /** The middle line is D3. */
    BASS(22);

    private final int middleLine;

    Clef(int middleLine) {
        this.middleLine = middleLine;
    }

    /** The note of the middle line in steps of the scale above C0. */
    public int middleLine() {
        return middleLine;
    }
}
