/** The groove as a grid of steps, and the layers beside the sticking. */
@NullMarked
package org.kitweft.ui.groove;

import org.jspecify.annotations.NullMarked;
