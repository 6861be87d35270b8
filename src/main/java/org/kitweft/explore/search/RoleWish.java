package org.kitweft.explore.search;

import java.util.Collections;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Role;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Sticking;

/**
 * What {@link RoleSearch} looks for.
 *
 * @param role what the groove is for
 * @param kit on which kit
 * @param grid on which grid
 * @param sticking the sticking, where it is given; else stickings are searched too
 * @param strokes the length of the stickings searched, rests counted
 * @param letters the letters they are made of, at least one that the kit has something for
 * @param weights what counts for the role
 */
public record RoleWish(
        Role role,
        Kit kit,
        Grid grid,
        Optional<Sticking> sticking,
        int strokes,
        Set<Letter> letters,
        RoleWeights weights) {

    public RoleWish {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(kit, "kit");
        Objects.requireNonNull(grid, "grid");
        Objects.requireNonNull(weights, "weights");
        letters = Collections.unmodifiableSet(new TreeSet<>(letters));
        if (letters.isEmpty()) {
            throw new IllegalArgumentException(
                    "no letters: expected at least one of R, L, K, H, B");
        }
        if (strokes < 1 || strokes > Sticking.MAX_STROKES) {
            throw new IllegalArgumentException(
                    "a sticking has 1 to %d strokes, not %d"
                            .formatted(Sticking.MAX_STROKES, strokes));
        }
        if (sticking.isPresent() && sticking.get().size() != strokes) {
            throw new IllegalArgumentException(
                    "the sticking has %d strokes, not %d"
                            .formatted(sticking.get().size(), strokes));
        }
    }

    /** Stickings of hands and feet, one bar long, with the default weights. */
    public static RoleWish of(Role role, Kit kit, Grid grid) {
        return new RoleWish(
                role,
                kit,
                grid,
                Optional.empty(),
                Math.min(grid.stepsPerBar(), Sticking.MAX_STROKES),
                Set.of(Letter.R, Letter.L, Letter.K),
                RoleWeights.DEFAULT);
    }

    /** The same for one sticking, of which only the voicing is searched. */
    public RoleWish with(Sticking given) {
        return new RoleWish(
                role, kit, grid, Optional.of(given), given.size(), given.letters(), weights);
    }

    /** The same with other weights. */
    public RoleWish with(RoleWeights other) {
        return new RoleWish(role, kit, grid, sticking, strokes, letters, other);
    }
}
