/** SoundFont 2 files: their parts as values, a writer, and a check of a file's structure. */
@NullMarked
package org.kitweft.sound.bank.soundfont;

import org.jspecify.annotations.NullMarked;
