package org.kitweft.sound;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * The mixer: a strip for each part. Immutable.
 *
 * @param strips of all parts
 */
public record Mix(Map<Part, Strip> strips) {
    /**
     * Everyone is heard: the drums lead, the bass stands beside them, 2 LU below, the click 3, the
     * punches 4 and the chords 6. That order is our own choice; the levels are measured to give it
     * with our own bank, as the median of the seven styles with the opening groove (integrated
     * loudness of ITU-R BS.1770-4 of each part alone; a test holds it). The loudest full mix peaks
     * at half of full scale.
     */
    public static final Mix DEFAULT =
            new Mix(
                    Map.of(
                            Part.DRUMS, Strip.at(0.55),
                            Part.CLICK, Strip.at(0.95),
                            Part.BASS, Strip.at(0.8),
                            Part.COMPING, Strip.at(0.75),
                            Part.PUNCHES, Strip.at(0.53)));

    public Mix {
        Map<Part, Strip> copy = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            copy.put(part, Objects.requireNonNull(strips.get(part), part.id()));
        }
        strips = Collections.unmodifiableMap(copy);
    }

    /** A part's strip. */
    public Strip strip(Part part) {
        return Objects.requireNonNull(strips.get(part), part.id());
    }

    /** The same with a part's strip exchanged. */
    public Mix with(Part part, Strip strip) {
        Map<Part, Strip> changed = new EnumMap<>(strips);
        changed.put(part, strip);
        return new Mix(changed);
    }

    /** The same with these parts muted too. */
    public Mix without(Collection<Part> parts) {
        Mix mix = this;
        for (Part part : parts) {
            mix = mix.with(part, mix.strip(part).withMuted(true));
        }
        return mix;
    }

    /** Whether a part is heard: not muted, and solo if any part is. */
    public boolean hears(Part part) {
        Strip strip = strip(part);
        boolean anySolo = strips.values().stream().anyMatch(Strip::solo);
        return !strip.muted() && (strip.solo() || !anySolo);
    }
}
