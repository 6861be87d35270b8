/**
 * The rules that variations keep: values, told apart by type, that check themselves and nothing
 * else.
 */
@NullMarked
package org.kitweft.explore.rule;

import org.jspecify.annotations.NullMarked;
