/**
 * The possibilities of a sticking under rules: counted exactly without listing them, and the k-th,
 * the best, random ones and neighbours found from the same trellis.
 *
 * <p>Start at {@link org.kitweft.explore.trellis.Possibilities}. How it works, from the ground up:
 * a <i>plan</i> is the task in numbers; it falls into <i>chains</i> of limbs that no rule ties
 * together; a <i>layout</i> is a chain on some of the surfaces, its states being the places where
 * the chain's limbs stand; a <i>table</i> counts for each stroke and state the ways to go on; a
 * <i>family</i> blends tables over sets of surfaces by inclusion and exclusion, so that different
 * surfaces can be counted without keeping track of them; a <i>node</i> is a variation's beginning
 * with its number of completions.
 *
 * <p>Different surfaces are counted so where there are too many sets to keep track of. Else the
 * surfaces struck so far are part of the state, and <i>completions</i> are read for it: one number
 * for each option of a stroke instead of one for each set. A loop closes on its first strokes, so
 * it has completions for each end that these ask for, made when a beginning is looked at; how many
 * there are for each beginning comes from the sets once more, cut into <i>regions</i> that no move
 * leaves.
 *
 * <p>The best come from the same trellis with least costs in place of sums; where different
 * surfaces are counted, over the states that keep track of them.
 */
@NullMarked
package org.kitweft.explore.trellis;

import org.jspecify.annotations.NullMarked;
