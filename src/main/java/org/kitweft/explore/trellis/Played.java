package org.kitweft.explore.trellis;

import java.util.List;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/**
 * A stroke that is played: struck, and not of a tacet letter.
 *
 * @param index in the sticking, from 0, rests counted
 * @param letter its letter
 * @param limbs who plays it, one or two
 * @param sounds what it may sound on, in order; pins and allowed sounds are already applied
 */
record Played(int index, Letter letter, List<Limb> limbs, List<SoundName> sounds) {}
