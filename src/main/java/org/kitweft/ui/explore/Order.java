package org.kitweft.ui.explore;

import java.util.Optional;
import org.kitweft.groove.Role;

/** How the variations of the list are ranked. */
enum Order {
    /** The least travel of all limbs first: exact. */
    LEAST_TRAVEL("least travel"),
    /** In the order of their numbers: exact. */
    NUMBER("by number"),
    /** As they serve as time. */
    BEST_TIME("best as time", Role.TIME),
    /** As they serve as fill. */
    BEST_FILL("best as fill", Role.FILL),
    /** As they serve as punch. */
    BEST_PUNCH("best as punch", Role.PUNCH);

    private final String words;
    private final Optional<Role> role;

    Order(String words) {
        this.words = words;
        this.role = Optional.empty();
    }

    Order(String words, Role role) {
        this.words = words;
        this.role = Optional.of(role);
    }

    /** The role it ranks by, if it does. */
    Optional<Role> role() {
        return role;
    }

    @Override
    public String toString() {
        return words;
    }
}
