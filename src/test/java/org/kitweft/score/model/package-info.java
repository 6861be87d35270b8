/** Tests of the written page. */
@NullMarked
package org.kitweft.score.model;

import org.jspecify.annotations.NullMarked;
