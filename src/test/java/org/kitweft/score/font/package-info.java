/** Tests of the written page. */
@NullMarked
package org.kitweft.score.font;

import org.jspecify.annotations.NullMarked;
