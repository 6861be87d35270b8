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
 * <p>No move leads out of a <i>region</i> of surfaces, so that sets fall into choices of regions,
 * and many sets share them: <i>bounds</i> for each limb. A <i>ground</i> has all states and steps
 * of a chain; a <i>passage</i> is cut from it to bounds, and bounds of one <i>shape</i> share what
 * was counted. A <i>blend</i> is read for what a beginning has struck: the numbers of all choices
 * that hold it, added up once that is worth while. A loop closes on its first strokes, so it has a
 * blend for each end that these ask for, made when a beginning is looked at; how many ways there
 * are before is known from <i>round trips</i>, or from <i>onward</i> ways where a limb strikes
 * again before all have struck. What would take too much memory is read from the families' tables.
 *
 * <p>The best come from the same trellis with least costs in place of sums; where different
 * surfaces are counted, over states that keep track of those struck.
 */
@NullMarked
package org.kitweft.explore.trellis;

import org.jspecify.annotations.NullMarked;
