/** The lesson drawer: what the open lesson holds. */
@NullMarked
package org.kitweft.ui.lesson;

import org.jspecify.annotations.NullMarked;
