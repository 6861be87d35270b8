/**
 * How long a limb takes from surface to surface, and what follows for a tempo: an estimate from
 * published data, not a verdict on a person.
 *
 * <p>Start at {@link org.kitweft.explore.reach.ReachModel} and {@link
 * org.kitweft.explore.reach.Travel}.
 */
@NullMarked
package org.kitweft.explore.reach;

import org.jspecify.annotations.NullMarked;
