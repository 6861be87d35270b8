/** The phrase in the window, as a strip of sections, and the band that plays along. */
@NullMarked
package org.kitweft.ui.phrase;

import org.jspecify.annotations.NullMarked;
