package org.kitweft.explore.search;

import java.util.BitSet;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.kitweft.pattern.Sticking;

/**
 * From a groove back to the stickings and voicings that produce it.
 *
 * <p>What is searched: every sticking of the length sought, in R, L, K, H, B and rests; each letter
 * on any path of sounds, with accents and ghosts apart or not, and single strokes elsewhere. Beyond
 * that, up to {@link SearchSpace#mostAdditions()} {@link Addition}s, each of which an answer makes
 * use of: a letter handed over to another limb, one doubling a letter, a letter that is tacet, B
 * with sounds of its own, and layers, where a layer has its limb and its sound to itself. B as R
 * and L at once answers what is heard as two sounds, in some pass of the sticking at least. Both of
 * them on one sound are a unison, which sounds like one stroke: it explains nothing that one hand
 * would not, so it counts as an addition too, over and above the most, and such an answer is told
 * after the ones without. An answer has no conflict, and where a limb takes the place of another in
 * later passes of the sticking through a period, it strikes as in the first pass if it can.
 *
 * <p>What a groove sounds like does not tell two limbs on one sound from one limb on it: both are
 * found.
 */
public final class StickingSearch {
    private StickingSearch() {}

    /** Searches to the end, with nobody looking on. */
    public static SearchOutcome search(Target target, SearchSpace space) {
        return search(target, space, SearchWatch.NONE);
    }

    /**
     * Searches.
     *
     * @param watch is shown how many of all sets of layers have been looked at, and then how many
     *     steps have been asked why they forbid the groove; may stop the search
     * @return {@link Stopped} if the watch stopped it, and only then
     * @throws IllegalArgumentException if the stickings sought are longer than the groove, or the
     *     groove is longer than a sticking can be and no length is given
     */
    public static SearchOutcome search(Target target, SearchSpace space, SearchWatch watch) {
        Objects.requireNonNull(target, "target");
        int steps = target.steps().size();
        int strokes = space.strokes().orElse(steps);
        if (strokes > steps) {
            throw new IllegalArgumentException(
                    "%d strokes: the groove has only %d steps".formatted(strokes, steps));
        }
        if (strokes > Sticking.MAX_STROKES) {
            throw new IllegalArgumentException(
                    "the groove has %d steps: name a length of 1 to %d strokes for the sticking"
                            .formatted(steps, Sticking.MAX_STROKES));
        }
        try {
            return search(new Heard(target, strokes), space.mostAdditions(), watch);
        } catch (CancellationException stopped) {
            return new Stopped();
        }
    }

    private static SearchOutcome search(Heard heard, int mostAdditions, SearchWatch watch) {
        Plans plans = new Plans(heard, mostAdditions);
        Pace pace = new Pace(watch, plans.layerSetsInAll());
        Blame blame = new Blame(heard, plans, watch);
        Optional<NoneCan> impossible = blame.atFirstSight();
        if (impossible.isPresent()) {
            return impossible.get();
        }
        BitSet all = new BitSet();
        all.set(0, heard.strokes());
        for (int additions = 0; additions <= plans.most(); additions++) {
            if (plans.canCover(all, additions, pace)) {
                return new Found(heard, plans, additions, watch);
            }
        }
        return blame.find();
    }
}
