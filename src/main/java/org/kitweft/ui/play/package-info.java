/**
 * The player as the window sees it: what plays and where the playhead stands, on the event thread.
 */
@NullMarked
package org.kitweft.ui.play;

import org.jspecify.annotations.NullMarked;
