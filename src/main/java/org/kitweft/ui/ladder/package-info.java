/** The ladder in the window: from the sticking on one surface to the groove in the grid. */
@NullMarked
package org.kitweft.ui.ladder;

import org.jspecify.annotations.NullMarked;
