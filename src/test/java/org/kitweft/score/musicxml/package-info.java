/** Tests of the written page. */
@NullMarked
package org.kitweft.score.musicxml;

import org.jspecify.annotations.NullMarked;
