/** The percussion channel: which voice sounds on which key, how loud, from where. */
@NullMarked
package org.kitweft.sound.bank.percussion;

import org.jspecify.annotations.NullMarked;
