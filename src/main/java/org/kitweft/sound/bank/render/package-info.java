/** Waves in the making: resonators, noise, filters, loudness, and the finish to 16 bit. */
@NullMarked
package org.kitweft.sound.bank.render;

import org.jspecify.annotations.NullMarked;
