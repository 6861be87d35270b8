package org.kitweft.explore.trellis;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What is made when it is first asked for, and once only. Safe for use by several threads. */
final class Lazy<T> {
    private final Supplier<T> maker;
    private volatile @Nullable T made;

    Lazy(Supplier<T> maker) {
        this.maker = maker;
    }

    T get() {
        T known = made;
        return known == null ? make() : known;
    }

    private synchronized T make() {
        T known = made;
        if (known == null) {
            known = maker.get();
            made = known;
        }
        return known;
    }
}
