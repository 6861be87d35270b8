package org.kitweft.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.kitweft.groove.Figure;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Voicing;
import org.kitweft.groove.Weaver;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/** Grooves of all kinds by seed: every kit, grid and meter, layers, ornaments, rests. */
public final class RandomGrooves {
    private static final List<Meter> METERS =
            List.of(
                    new Meter(2, 4),
                    new Meter(3, 4),
                    new Meter(4, 4),
                    new Meter(5, 4),
                    new Meter(3, 8),
                    new Meter(5, 8),
                    new Meter(6, 8),
                    new Meter(7, 8),
                    new Meter(9, 8),
                    new Meter(12, 8));
    private static final List<Integer> STEPS = List.of(1, 2, 3, 4, 5, 6, 7, 8, 12);
    private static final List<Kit> KITS =
            BuiltInKits.names().stream().map(BuiltInKits::load).toList();

    private RandomGrooves() {}

    /** The groove of a seed, one to three bars. */
    public static Groove of(long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        Kit kit = pick(KITS, random);
        Kit handed = random.nextInt(4) == 0 ? kit.forOtherHand() : kit;
        Meter meter = pick(METERS, random);
        Grid grid =
                new Grid(
                        meter,
                        pick(STEPS, random),
                        random.nextInt(3) == 0 ? 50 + random.nextInt(26) : 50,
                        random.nextBoolean());
        return Weaver.weave(
                sticking(random), handed, voicing(handed, random), grid, 1 + random.nextInt(3));
    }

    private static Sticking sticking(Random random) {
        List<Stroke> strokes = new ArrayList<>();
        int size = 1 + random.nextInt(16);
        double rests = random.nextDouble() * 0.6;
        for (int i = 0; i < size; i++) {
            if (random.nextDouble() < rests) {
                strokes.add(Stroke.REST);
                continue;
            }
            Letter letter = Letter.values()[random.nextInt(random.nextInt(3) == 0 ? 5 : 2)];
            Ornament ornament =
                    random.nextInt(4) > 0 || !letter.isOneHand()
                            ? Ornament.NONE
                            : Ornament.values()[random.nextInt(4)];
            strokes.add(Stroke.of(letter, Dynamic.values()[random.nextInt(3)], ornament));
        }
        return new Sticking(strokes);
    }

    private static Voicing voicing(Kit kit, Random random) {
        Voicing voicing = Voicing.plain(kit);
        for (Letter letter : List.of(Letter.R, Letter.L)) {
            Limb limb = Voicing.limbOf(letter, kit);
            List<SoundName> own = kit.soundsFor(limb);
            List<SoundName> path = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(4); i++) {
                path.add(pick(own, random));
            }
            voicing = voicing.with(letter, LetterVoicing.on(limb, path));
        }
        List<Layer> layers = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            Limb limb = Limb.values()[random.nextInt(4)];
            List<SoundName> own = kit.soundsFor(limb);
            if (!own.isEmpty()) {
                layers.add(new Layer(limb, pick(own, random), pick(STEPS, random), figure(random)));
            }
        }
        return voicing.withLayers(layers);
    }

    private static Figure figure(Random random) {
        StringBuilder text = new StringBuilder("x");
        for (int i = random.nextInt(8); i > 0; i--) {
            text.append(random.nextInt(3) == 0 ? " >x" : random.nextBoolean() ? " x" : " -");
        }
        return Figure.parse(text.toString());
    }

    private static <T> T pick(List<T> some, Random random) {
        return some.get(random.nextInt(some.size()));
    }
}
