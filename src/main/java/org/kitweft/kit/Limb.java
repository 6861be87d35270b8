package org.kitweft.kit;

import java.util.Optional;

/** A hand or a foot. */
public enum Limb {
    /** The right hand. */
    RIGHT_HAND("right-hand", "RH"),
    /** The left hand. */
    LEFT_HAND("left-hand", "LH"),
    /** The right foot. */
    RIGHT_FOOT("right-foot", "RF"),
    /** The left foot. */
    LEFT_FOOT("left-foot", "LF");

    private final String id;
    private final String shortName;

    Limb(String id, String shortName) {
        this.id = id;
        this.shortName = shortName;
    }

    /** The limb of an id such as {@code right-hand}. */
    public static Optional<Limb> of(String id) {
        for (Limb limb : values()) {
            if (limb.id.equals(id)) {
                return Optional.of(limb);
            }
        }
        return Optional.empty();
    }

    /** The name in commands and files, e.g. {@code right-hand}. */
    public String id() {
        return id;
    }

    /** Two letters: RH, LH, RF, LF. */
    public String shortName() {
        return shortName;
    }

    /** The name in a sentence, e.g. {@code right hand}. */
    public String words() {
        return id.replace('-', ' ');
    }

    /** Whether it is a hand rather than a foot. */
    public boolean isHand() {
        return this == RIGHT_HAND || this == LEFT_HAND;
    }

    /** The other hand, or the other foot. */
    public Limb opposite() {
        return switch (this) {
            case RIGHT_HAND -> LEFT_HAND;
            case LEFT_HAND -> RIGHT_HAND;
            case RIGHT_FOOT -> LEFT_FOOT;
            case LEFT_FOOT -> RIGHT_FOOT;
        };
    }
}
