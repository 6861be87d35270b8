/**
 * The handout: the printed page of a lesson, with staff, kit, tempo steps, practice log and care
 * notes.
 *
 * <p>Start at {@link org.kitweft.score.handout.Handout}.
 */
@NullMarked
package org.kitweft.score.handout;

import org.jspecify.annotations.NullMarked;
