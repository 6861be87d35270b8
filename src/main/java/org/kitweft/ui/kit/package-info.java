/**
 * The kit seen from above: where surfaces lie, whose tokens stand on them, and the panel that shows
 * it.
 */
@NullMarked
package org.kitweft.ui.kit;

import org.jspecify.annotations.NullMarked;
