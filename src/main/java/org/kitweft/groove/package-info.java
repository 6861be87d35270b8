/**
 * From a sticking to a groove: meter and grid, the voicing that puts letters on sounds, the weaving
 * of both into hits in exact time, the conflicts found on the way, and phrases of grooves.
 *
 * <p>Start at {@link org.kitweft.groove.Weaver}.
 */
@NullMarked
package org.kitweft.groove;

import org.jspecify.annotations.NullMarked;
