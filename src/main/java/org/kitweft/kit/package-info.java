/**
 * What is struck and with what: limbs, surfaces, sounds, kits and their files. Knows nothing of
 * stickings.
 */
@NullMarked
package org.kitweft.kit;

import org.jspecify.annotations.NullMarked;
