/**
 * The band that answers the drums: chord symbols and charts, and the bass, comping and punch lines
 * that a style makes of a chart and a phrase. Knows nothing of sound: a {@link
 * org.kitweft.band.BandPart} is notes in ticks.
 *
 * <p>Start at {@link org.kitweft.band.Arrangement}.
 */
@NullMarked
package org.kitweft.band;

import org.jspecify.annotations.NullMarked;
