package org.kitweft.groove;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.pattern.Ornament;
import org.kitweft.pattern.Sticking;
import org.kitweft.pattern.Stroke;

/**
 * Weaves a sticking and a voicing into a groove.
 *
 * <p>Not over the bar, the sticking starts again with the bar; one that is longer than a bar starts
 * again at the bar line after its end. Over the bar, it runs on until it meets the bar line again.
 * Paths run on from pass to pass and start again where the groove does: with that bar, or with that
 * meeting. Layers run through from the first bar. Where one limb strikes one sound twice at one
 * instant, the louder hit stands.
 */
public final class Weaver {
    private final Sticking sticking;
    private final Kit kit;
    private final Voicing voicing;
    private final Grid grid;
    private final Cycle cycle;

    private Weaver(Sticking sticking, Kit kit, Voicing voicing, Grid grid) {
        this.sticking = sticking;
        this.kit = kit;
        this.voicing = voicing;
        this.grid = grid;
        this.cycle = Cycle.of(sticking.size(), grid, voicing.layers());
    }

    /**
     * Weaves as many bars as it takes until everything comes round, at most {@link
     * Groove#MAX_BARS}; {@link Groove#comesRound()} tells whether that was enough.
     */
    public static Groove weave(Sticking sticking, Kit kit, Voicing voicing, Grid grid) {
        Weaver weaver = new Weaver(sticking, kit, voicing, grid);
        return weaver.weave((int) Math.min(weaver.cycle.allBars(), Groove.MAX_BARS));
    }

    /**
     * Weaves so many bars.
     *
     * @throws IllegalArgumentException if the bars are not 1 to {@link Groove#MAX_BARS}
     */
    public static Groove weave(Sticking sticking, Kit kit, Voicing voicing, Grid grid, int bars) {
        Groove.checkBars(bars);
        return new Weaver(sticking, kit, voicing, grid).weave(bars);
    }

    private Groove weave(int bars) {
        Map<HitKey, Hit> hits = new LinkedHashMap<>();
        Map<Letter, List<Place>> nothingToStrike = new EnumMap<>(Letter.class);
        weaveSticking(bars, hits, nothingToStrike);
        for (Layer layer : voicing.layers()) {
            weaveLayer(layer, bars, hits);
        }
        List<Hit> inTime = hits.values().stream().sorted(Hit.IN_TIME).toList();
        List<Conflict> silent = new ArrayList<>();
        nothingToStrike.forEach(
                (letter, places) -> silent.add(new Conflict.NothingToStrike(letter, places)));
        List<Conflict> conflicts = Conflicts.in(inTime, kit, silent);
        return new Groove(sticking, kit, voicing, grid, bars, cycle.allBars(), inTime, conflicts);
    }

    private void weaveSticking(
            int bars, Map<HitKey, Hit> hits, Map<Letter, List<Place>> nothingToStrike) {
        int barSteps = grid.stepsPerBar();
        int periodSteps = cycle.stickingBars() * barSteps;
        Turns turns = new Turns();
        for (int step = 0; step < bars * barSteps; step++) {
            if (step % periodSteps == 0) {
                turns = new Turns();
            }
            int index = cycle.strokeAt(step, sticking.size(), grid);
            Optional<Stroke.Struck> struck = sticking.strokes().get(index).struck();
            if (struck.isPresent()) {
                Moment moment = new Moment(step, index, struck.get());
                if (!strike(moment, turns, hits)) {
                    nothingToStrike
                            .computeIfAbsent(struck.get().letter(), any -> new ArrayList<>())
                            .add(moment.place());
                }
            }
        }
    }

    /** One struck stroke; false if its letter has nothing to strike. */
    private boolean strike(Moment moment, Turns turns, Map<HitKey, Hit> hits) {
        Letter letter = moment.struck.letter();
        Optional<LetterVoicing> own = voicing.letter(letter);
        if (letter != Letter.B) {
            own.ifPresent(v -> strike(moment, letter, v, v.limb(), turns, hits));
            return own.isPresent();
        }
        if (own.isPresent()) {
            LetterVoicing both = own.get();
            SoundName sound = turns.next(letter, both, moment.struck.dynamic());
            for (Limb hand : EnumSet.of(Limb.RIGHT_HAND, Limb.LEFT_HAND)) {
                moment.add(both, hand, sound, hits);
            }
            return true;
        }
        boolean any = false;
        for (Letter hand : List.of(Letter.R, Letter.L)) {
            Optional<LetterVoicing> voiced = voicing.letter(hand);
            voiced.ifPresent(v -> strike(moment, hand, v, v.limb(), turns, hits));
            any |= voiced.isPresent();
        }
        return any;
    }

