/**
 * Rhythm by itself: which steps of a cycle are struck, how evenly they are spread, and how much
 * they work against the meter, by published measures. Knows no kit and no sticking.
 */
@NullMarked
package org.kitweft.explore.rhythm;

import org.jspecify.annotations.NullMarked;
