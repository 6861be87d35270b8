/**
 * How many ways there are: the sounds each letter may choose from, and the counts that follow from
 * them without any rule.
 *
 * <p>Start at {@link org.kitweft.explore.Choices} and {@link org.kitweft.explore.Counts}. Rules,
 * the reach model and the engine that counts under rules stand in packages below.
 */
@NullMarked
package org.kitweft.explore;

import org.jspecify.annotations.NullMarked;
