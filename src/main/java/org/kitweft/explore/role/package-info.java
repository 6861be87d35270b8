/**
 * How well a groove serves as time, fill or punch, and why: features with plain-language reasons,
 * each from 0 to 1, weighed for each role by weights that users can change.
 */
@NullMarked
package org.kitweft.explore.role;

import org.jspecify.annotations.NullMarked;
