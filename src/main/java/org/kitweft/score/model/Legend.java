package org.kitweft.score.model;

import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Phrase;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.kit.Surface;

/** Names the noteheads that a phrase uses. */
final class Legend {
    private Legend() {}

    static List<LegendEntry> of(Phrase phrase) {
        Kit kit = phrase.sections().get(0).groove().kit();
        NavigableSet<SoundName> used = new TreeSet<>();
        phrase.sections()
                .forEach(
                        section ->
                                section.groove().hits().stream()
                                        .map(Hit::sound)
                                        .filter(kit::has)
                                        .forEach(used::add));
        return used.stream()
                .map(name -> entry(kit, name, used))
                .sorted(
                        Comparator.comparing((LegendEntry e) -> -e.place().diatonic())
                                .thenComparing(LegendEntry::words))
                .toList();
    }

    private static LegendEntry entry(Kit kit, SoundName name, NavigableSet<SoundName> used) {
        Surface surface = kit.surfaceOf(name);
        Sound sound = kit.sound(name);
        boolean bare =
                surface.sounds().get(0).equals(sound)
                        && used.stream().filter(n -> n.surface().equals(surface.id())).count() == 1;
        Optional<Sign> sign = SignFinder.ringing(kit, name);
        return new LegendEntry(
                name,
                bare ? surface.name() : surface.name() + " " + sound.id().replace('-', ' '),
                sound.place(),
                sound.notehead(),
                sign,
                sound.limbs().stream().noneMatch(Limb::isHand));
    }
}
