/**
 * Searching in the window: from a role to grooves that serve it, and from a groove back to the
 * stickings and voicings that produce it.
 */
@NullMarked
package org.kitweft.ui.search;

import org.jspecify.annotations.NullMarked;
