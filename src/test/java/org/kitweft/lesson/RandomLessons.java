package org.kitweft.lesson;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.kitweft.band.Backing;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.band.ClaveDirection;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Meter;
import org.kitweft.groove.PhrasePlan;
import org.kitweft.groove.PlannedSection;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/** Lessons with everything in them that the model allows, whether or not one can play it. */
final class RandomLessons {
    private static final List<Kit> KITS =
            Stream.concat(
                            BuiltInKits.names().stream()
                                    .map(BuiltInKits::load)
                                    .flatMap(kit -> Stream.of(kit, kit.forOtherHand())),
                            Stream.of(ownKit()))
                    .toList();
    private static final List<String> TEXTS =
            List.of("", "Harbour", "Zeile\nzwei\t\"\\", "éß漢🥁", "{\"a\":1}", "\u2028 | ~");

    private final RandomGenerator random;

    RandomLessons(RandomGenerator random) {
        this.random = random;
    }

    private static Kit ownKit() {
        return KitFile.parse(
                """
                {"name":"five-piece","surfaces":[{"id":"box","name":"Kiste","x":0.5,"y":1e1,"z":-3,
                "diameter":33.25,"limbs":["right-hand","left-foot"],"sounds":[{"id":"front",
                "channel":3,"program":117,"key":40,"place":"C5","notehead":"square"}]}]}
                """,
                "own");
    }

    Lesson lesson() {
        return new Lesson(pick(TEXTS), pick(TEXTS), some(4, i -> item()))
                .withPhrases(some(2, i -> phrase()));
    }

    private LessonPhrase phrase() {
        Kit kit = pick(KITS);
        return new LessonPhrase(
                pick(TEXTS),
                new PhrasePlan(
                        many(
                                4,
                                i ->
                                        new PlannedSection(
                                                pick(List.of(Role.values())),
                                                recipe(kit),
                                                1 + random.nextInt(12)))),
                random.nextBoolean() ? Optional.empty() : Optional.of(backing()),
                new Tempo(20 + random.nextInt(381)),
                some(5, i -> 20 + random.nextInt(381)),
                pick(TEXTS));
    }

    private Backing backing() {
        return new Backing(
                random.nextBoolean(),
                pick(List.of("C", " Dm7  G7 |Cmaj7 %|", "N.C. | F#m7b5/E / | %", "|| Bb7(#9) ||")),
                pick(BuiltInStyles.names()),
                pick(List.of(ClaveDirection.values())),
                random.nextLong());
    }

    private LessonItem item() {
        return new LessonItem(
                pick(TEXTS),
                pick(List.of(Role.values())),
                recipe(pick(KITS)),
                new Tempo(20 + random.nextInt(381)),
                some(5, i -> 20 + random.nextInt(381)),
                pick(TEXTS));
    }

    private Recipe recipe(Kit kit) {
        return new Recipe(
                new Sticking(many(20, i -> stroke())),
                kit,
                voicing(kit),
                new Grid(
                        new Meter(1 + random.nextInt(12), pick(List.of(4, 8))),
                        pick(List.copyOf(Grid.stepsPerBeatChoices())),
                        50 + random.nextInt(26),
                        random.nextBoolean()),
                random.nextBoolean()
                        ? OptionalInt.empty()
                        : OptionalInt.of(1 + random.nextInt(12)));
    }

    private Stroke stroke() {
        Letter letter = pick(List.of(Letter.values()));
        Ornament ornament = pick(List.of(Ornament.values()));
        return random.nextInt(6) == 0
                ? Stroke.REST
                : Stroke.of(
                        letter,
                        pick(List.of(Dynamic.values())),
                        ornament.graceNotes() > 0 && !letter.isOneHand()
                                ? Ornament.NONE
                                : ornament);
    }

    private Voicing voicing(Kit kit) {
        Map<Letter, LetterVoicing> letters = new EnumMap<>(Letter.class);
        for (Letter letter : Letter.values()) {
            if (random.nextInt(3) > 0) {
                letters.put(letter, letterVoicing(kit));
            }
        }
        SortedMap<Integer, SoundName> strokes = new TreeMap<>();
        some(3, i -> random.nextInt(Sticking.MAX_STROKES)).forEach(i -> strokes.put(i, sound(kit)));
        return new Voicing(letters, strokes, some(3, i -> layer(kit)));
    }

    private LetterVoicing letterVoicing(Kit kit) {
        Limb limb = limb();
        List<Doubling> doublings = new ArrayList<>();
        for (Limb other : some(2, i -> limb())) {
            if (other != limb) {
                doublings.add(new Doubling(other, sound(kit), random.nextBoolean()));
            }
        }
        return new LetterVoicing(
                limb,
                many(3, i -> sound(kit)),
                some(3, i -> sound(kit)),
                some(3, i -> sound(kit)),
                doublings,
                random.nextBoolean());
    }

    private Layer layer(Kit kit) {
        List<Optional<Dynamic>> steps =
                new ArrayList<>(
                        some(
                                9,
                                i ->
                                        random.nextBoolean()
                                                ? Optional.empty()
                                                : Optional.of(pick(List.of(Dynamic.values())))));
        steps.add(Optional.of(Dynamic.PLAIN));
        return new Layer(
                limb(),
                sound(kit),
                pick(List.copyOf(Grid.stepsPerBeatChoices())),
                new Figure(steps));
    }

    private SoundName sound(Kit kit) {
        return random.nextInt(10) == 0
                ? new SoundName("not-here", "nor-this")
                : pick(kit.soundNames());
    }

    private Limb limb() {
        return pick(List.of(Limb.values()));
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private <T> List<T> some(int most, IntFunction<T> each) {
        return IntStream.range(0, random.nextInt(most + 1)).mapToObj(each).toList();
    }

    private <T> List<T> many(int most, IntFunction<T> each) {
        return IntStream.range(0, 1 + random.nextInt(most)).mapToObj(each).toList();
    }
}
