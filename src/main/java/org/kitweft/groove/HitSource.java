package org.kitweft.groove;

/** Where a hit comes from. */
public enum HitSource {
    /** A stroke of the sticking. */
    STROKE,
    /** A limb that doubles a stroke. */
    DOUBLING,
    /** A layer. */
    LAYER
}
