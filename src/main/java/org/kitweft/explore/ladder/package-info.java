/**
 * The way from a sticking on one surface to a chosen recipe, one change at a time. Start at {@link
 * org.kitweft.explore.ladder.Ladder}.
 */
@NullMarked
package org.kitweft.explore.ladder;

import org.jspecify.annotations.NullMarked;
