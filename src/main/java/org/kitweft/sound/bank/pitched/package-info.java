/** The pitched programs: bars, strings, horns and heads spread over the keys. */
@NullMarked
package org.kitweft.sound.bank.pitched;

import org.jspecify.annotations.NullMarked;
