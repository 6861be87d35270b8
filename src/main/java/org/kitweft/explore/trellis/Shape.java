package org.kitweft.explore.trellis;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What a passage's counts depend on, whatever its surfaces are called: how many rows there are,
 * where strokes lead, and rows that matter. Bounds of one shape share their counts.
 */
final class Shape {
    private final int[] numbers;

    /** Takes over the numbers. */
    Shape(int[] numbers) {
        this.numbers = numbers;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Shape shape && Arrays.equals(numbers, shape.numbers);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(numbers);
    }
}
