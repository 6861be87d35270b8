package org.kitweft.groove;

import java.util.Objects;
import java.util.OptionalInt;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;

/**
 * All that a groove is woven from: what a window edits, a lesson keeps and a command line spells
 * out. Immutable; the {@code with…} methods make changed copies.
 *
 * @param sticking what is woven
 * @param kit on which kit
 * @param voicing with which voicing
 * @param grid on which grid
 * @param bars how many bars; empty: as many as it takes until everything comes round
 */
public record Recipe(Sticking sticking, Kit kit, Voicing voicing, Grid grid, OptionalInt bars) {
    public Recipe {
        Objects.requireNonNull(sticking, "sticking");
        Objects.requireNonNull(kit, "kit");
        Objects.requireNonNull(voicing, "voicing");
        Objects.requireNonNull(grid, "grid");
        bars.ifPresent(Groove::checkBars);
    }

    /** A sticking on the plainest voicing of a kit, in sixteenths of 4/4. */
    public static Recipe plain(Sticking sticking, Kit kit) {
        return new Recipe(sticking, kit, Voicing.plain(kit), Grid.SIXTEENTHS, OptionalInt.empty());
    }

    /** Weaves the groove. */
    public Groove weave() {
        return bars.isPresent()
                ? Weaver.weave(sticking, kit, voicing, grid, bars.getAsInt())
                : Weaver.weave(sticking, kit, voicing, grid);
    }

    /** The same with another sticking. */
    public Recipe with(Sticking other) {
        return new Recipe(other, kit, voicing, grid, bars);
    }

    /** The same on another kit; the voicing stays as it is. */
    public Recipe with(Kit other) {
        return new Recipe(sticking, other, voicing, grid, bars);
    }

    /** The same with another voicing. */
    public Recipe with(Voicing other) {
        return new Recipe(sticking, kit, other, grid, bars);
    }

    /** The same on another grid. */
    public Recipe with(Grid other) {
        return new Recipe(sticking, kit, voicing, other, bars);
    }

    /** The same with another number of bars; empty: until everything comes round. */
    public Recipe withBars(OptionalInt other) {
        return new Recipe(sticking, kit, voicing, grid, other);
    }
}
