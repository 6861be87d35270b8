/** How many ways there are, in words a learner understands. */
@NullMarked
package org.kitweft.ui.count;

import org.jspecify.annotations.NullMarked;
