/** The sticking as typed text, with its grid choices and the tables to choose from. */
@NullMarked
package org.kitweft.ui.sticking;

import org.jspecify.annotations.NullMarked;
