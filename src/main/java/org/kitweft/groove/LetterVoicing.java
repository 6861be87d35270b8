package org.kitweft.groove;

import java.util.List;
import java.util.Objects;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;

/**
 * How one letter is played. Immutable; the {@code with…} methods make changed copies.
 *
 * @param limb who plays it
 * @param path the sounds its strokes take in turn, at least one
 * @param accents the sounds its accents take in turn; empty: as the path
 * @param ghosts the sounds its ghost strokes take in turn; empty: as the path
 * @param doublings limbs that strike together with it
 * @param tacet whether it is silent: its strokes become rests
 */
public record LetterVoicing(
        Limb limb,
        List<SoundName> path,
        List<SoundName> accents,
        List<SoundName> ghosts,
        List<Doubling> doublings,
        boolean tacet) {

    public LetterVoicing {
        Objects.requireNonNull(limb, "limb");
        path = List.copyOf(path);
        accents = List.copyOf(accents);
        ghosts = List.copyOf(ghosts);
        doublings = List.copyOf(doublings);
        if (path.isEmpty()) {
            throw new IllegalArgumentException(
                    "a letter needs at least one sound to strike; to silence it, make it tacet");
        }
        for (Doubling doubling : doublings) {
            if (doubling.limb() == limb) {
                throw new IllegalArgumentException(
                        "the %s cannot double itself; another limb must strike %s"
                                .formatted(limb.words(), doubling.sound()));
            }
        }
    }

    /** A limb on one path of sounds, nothing else. */
    public static LetterVoicing on(Limb limb, List<SoundName> path) {
        return new LetterVoicing(limb, path, List.of(), List.of(), List.of(), false);
    }

    /** The sounds that strokes of a dynamic take in turn. */
    public List<SoundName> pathFor(Dynamic dynamic) {
        return switch (dynamic) {
            case ACCENT -> accents.isEmpty() ? path : accents;
            case GHOST -> ghosts.isEmpty() ? path : ghosts;
            case PLAIN -> path;
        };
    }

    /** The same with another path. */
    public LetterVoicing withPath(List<SoundName> other) {
        return new LetterVoicing(limb, other, accents, ghosts, doublings, tacet);
    }

    /** The same with other sounds for accents. */
    public LetterVoicing withAccents(List<SoundName> other) {
        return new LetterVoicing(limb, path, other, ghosts, doublings, tacet);
    }

    /** The same with other sounds for ghost strokes. */
    public LetterVoicing withGhosts(List<SoundName> other) {
        return new LetterVoicing(limb, path, accents, other, doublings, tacet);
    }

    /** The same with other doublings. */
    public LetterVoicing withDoublings(List<Doubling> other) {
        return new LetterVoicing(limb, path, accents, ghosts, other, tacet);
    }

    /** The same played by another limb, on the same sounds. */
    public LetterVoicing withLimb(Limb other) {
        return new LetterVoicing(other, path, accents, ghosts, doublings, tacet);
    }

    /** The same, silent or not. */
    public LetterVoicing withTacet(boolean other) {
        return new LetterVoicing(limb, path, accents, ghosts, doublings, other);
    }
}
