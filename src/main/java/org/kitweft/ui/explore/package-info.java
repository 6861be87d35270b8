/**
 * All variations that choices and rules allow: how many keep the rules, and a list to hear them.
 */
@NullMarked
package org.kitweft.ui.explore;

import org.jspecify.annotations.NullMarked;
