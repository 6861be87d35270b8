/** The window itself: commands, menus, dialogs, settings, and how the panels come together. */
@NullMarked
package org.kitweft.ui.window;

import org.jspecify.annotations.NullMarked;
