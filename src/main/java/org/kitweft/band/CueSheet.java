package org.kitweft.band;

import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.kitweft.groove.Hit;
import org.kitweft.pattern.Dynamic;

/** Lays a line's figures, or the drummer's strokes, out over a phrase. */
final class CueSheet {
    private static final int BEATS_OF_A_BAR = 4;
    private static final String KICK = "bass-drum";

    private final PhraseTime time;
    private final Style style;
    private final StyleLine line;
    private final boolean turned;
    private final long seed;

    /**
     * By the instant they sound; where two steps meet on one, as on thirds, the first note stands.
     */
    private final TreeMap<Long, Cue> cues = new TreeMap<>();

    private CueSheet(
            PhraseTime time, Style style, StyleLine line, ClaveDirection direction, long seed) {
        this.time = time;
        this.style = style;
        this.line = line;
        this.turned = line.followsClave() && style.turned(direction);
        this.seed = seed;
    }

    /** The cues of a line in time. */
    static List<Cue> of(
            PhraseTime time, Style style, StyleLine line, ClaveDirection direction, long seed) {
        CueSheet sheet = new CueSheet(time, style, line, direction, seed);
        time.bars().forEach(sheet::bar);
        return List.copyOf(sheet.cues.values());
    }

    private void bar(PhraseTime.Bar bar) {
        switch (line.in(bar.role())) {
            case FIGURE -> {
                boolean locked = !line.kick().isEmpty() && hasKick(bar);
                if (locked) {
                    locked(bar);
                } else {
                    figure(bar);
                }
            }
            case HOLD -> held(bar);
            case REST -> add(bar, bar.start(), bar.start(), FigureStep.REST);
            case PUNCHES -> punches(bar);
        }
    }

    private static boolean hasKick(PhraseTime.Bar bar) {
        return bar.groove().hits().stream().anyMatch(CueSheet::isKick);
    }

    private static boolean isKick(Hit hit) {
        return hit.sound().surface().equals(KICK);
    }

    private int pulses(PhraseTime.Bar bar) {
        return style.pulsesBeside(bar.groove().grid());
    }

    private long stepTicks(PhraseTime.Bar bar) {
        return bar.meter().beatTicks() / pulses(bar);
    }

    private void figure(PhraseTime.Bar bar) {
        if (line.figures().isEmpty()) {
            return;
        }
        int steps = bar.meter().beats() * pulses(bar);
        for (int i = 0; i < steps; i++) {
            long written = bar.start() + i * stepTicks(bar);
            FigureStep step = stepAt(bar, i);
            boolean struckAnew = line.strikesChanges() && time.changesAt(written);
            if (struckAnew && step.kind() != FigureStep.Kind.REST) {
                step = FigureStep.note(line.plain().voice(), step.dynamic());
            }
            if (step.kind() != FigureStep.Kind.HOLD) {
                add(bar, written, sounding(bar, written), step);
            }
        }
    }

    /** The figure's step at a step of a bar, of the figure drawn for this time round. */
    private FigureStep stepAt(PhraseTime.Bar bar, int step) {
        int barOfFigure = BEATS_OF_A_BAR * pulses(bar);
        int inBar = step % barOfFigure;
        if (bar.index() == 0
                && line.opening().isPresent()
                && step < line.opening().get().steps().size()) {
            return line.opening().get().steps().get(step);
        }
        int length = line.figures().get(0).steps().size();
        long at = (long) bar.index() * barOfFigure + inBar;
        int turn = turned ? length / 2 : 0;
        return drawn(at / length).steps().get((int) ((at + turn) % length));
    }

    /** The first time the first figure, then by weight, the same for the same seed. */
    private BandFigure drawn(long round) {
        List<BandFigure> figures = line.figures();
        int all = figures.stream().mapToInt(BandFigure::weight).sum();
        int draw = round == 0 ? 0 : new SplittableRandom(seed + round).nextInt(all);
        for (BandFigure figure : figures) {
            draw -= figure.weight();
            if (draw < 0) {
                return figure;
            }
        }
        throw new IllegalStateException("the draw lies below the sum of the weights");
    }

    /** With the bass drum, and between its strokes where there is room. */
    private void locked(PhraseTime.Bar bar) {
        TreeMap<Long, Long> kicks = new TreeMap<>();
        for (Hit hit : bar.groove().hits()) {
            long written = bar.sectionStart() + hit.written();
            if (isKick(hit) && written >= bar.start() && written < bar.end()) {
                kicks.merge(written, bar.sectionStart() + hit.start(), Math::min);
            }
        }
        if (bar.opensSection() && !kicks.containsKey(bar.start())) {
            add(bar, bar.start(), bar.start(), FigureStep.REST);
        }
        kicks.forEach(
                (written, start) ->
                        add(bar, written, start, line.kick().get(time.placeOf(written))));
        if (line.between().isEmpty()) {
            return;
        }
        List<FigureStep> between = line.between().get().steps();
        int steps = bar.meter().beats() * pulses(bar);
        for (int i = 0; i < steps; i++) {
            long written = bar.start() + i * stepTicks(bar);
            FigureStep step = between.get(i % between.size());
            boolean room =
                    kicks.subMap(written - stepTicks(bar), true, written + stepTicks(bar), true)
                            .isEmpty();
            if (step.isNote() && room) {
                add(bar, written, sounding(bar, written), step);
            }
        }
    }

    private void held(PhraseTime.Bar bar) {
        if (bar.opensSection()) {
            add(bar, bar.start(), bar.start(), line.plain());
        }
        int steps = bar.meter().beats() * pulses(bar);
        for (int i = bar.opensSection() ? 1 : 0; i < steps; i++) {
            long written = bar.start() + i * stepTicks(bar);
            if (time.changesAt(written)) {
                add(bar, written, sounding(bar, written), line.plain());
            }
        }
    }

    private void punches(PhraseTime.Bar bar) {
        boolean onTheDownbeat = false;
        for (Hit hit : PunchStrokes.of(bar.groove())) {
            long written = bar.sectionStart() + hit.written();
            if (written >= bar.start() && written < bar.end()) {
                onTheDownbeat |= written == bar.start();
                add(
                        bar,
                        written,
                        bar.sectionStart() + hit.start(),
                        FigureStep.note(line.plain().voice(), hit.dynamic()));
            }
        }
        if (bar.opensSection() && !onTheDownbeat) {
            add(bar, bar.start(), bar.start(), FigureStep.REST);
        }
    }

    private long sounding(PhraseTime.Bar bar, long written) {
        return PhraseTime.sounding(bar, written, pulses(bar), style.swing());
    }

    private void add(PhraseTime.Bar bar, long written, long start, FigureStep step) {
        long chordTick = step.early() ? time.nextBeat(written) : written;
        Cue cue =
                new Cue(
                        written,
                        start,
                        step,
                        time.chordAt(chordTick),
                        time.nextChange(chordTick),
                        stepTicks(bar));
        cues.merge(start, cue, (one, other) -> one.step().isNote() ? one : other);
    }

    /** Velocity of a cue, 1 to 127: the line's loudness, the dynamic, the place in the bar. */
    static int velocity(StyleLine line, FigureStep step, MetricPlace place) {
        int dynamic = dynamic(step.dynamic());
        return Math.max(1, Math.min(127, line.loudness() + dynamic + place.louder()));
    }

    /** Our own choice: as far apart as the drums' dynamics, a little less. */
    private static int dynamic(Dynamic dynamic) {
        return switch (dynamic) {
            case GHOST -> -22;
            case PLAIN -> 0;
            case ACCENT -> 16;
        };
    }
}
