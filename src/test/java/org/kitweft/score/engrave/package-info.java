/** Tests of the written page. */
@NullMarked
package org.kitweft.score.engrave;

import org.jspecify.annotations.NullMarked;
