/**
 * Ranking variations by how well they serve a role. That is no sum over strokes, so no trellis
 * finds the best of them all: small sets are looked through whole, big ones are searched.
 */
@NullMarked
package org.kitweft.explore.rank;

import org.jspecify.annotations.NullMarked;
