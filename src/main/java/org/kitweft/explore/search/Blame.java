package org.kitweft.explore.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.kitweft.groove.Place;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;

/** Finds which steps forbid a groove that no plan covers, and says why. */
final class Blame {
    private final Heard heard;
    private final Plans plans;
    private final SearchWatch watch;
    private final Pace stopping;

    Blame(Heard heard, Plans plans, SearchWatch watch) {
        this.heard = heard;
        this.plans = plans;
        this.watch = watch;
        this.stopping = new Pace(watch, 0);
    }

    /** Steps that no body and no kit could play, found without looking at a single plan. */
    Optional<NoneCan> atFirstSight() {
        List<NoneCan.Obstacle> obstacles = new ArrayList<>();
        for (int stroke : kindsOfStrokes().values()) {
            bodily(stroke)
                    .ifPresent(
                            reason ->
                                    obstacles.add(
                                            new NoneCan.Obstacle(placesLike(stroke), reason)));
        }
        return obstacles.isEmpty() ? Optional.empty() : Optional.of(inOrder(obstacles));
    }

    /** Why no plan covers the groove. */
    NoneCan find() {
        Map<List<List<Strike>>, Integer> kinds = kindsOfStrokes();
        List<NoneCan.Obstacle> alone = new ArrayList<>();
        Pace pace = new Pace(watch, 2 * kinds.size());
        for (int stroke : kinds.values()) {
            pace.step();
            if (!possible(List.of(stroke))) {
                alone.add(new NoneCan.Obstacle(placesLike(stroke), reasonAlone(stroke)));
            }
        }
        if (!alone.isEmpty()) {
            return inOrder(alone);
        }
        List<Integer> together = new ArrayList<>(kinds.values());
        for (int stroke : List.copyOf(together)) {
            pace.step();
            List<Integer> without = new ArrayList<>(together);
            without.remove((Integer) stroke);
            if (!possible(without)) {
                together = without;
            }
        }
        return new NoneCan(
                List.of(
                        new NoneCan.Obstacle(
                                together.stream()
                                        .map(stroke -> heard.places(stroke).get(0))
                                        .sorted()
                                        .toList(),
                                "no sticking plays all of these steps with at most %d additions"
                                        .formatted(plans.mostBesideUnison()))));
    }

    private static NoneCan inOrder(List<NoneCan.Obstacle> obstacles) {
        return new NoneCan(
                obstacles.stream()
                        .sorted(Comparator.comparing(obstacle -> obstacle.places().get(0)))
                        .toList());
    }

    private boolean possible(List<Integer> strokes) {
        BitSet set = new BitSet();
        strokes.forEach(set::set);
        return plans.canCover(set, stopping);
    }

    /** One stroke of each kind: what is possible for one is for all that ask for the same. */
    private Map<List<List<Strike>>, Integer> kindsOfStrokes() {
        Map<List<List<Strike>>, Integer> kinds = new LinkedHashMap<>();
        for (int stroke = 0; stroke < heard.strokes(); stroke++) {
            kinds.putIfAbsent(asked(stroke), stroke);
        }
        return kinds;
    }

    /** What is heard wherever a stroke is laid. */
    private List<List<Strike>> asked(int stroke) {
        List<List<Strike>> asked = new ArrayList<>();
        List<List<Strike>> steps = heard.target().steps();
        for (int step = 0; step < steps.size(); step++) {
            if (step % heard.period() % heard.strokes() == stroke) {
                asked.add(steps.get(step));
            }
        }
        return asked;
    }

    private List<Place> placesLike(int stroke) {
        List<Place> places = new ArrayList<>();
        for (int other = 0; other < heard.strokes(); other++) {
            if (asked(other).equals(asked(stroke))) {
                places.addAll(heard.places(other));
            }
        }
        return places.stream().sorted().toList();
    }

    private Optional<String> bodily(int stroke) {
        for (List<Strike> strikes : asked(stroke)) {
            List<SoundName> silencing = heard.silencing(strikes);
            if (!silencing.isEmpty()) {
                return Optional.of(joined(silencing) + " cannot sound together");
            }
            if (!limbsSuffice(strikes, 0, EnumSet.noneOf(Limb.class))) {
                return Optional.of(
                        "no four limbs can strike %s at one instant"
                                .formatted(joined(strikes.stream().map(Strike::sound).toList())));
            }
        }
        return Optional.empty();
    }

    private String reasonAlone(int stroke) {
        if (asked(stroke).stream().distinct().count() > 1) {
            return "stroke %d of %d would have to be several things at once"
                    .formatted(stroke + 1, heard.strokes());
        }
        return "one stroke with at most %d additions cannot be %s"
                .formatted(
                        plans.mostBesideUnison(),
                        joined(asked(stroke).get(0).stream().map(Strike::sound).toList()));
    }

    private boolean limbsSuffice(List<Strike> strikes, int from, Set<Limb> taken) {
        if (from == strikes.size()) {
            return true;
        }
        int sound = heard.number(strikes.get(from).sound());
        for (Limb limb : Limb.values()) {
            if (!taken.contains(limb) && heard.able(limb.ordinal(), sound)) {
                Set<Limb> more = EnumSet.copyOf(taken);
                more.add(limb);
                if (limbsSuffice(strikes, from + 1, more)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String joined(List<SoundName> sounds) {
        return sounds.stream().map(SoundName::text).collect(Collectors.joining(" and "));
    }
}
