package org.kitweft.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.kitweft.explore.Choices;
import org.kitweft.explore.rule.Rule;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;

/** The tasks that benchmarks set. */
final class Tasks {
    private Tasks() {}

    /** For both hands the first so many surfaces that both can strike, one sound of each. */
    static Choices hands(Kit kit, int count) {
        List<SoundName> sounds = new ArrayList<>();
        for (Surface surface : kit.surfaces()) {
            surface.sounds().stream()
                    .filter(sound -> sound.limbs().contains(Limb.RIGHT_HAND))
                    .filter(sound -> sound.limbs().contains(Limb.LEFT_HAND))
                    .findFirst()
                    .ifPresent(sound -> sounds.add(surface.nameOf(sound)));
        }
        List<SoundName> first = sounds.subList(0, count);
        return new Choices(Map.of(Letter.R, first, Letter.L, first));
    }

    static List<Rule> and(List<Rule> rules, Rule one) {
        List<Rule> more = new ArrayList<>(rules);
        more.add(one);
        return more;
    }
}
