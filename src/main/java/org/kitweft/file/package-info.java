/** Writing files so that nothing is lost. Knows nobody. */
@NullMarked
package org.kitweft.file;

import org.jspecify.annotations.NullMarked;
