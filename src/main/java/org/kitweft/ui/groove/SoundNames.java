package org.kitweft.ui.groove;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.kitweft.kit.Kit;
import org.kitweft.kit.SoundName;

/** Several sounds as one text, {@code hi-hat, ride.bell}: the form of the command line. */
final class SoundNames {
    private SoundNames() {}

    /** The text; the first sound of a surface is written without its name. */
    static String text(Kit kit, List<SoundName> sounds) {
        return sounds.stream().map(sound -> text(kit, sound)).collect(Collectors.joining(", "));
    }

    /** One sound, as short as it can be. */
    static String text(Kit kit, SoundName sound) {
        return kit.has(sound) && kit.find(sound.surface()).equals(sound)
                ? sound.surface()
                : sound.text();
    }

    /**
     * Reads such a text; nothing but spaces is no sounds.
     *
     * @throws IllegalArgumentException with the nearest name, if the kit has none such
     */
    static List<SoundName> parse(Kit kit, String text) {
        List<SoundName> sounds = new ArrayList<>();
        for (String part : Arrays.asList(text.split(",", -1))) {
            if (!part.isBlank()) {
                sounds.add(kit.find(part.strip()));
            }
        }
        return sounds;
    }
}
