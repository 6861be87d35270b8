/** How a phrase is practised: tempo, bars, half and double time. Start at {@link PracticePanel}. */
@NullMarked
package org.kitweft.ui.practice;

import org.jspecify.annotations.NullMarked;
