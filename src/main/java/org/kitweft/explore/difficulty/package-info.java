/**
 * How hard a groove is to play, defined in one place, with reasons: what each move costs, and what
 * limbs playing at once, layers, dynamics and ornaments add. An order among grooves of one player
 * on one kit, not a verdict on a person; tempo does not enter.
 */
@NullMarked
package org.kitweft.explore.difficulty;

import org.jspecify.annotations.NullMarked;
