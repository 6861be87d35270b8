package org.kitweft.explore.search;

import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/**
 * What a voicing has beyond letters played by their own limbs on paths of sounds. The fewer of
 * them, the simpler an answer of {@link StickingSearch} is told.
 */
public sealed interface Addition {

    /** One sentence part for people. */
    String words();

    /** A letter is played by another limb than its own. */
    record HandedOver(Letter letter, Limb limb) implements Addition {
        @Override
        public String words() {
            return "the %s plays %s".formatted(limb.words(), letter);
        }
    }

    /** A limb strikes one other sound together with a letter. */
    record Doubled(Letter letter, Limb limb, SoundName sound, boolean accentsOnly)
            implements Addition {
        @Override
        public String words() {
            return "the %s strikes %s with each %s%s"
                    .formatted(limb.words(), sound, accentsOnly ? "accented " : "", letter);
        }
    }

    /** A letter is silent. */
    record Tacet(Letter letter) implements Addition {
        @Override
        public String words() {
            return letter + " is tacet";
        }
    }

    /** B has sounds of its own, both hands on one, rather than being the R and the L at once. */
    record BothHands() implements Addition {
        @Override
        public String words() {
            return "B has sounds of its own";
        }
    }

    /**
     * B, as the R and the L at once, is in some stroke both of them on one sound: a unison. It
     * sounds like a single stroke, so it is told after whatever a single stroke explains.
     */
    record Unison() implements Addition {
        @Override
        public String words() {
            return "B is both hands on one sound, a unison";
        }
    }

    /** All strokes on a sound are a layer's, by a limb that does nothing else. */
    record Layered(Limb limb, SoundName sound) implements Addition {
        @Override
        public String words() {
            return "the %s plays %s as a layer".formatted(limb.words(), sound);
        }
    }
}
