package org.kitweft.kit;

import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that is struck, with its place as seen from the player's seat, in centimetres.
 *
 * @param id kebab-case, unique in its kit, e.g. {@code floor-tom}
 * @param name for people, e.g. {@code Floor tom}
 * @param x centre, to the player's right
 * @param y centre, away from the player
 * @param z height of the centre
 * @param diameter of the part that is struck, above 0
 * @param limbs those that can reach it, at least one
 * @param sounds at least one; the first is meant where none is named
 */
public record Surface(
        String id,
        String name,
        double x,
        double y,
        double z,
        double diameter,
        Set<Limb> limbs,
        List<Sound> sounds) {

    /**
     * Programs of struck bars, from 0: glockenspiel, vibraphone, marimba, xylophone. Source:
     * shared/reference/gm1-programs.csv.
     */
    private static final Set<Integer> BARS = Set.of(9, 11, 12, 13);

    public Surface {
        Ids.check("surface", id);
        if (name.isBlank()) {
            throw new IllegalArgumentException("the name is empty");
        }
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw new IllegalArgumentException("x, y and z must be numbers of centimetres");
        }
        if (!(diameter > 0) || Double.isInfinite(diameter)) {
            throw new IllegalArgumentException(
                    "diameter %s cm: expected more than 0".formatted(diameter));
        }
        if (limbs.isEmpty()) {
            throw new IllegalArgumentException("no limb can reach it");
        }
        // Minus zero becomes zero: equals would tell them apart, and so would a kit mirrored twice.
        x += 0.0;
        y += 0.0;
        z += 0.0;
        limbs = Collections.unmodifiableSet(EnumSet.copyOf(limbs));
        sounds = List.copyOf(sounds);
        if (sounds.isEmpty()) {
            throw new IllegalArgumentException("it has no sound");
        }
        Set<String> ids = new HashSet<>();
        for (Sound sound : sounds) {
            if (!ids.add(sound.id())) {
                throw new IllegalArgumentException(
                        "two sounds have the id \"%s\"".formatted(sound.id()));
            }
            if (!limbs.containsAll(sound.limbs())) {
                throw new IllegalArgumentException(
                        "sound \"%s\" has limbs that cannot reach the surface"
                                .formatted(sound.id()));
            }
        }
        for (Sound sound : sounds) {
            for (String stopped : sound.stops()) {
                if (!ids.contains(stopped)) {
                    throw new IllegalArgumentException(
                            "sound \"%s\" stops \"%s\", which the surface does not have"
                                    .formatted(sound.id(), stopped));
                }
            }
        }
    }

    /** The sound of an id. */
    public Optional<Sound> sound(String soundId) {
        return sounds.stream().filter(s -> s.id().equals(soundId)).findFirst();
    }

    /** The name of one of its sounds. */
    public SoundName nameOf(Sound sound) {
        return new SoundName(id, sound.id());
    }

    /** Whether it is a bar of a mallet instrument. */
    public boolean isBar() {
        Sound first = sounds.get(0);
        return first.isPitched() && BARS.contains(first.program().orElseThrow());
    }

    /** Distance between the centres in the horizontal plane, in centimetres: design section 7. */
    public double distanceTo(Surface other) {
        return Math.hypot(other.x - x, other.y - y);
    }
}
