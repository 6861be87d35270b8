/** Kitweft's entry point: wires the command line and the window, which do not know each other. */
@NullMarked
package org.kitweft;

import org.jspecify.annotations.NullMarked;
