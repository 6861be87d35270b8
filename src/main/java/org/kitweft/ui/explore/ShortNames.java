package org.kitweft.ui.explore;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;

/**
 * Names of a kit's sounds short enough for one step of a row: Sn, HT, FT, BD, C♯3. No two surfaces
 * share one. Sounds after the first of a surface have the first letter of their own added: HHo.
 */
final class ShortNames {
    private static final Pattern PITCH = Pattern.compile("([A-G])( sharp| flat)? ?(\\d)");
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private final Map<SoundName, String> names = new HashMap<>();

    ShortNames(Kit kit) {
        Set<String> taken = new HashSet<>();
        for (Surface surface : kit.surfaces()) {
            String wanted = shortened(surface.name());
            String name = wanted;
            for (int i = 2; !taken.add(name); i++) {
                name = wanted + i;
            }
            nameSounds(surface, name);
        }
    }

    private void nameSounds(Surface surface, String name) {
        Set<String> taken = new HashSet<>(Set.of(""));
        String first = surface.sounds().get(0).id();
        for (Sound sound : surface.sounds()) {
            String mark = "";
            for (int length = 1; !sound.id().equals(first) && !taken.add(mark); length++) {
                mark = sound.id().substring(0, Math.min(length, sound.id().length()));
                if (length > sound.id().length()) {
                    mark += length;
                }
            }
            names.put(surface.nameOf(sound), name + mark);
        }
    }

    private static String shortened(String name) {
        Matcher pitch = PITCH.matcher(name);
        if (pitch.matches()) {
            String sign = pitch.group(2) == null ? "" : pitch.group(2).equals(" sharp") ? "♯" : "♭";
            return pitch.group(1) + sign + pitch.group(3);
        }
        String[] words = name.strip().split("[\\s,-]+", -1);
        Matcher number = NUMBER.matcher(name);
        if (number.find()) {
            return initial(words[0]) + number.group();
        }
        if (words.length == 1) {
            return name.substring(0, 1).toUpperCase(Locale.ROOT)
                    + name.substring(1, Math.min(2, name.length())).toLowerCase(Locale.ROOT);
        }
        return initial(words[0]) + initial(words[1]);
    }

    private static String initial(String word) {
        return word.isEmpty() ? "" : word.substring(0, 1).toUpperCase(Locale.ROOT);
    }

    /** The short name of a sound of the kit. */
    String of(SoundName sound) {
        return names.getOrDefault(sound, sound.text());
    }
}
