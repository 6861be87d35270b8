/** Work off the event thread, with progress and a way to stop it. */
@NullMarked
package org.kitweft.ui.task;

import org.jspecify.annotations.NullMarked;
