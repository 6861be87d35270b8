/** Tests of the written page. */
@NullMarked
package org.kitweft.score.handout;

import org.jspecify.annotations.NullMarked;
