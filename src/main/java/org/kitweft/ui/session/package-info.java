/**
 * What is being edited, as values without Swing: the session, its history and the edits that can be
 * made.
 */
@NullMarked
package org.kitweft.ui.session;

import org.jspecify.annotations.NullMarked;
