package org.kitweft.ui.kit;

import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;

/**
 * A limb that strikes beside the letters: a doubling or a layer.
 *
 * @param limb who strikes
 * @param sound what is struck
 * @param text what is written on it, e.g. {@code +R} or {@code RF}
 */
record Companion(Limb limb, SoundName sound, String text) {}
