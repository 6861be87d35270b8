/** Published values for tests. */
@NullMarked
package org.kitweft.reference;

import org.jspecify.annotations.NullMarked;
