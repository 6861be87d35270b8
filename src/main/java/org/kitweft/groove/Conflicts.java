package org.kitweft.groove;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;

/**
 * Finds what cannot be played in a list of hits. A grace note counts as struck with its hit: the
 * other hand has to be there.
 */
final class Conflicts {
    private record Strike(Limb limb, SoundName sound) {}

    private record Clash(Limb limb, List<SoundName> sounds) {}

    private final Kit kit;
    private final Map<Strike, List<Place>> outOfReach = new LinkedHashMap<>();
    private final Map<Clash, List<Place>> twoAtOnce = new LinkedHashMap<>();
    private final Map<List<SoundName>, List<Place>> silenced = new LinkedHashMap<>();

    private Conflicts(Kit kit) {
        this.kit = kit;
    }

    /**
     * All conflicts, each with all its places, in order of first occurrence.
     *
     * @param hits in time
     * @param others conflicts that the hits do not show, to be listed with them
     */
    static List<Conflict> in(List<Hit> hits, Kit kit, List<Conflict> others) {
        Conflicts found = new Conflicts(kit);
        int from = 0;
        for (int to = 1; to <= hits.size(); to++) {
            if (to == hits.size() || hits.get(to).start() != hits.get(from).start()) {
                found.instant(hits.subList(from, to));
                from = to;
            }
        }
        List<Conflict> all = new ArrayList<>(others);
        all.addAll(found.listed());
        all.sort(Comparator.comparing(conflict -> conflict.places().get(0)));
        return all;
    }

    private void instant(List<Hit> hits) {
        Place place = hits.get(0).place();
        Map<Limb, SortedSet<SoundName>> struck = new EnumMap<>(Limb.class);
        SortedSet<SoundName> sounding = new TreeSet<>();
        for (Hit hit : hits) {
            strike(struck, hit.limb(), hit.sound(), place);
            if (hit.ornament().graceNotes() > 0) {
                strike(struck, hit.limb().opposite(), hit.sound(), place);
            }
            sounding.add(hit.sound());
        }
        struck.forEach(
                (limb, sounds) -> {
                    if (sounds.size() > 1) {
                        note(twoAtOnce, new Clash(limb, List.copyOf(sounds)), place);
                    }
                });
        for (SoundName one : sounding) {
            for (SoundName other : sounding.tailSet(one)) {
                if (stops(one, other) || stops(other, one)) {
                    note(silenced, List.of(one, other), place);
                }
            }
        }
    }

    private void strike(
            Map<Limb, SortedSet<SoundName>> struck, Limb limb, SoundName sound, Place place) {
        struck.computeIfAbsent(limb, any -> new TreeSet<>()).add(sound);
        if (!kit.canStrike(limb, sound)) {
            note(outOfReach, new Strike(limb, sound), place);
        }
    }

    private boolean stops(SoundName one, SoundName other) {
        if (!one.surface().equals(other.surface()) || !kit.has(one)) {
            return false;
        }
        Sound sound = kit.sound(one);
        return sound.stops().contains(other.sound());
    }

    private static <K> void note(Map<K, List<Place>> where, K what, Place place) {
        List<Place> places = where.computeIfAbsent(what, any -> new ArrayList<>());
        if (places.isEmpty() || !places.get(places.size() - 1).equals(place)) {
            places.add(place);
        }
    }

    private List<Conflict> listed() {
        List<Conflict> all = new ArrayList<>();
        outOfReach.forEach(
                (strike, places) ->
                        all.add(new Conflict.OutOfReach(strike.limb(), strike.sound(), places)));
        twoAtOnce.forEach(
                (clash, places) ->
                        all.add(new Conflict.TwoAtOnce(clash.limb(), clash.sounds(), places)));
        silenced.forEach((sounds, places) -> all.add(new Conflict.SilencedAtOnce(sounds, places)));
        return all;
    }
}
