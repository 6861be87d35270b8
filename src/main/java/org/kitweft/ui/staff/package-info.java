/** The staff in the window: the groove or the phrase as engraved notation, with the playhead. */
@NullMarked
package org.kitweft.ui.staff;

import org.jspecify.annotations.NullMarked;
