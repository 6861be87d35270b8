package org.kitweft.kit;

import java.util.regex.Pattern;

/** Checks that surfaces and sounds share. */
final class Ids {
    private static final Pattern KEBAB_CASE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private Ids() {}

    static void check(String what, String id) {
        if (!KEBAB_CASE.matcher(id).matches()) {
            throw new IllegalArgumentException(
                    "%s id \"%s\": expected small letters and digits with hyphens, as in floor-tom"
                            .formatted(what, id));
        }
    }

    static void checkRange(String what, int value, int from, int to) {
        if (value < from || value > to) {
            throw new IllegalArgumentException(
                    "%s %d is outside %d to %d".formatted(what, value, from, to));
        }
    }
}
