/** Struck, shaken, scraped and blown things as recipes that render a wave for a strength. */
@NullMarked
package org.kitweft.sound.bank.voice;

import org.jspecify.annotations.NullMarked;
