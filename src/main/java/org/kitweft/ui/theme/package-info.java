/** Colours, fonts, scale and the marks that several panels paint. */
@NullMarked
package org.kitweft.ui.theme;

import org.jspecify.annotations.NullMarked;
