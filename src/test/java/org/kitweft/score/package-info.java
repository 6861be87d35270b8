/** Tests of the written page. */
@NullMarked
package org.kitweft.score;

import org.jspecify.annotations.NullMarked;
