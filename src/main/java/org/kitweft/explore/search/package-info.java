/**
 * Search both ways: from a groove back to the stickings and voicings that produce it ({@link
 * org.kitweft.explore.search.StickingSearch}), and from a role and a kit to recipes that serve it
 * ({@link org.kitweft.explore.search.RoleSearch}).
 */
@NullMarked
package org.kitweft.explore.search;

import org.jspecify.annotations.NullMarked;
