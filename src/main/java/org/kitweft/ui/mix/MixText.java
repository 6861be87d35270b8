package org.kitweft.ui.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kitweft.sound.Mix;
import org.kitweft.sound.Part;
import org.kitweft.sound.Strip;

/**
 * The balance of a mix as one line of text, for the window's settings: {@code drums 60 0, bass 55
 * -20}: level and pan in percent. Mute and solo are left out on purpose: nobody shall wonder
 * tomorrow why a part is not heard.
 */
public final class MixText {
    private static final Pattern STRIP = Pattern.compile("([a-z]+) (\\d{1,3}) (-?\\d{1,3})");

    private MixText() {}

    /** The text of a mix; empty where all is as at first. */
    public static String print(Mix mix) {
        List<String> strips = new ArrayList<>();
        for (Part part : Part.values()) {
            Strip strip = mix.strip(part);
            Strip first = Mix.DEFAULT.strip(part);
            if (strip.level() != first.level() || strip.pan() != first.pan()) {
                strips.add(
                        "%s %d %d"
                                .formatted(
                                        part.id(),
                                        MixModel.levelPercent(strip),
                                        MixModel.panPercent(strip)));
            }
        }
        return String.join(", ", strips);
    }

    /** The mix of a text; what cannot be understood is as at first. */
    public static Mix parse(String text) {
        Mix mix = Mix.DEFAULT;
        Matcher found = STRIP.matcher(text);
        while (found.find()) {
            int level = Integer.parseInt(found.group(2));
            int pan = Integer.parseInt(found.group(3));
            if (Part.ids().contains(found.group(1))
                    && level <= MixModel.FULL
                    && Math.abs(pan) <= MixModel.FULL) {
                Part part = Part.of(found.group(1));
                mix =
                        mix.with(
                                part,
                                mix.strip(part)
                                        .withLevel((double) level / MixModel.FULL)
                                        .withPan((double) pan / MixModel.FULL));
            }
        }
        return mix;
    }
}
