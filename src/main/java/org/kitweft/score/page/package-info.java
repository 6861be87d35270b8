/**
 * Sheets of paper with placed signs, and the files they become: PDF, SVG and PNG, all painted by
 * the same painter.
 */
@NullMarked
package org.kitweft.score.page;

import org.jspecify.annotations.NullMarked;