    private void strike(
            Moment moment,
            Letter letter,
            LetterVoicing voiced,
            Limb limb,
            Turns turns,
            Map<HitKey, Hit> hits) {
        moment.add(voiced, limb, turns.next(letter, voiced, moment.struck.dynamic()), hits);
    }

    private void weaveLayer(Layer layer, int bars, Map<HitKey, Hit> hits) {
        long stepTicks = grid.meter().beatTicks() / layer.stepsPerBeat();
        List<Optional<Dynamic>> figure = layer.figure().steps();
        long end = bars * grid.meter().barTicks();
        int step = 0;
        for (long written = 0; written < end; written += stepTicks, step++) {
            Optional<Dynamic> dynamic = figure.get(step % figure.size());
            if (dynamic.isPresent()) {
                add(
                        hits,
                        new Hit(
                                place(written),
                                written,
                                grid.sounding(written, layer.stepsPerBeat()),
                                layer.limb(),
                                Optional.empty(),
                                layer.sound(),
                                dynamic.get(),
                                Ornament.NONE,
                                HitSource.LAYER,
                                OptionalInt.empty()));
            }
        }
    }

    private Place place(long written) {
        long step = written / grid.stepTicks();
        return new Place(
                Math.toIntExact(step / grid.stepsPerBar()) + 1,
                Math.toIntExact(step % grid.stepsPerBar()) + 1);
    }

    private static void add(Map<HitKey, Hit> hits, Hit hit) {
        hits.merge(
                new HitKey(hit.start(), hit.limb(), hit.sound()),
                hit,
                (one, other) -> other.dynamic().compareTo(one.dynamic()) > 0 ? other : one);
    }

    /** What makes two hits one. */
    private record HitKey(long start, Limb limb, SoundName sound) {}

    /** A stroke of the sticking at a step of the groove. */
    private final class Moment {
        private final long written;
        private final int index;
        private final Stroke.Struck struck;

        Moment(int step, int index, Stroke.Struck struck) {
            this.written = step * grid.stepTicks();
            this.index = index;
            this.struck = struck;
        }

        Place place() {
            return Weaver.this.place(written);
        }

        void add(LetterVoicing voiced, Limb limb, SoundName inTurn, Map<HitKey, Hit> hits) {
            if (voiced.tacet()) {
                return;
            }
            SoundName sound = voicing.strokes().getOrDefault(index, inTurn);
            Weaver.add(hits, hit(limb, sound, struck.ornament(), HitSource.STROKE));
            for (Doubling doubling : voiced.doublings()) {
                if (!doubling.accentsOnly() || struck.dynamic() == Dynamic.ACCENT) {
                    Weaver.add(
                            hits,
                            hit(
                                    doubling.limb(),
                                    doubling.sound(),
                                    Ornament.NONE,
                                    HitSource.DOUBLING));
                }
            }
        }

        private Hit hit(Limb limb, SoundName sound, Ornament ornament, HitSource source) {
            return new Hit(
                    place(),
                    written,
                    grid.sounding(written, grid.stepsPerBeat()),
                    limb,
                    Optional.of(struck.letter()),
                    sound,
                    struck.dynamic(),
                    ornament,
                    source,
                    OptionalInt.of(index));
        }
    }

    /** Whose turn it is on each path: plain strokes, accents and ghosts count for themselves. */
    private static final class Turns {
        private record Path(Letter letter, Dynamic dynamic) {}

        private final Map<Path, Integer> taken = new LinkedHashMap<>();

        SoundName next(Letter letter, LetterVoicing voiced, Dynamic dynamic) {
            List<SoundName> sounds = voiced.pathFor(dynamic);
            boolean ownPath =
                    dynamic == Dynamic.ACCENT
                            ? !voiced.accents().isEmpty()
                            : dynamic == Dynamic.GHOST && !voiced.ghosts().isEmpty();
            Path path = new Path(letter, ownPath ? dynamic : Dynamic.PLAIN);
            int turn = taken.merge(path, 1, Integer::sum) - 1;
            return sounds.get(turn % sounds.size());
        }
    }
}
