package org.kitweft.pattern;

import java.util.Optional;

/** A letter of a sticking: who strokes. Order: right hand before left, hands before feet. */
public enum Letter {
    /** The right hand. */
    R,
    /** The left hand. */
    L,
    /** The kick: the foot at the bass drum. */
    K,
    /** The hi-hat pedal: the other foot. */
    H,
    /** Both hands at once. */
    B;

    /** The letter a character stands for, upper or lower case. */
    public static Optional<Letter> of(char character) {
        for (Letter letter : values()) {
            if (letter.name().charAt(0) == Character.toUpperCase(character)) {
                return Optional.of(letter);
            }
        }
        return Optional.empty();
    }

    /** Whether one hand alone plays it: only then can it carry grace notes. */
    public boolean isOneHand() {
        return this == R || this == L;
    }

    /** The letter with right and left hand exchanged; feet and both hands stay. */
    public Letter handsSwapped() {
        return switch (this) {
            case R -> L;
            case L -> R;
            case K, H, B -> this;
        };
    }
}
