/** Tests of the written page. */
@NullMarked
package org.kitweft.score.page;

import org.jspecify.annotations.NullMarked;
