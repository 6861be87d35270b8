/**
 * The built-in sound bank: computed from physics, written as a SoundFont 2 file, kept in a folder.
 */
@NullMarked
package org.kitweft.sound.bank;

import org.jspecify.annotations.NullMarked;
