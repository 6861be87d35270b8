package org.kitweft.score.engrave;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Beam;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.Event;
import org.kitweft.score.model.Sign;
import org.kitweft.score.model.Voice;

/** Places what lies between two bar lines. Used once. */
final class MeasureEngraver {
    private static final double OVER_TIP = 0.35;
    private static final double OFF_STAFF = 0.35;
    private static final double CLEAR_OF_BUZZ = 0.12;

    private final MusicFont font;
    private final Clef clef;
    private final SignList signs;
    private final MeasureShape shape;
    private final int measure;
    private final NavigableMap<Long, Double> columnXs;
    private final double start;
    private final double end;
    private final IdentityHashMap<Chord, StemLine> tips = new IdentityHashMap<>();

    /** The straight line on which the tips of one or more stems lie. */
    record StemLine(double x, double y, double slope) {
        double at(double otherX) {
            return y + slope * (otherX - x);
        }
    }

    MeasureEngraver(
            Fonts fonts,
            Clef clef,
            SignList signs,
            MeasureShape shape,
            int measure,
            NavigableMap<Long, Double> columnXs,
            double start,
            double end) {
        this.font = fonts.music();
        this.clef = clef;
        this.signs = signs;
        this.shape = shape;
        this.measure = measure;
        this.columnXs = columnXs;
        this.start = start;
        this.end = end;
    }

    void engrave() {
        List<Voice> voices = shape.measure().voices();
        voices.forEach(this::heads);
        voices.forEach(this::stems);
        voices.forEach(this::slurs);
        new RestPlacer(signs, measure, columnXs, start, end).place(voices);
        voices.forEach(this::articulations);
        TupletPlacer tuplets = new TupletPlacer(font, signs, measure);
        for (Voice voice : voices) {
            voice.tuplets()
                    .forEach(tuplet -> tuplets.place(voice, tuplet, this::reach, voiceUp(voice)));
        }
    }

    private boolean voiceUp(Voice voice) {
        return voice.events().stream()
                .filter(Chord.class::isInstance)
                .map(e -> shape.shape((Chord) e).up())
                .findFirst()
                .orElse(true);
    }

    /** From where to where an event is inked between heads and stem. */
    private TupletPlacer.Reach reach(Event event) {
        double x = x(event);
        if (event instanceof Chord chord) {
            ChordShape s = shape.shape(chord);
            return new TupletPlacer.Reach(
                    x + Math.min(0, s.stemX()), x + Math.max(1.18, s.stemX()), x + s.stemX());
        }
        double width = font.bounds(HeadGlyphs.rest(event.value())).getMaxX();
        return new TupletPlacer.Reach(x, x + width, x + width / 2);
    }

    private double x(Event event) {
        return Objects.requireNonNull(columnXs.get(event.tick()));
    }

    private void heads(Voice voice) {
        for (int i = 0; i < voice.events().size(); i++) {
            if (!(voice.events().get(i) instanceof Chord chord)) {
                continue;
            }
            double x = x(chord);
            ChordShape s = shape.shape(chord);
            Owner owner = Owner.of(measure, voice.number(), chord.tick());
            ledgerLines(s, x, owner);
            for (ChordShape.PlacedHead head : s.heads()) {
                Owner headOwner =
                        new Owner(
                                measure,
                                voice.number(),
                                chord.tick(),
                                Optional.of(head.head().hit()));
                signs.glyph(Kind.HEAD, head.glyph(), 1, x + head.x(), head.y(), headOwner);
            }
            for (ChordShape.Beside beside : s.beside()) {
                signs.glyph(
                        beside.kind(),
                        beside.glyph(),
                        beside.scale(),
                        x + beside.x(),
                        beside.y(),
                        owner);
            }
            if (chord.tiedBack() && i > 0) {
                tie((Chord) voice.events().get(i - 1), chord, owner);
            }
        }
    }

    private void ledgerLines(ChordShape s, double x, Owner owner) {
        double half = font.recommended("legerLineThickness") / 2;
        double reach = font.recommended("legerLineExtension") * 0.75;
        for (int side : new int[] {-1, 1}) {
            double far = s.heads().stream().mapToDouble(h -> side * h.y()).max().orElse(0);
            for (int line = 3; line <= far; line++) {
                double y = side * line;
                double level = line;
                double from =
                        s.heads().stream()
                                .filter(h -> side * h.y() >= level)
                                .mapToDouble(ChordShape.PlacedHead::x)
                                .min()
                                .orElse(0);
                double to =
                        s.heads().stream()
                                .filter(h -> side * h.y() >= level)
                                .mapToDouble(h -> h.x() + font.bounds(h.glyph()).getMaxX())
                                .max()
                                .orElse(0);
                signs.box(
                        Kind.LEDGER_LINE,
                        x + from - reach,
                        y - half,
                        x + to + reach,
                        y + half,
                        owner);
            }
        }
    }

    private void tie(Chord from, Chord to, Owner owner) {
        ChordShape s = shape.shape(from);
        double side = s.up() ? 1 : -1;
        for (ChordShape.PlacedHead head : s.heads()) {
            double x1 = x(from) + head.x() + font.bounds(head.glyph()).getMaxX() * 0.75;
            double x2 = x(to) + shape.shape(to).heads().get(0).x() + 0.3;
            double y = head.y() + side * 0.72;
            signs.shape(
                    Kind.TIE,
                    Curves.tie(
                            x2 - x1,
                            side,
                            font.recommended("tieEndpointThickness"),
                            font.recommended("tieMidpointThickness")),
                    x1,
                    y,
                    Optional.empty(),
                    owner);
        }
    }

    private void stems(Voice voice) {
        List<Chord> group = new ArrayList<>();
        for (Event event : voice.events()) {
            if (!(event instanceof Chord chord)) {
                continue;
            }
            if (chord.beams().isEmpty()) {
                single(voice, chord);
            } else {
                group.add(chord);
                if (chord.beams().get(0) == Beam.END) {
                    new BeamPlacer(font, signs, shape, measure, voice.number(), this::x, clef)
                            .place(group, tips);
                    group.clear();
                }
            }
        }
        for (Event event : voice.events()) {
            if (event instanceof Chord chord) {
                stem(voice, chord);
            }
        }
    }

    /** The tip of a stem without a beam: an octave long, but at least to the middle line. */
    private void single(Voice voice, Chord chord) {
        ChordShape s = shape.shape(chord);
        double side = s.up() ? -1 : 1;
        double tip = s.tipSideY() + side * Measures.STEM;
        if (side * tip < 0 && Math.abs(s.tipSideY()) > 2.5) {
            tip = 0;
        }
        if (voice.number() > 2) {
            double x = x(chord) + s.stemX();
            tip =
                    s.up()
                            ? Math.min(tip, signs.top(x - 0.1, x + 1.2, 0) - Measures.STEM)
                            : Math.max(tip, signs.bottom(x - 0.1, x + 1.2, 0) + Measures.STEM);
        }
        tips.put(chord, new StemLine(0, tip, 0));
        if (s.needsFlag()) {
            Glyph flag = HeadGlyphs.flag(chord.value(), s.up());
            double anchor =
                    font.anchor(flag, s.up() ? "stemUpNW" : "stemDownSW")
                            .map(Point2D::getY)
                            .orElse(0.0);
            signs.glyph(
                    Kind.FLAG,
                    flag,
                    1,
                    x(chord) + s.stemX() - font.recommended("stemThickness") / 2,
                    tip - anchor,
                    Owner.of(measure, voice.number(), chord.tick()));
        }
    }

    private void stem(Voice voice, Chord chord) {
        ChordShape s = shape.shape(chord);
        Owner owner = Owner.of(measure, voice.number(), chord.tick());
        double x = x(chord) + s.stemX();
        double tip = tip(chord, x);
        double half = font.recommended("stemThickness") / 2;
        signs.box(
                Kind.STEM,
                x - half,
                Math.min(tip, s.stemStartY()),
                x + half,
                Math.max(tip, s.stemStartY()),
                owner);
        if (chord.signs().contains(Sign.BUZZ)) {
            int beams = chord.value().flags();
            double side = s.up() ? -1 : 1;
            double inner =
                    tip - side * (beams == 0 ? 0 : 0.5 + Measures.STEM_PER_BEAM * (beams - 1));
            signs.glyph(
                    Kind.BUZZ, Glyph.BUZZ, 1, x, buzzY(s.tipSideY() + side * 0.5, inner), owner);
        }
        shape.grace(chord)
                .ifPresent(
                        grace ->
                                new GracePlacer(font, signs)
                                        .place(s, grace, x(chord), clef, owner));
    }

    /**
     * Where a z stands on a stem between a head's and a beam's edge: over a staff line if it can,
     * so that its strokes lie in the spaces and do not blur with lines.
     */
    private double buzzY(double head, double beam) {
        double middle = (head + beam) / 2;
        double line = Math.rint(middle);
        double room = Math.abs(head - beam) / 2 - font.bounds(Glyph.BUZZ).getHeight() / 2;
        boolean fits = Math.abs(line - middle) <= room - CLEAR_OF_BUZZ;
        return fits && Math.abs(line) <= Measures.HALF_STAFF ? line : middle;
    }

    private void slurs(Voice voice) {
        GraceSlur slur = new GraceSlur(font, signs);
        for (Event event : voice.events()) {
            if (event instanceof Chord chord) {
                shape.grace(chord)
                        .ifPresent(
                                grace ->
                                        slur.place(
                                                shape.shape(chord),
                                                grace,
                                                x(chord),
                                                Owner.of(measure, voice.number(), chord.tick())));
            }
        }
    }

    private double tip(Chord chord, double x) {
        return Objects.requireNonNull(tips.get(chord)).at(x);
    }

    private void articulations(Voice voice) {
        for (Event event : voice.events()) {
            if (!(event instanceof Chord chord)) {
                continue;
            }
            ChordShape s = shape.shape(chord);
            // Beside a voice with stems down, those of the other stand over it; alone, over all.
            boolean above = s.up() || shape.measure().voices().size() == 1;
            double middle = x(chord) + s.middle();
            Owner owner = Owner.of(measure, voice.number(), chord.tick());
            for (Sign sign : List.of(Sign.OPEN, Sign.CLOSED, Sign.ACCENT)) {
                if (!chord.signs().contains(sign)) {
                    continue;
                }
                Glyph glyph =
                        switch (sign) {
                            case OPEN -> Glyph.OPEN;
                            case CLOSED -> Glyph.CLOSED;
                            default -> above ? Glyph.ACCENT_ABOVE : Glyph.ACCENT_BELOW;
                        };
                var box = font.bounds(glyph);
                double x = middle - box.getCenterX();
                double from = Math.min(x, x(chord) + Math.min(0, s.stemX() - 0.1));
                double to = Math.max(x + box.getMaxX(), x(chord) + s.stemX() + 0.1);
                double y =
                        above
                                ? signs.top(from, to, -Measures.HALF_STAFF - OFF_STAFF + OVER_TIP)
                                        - OVER_TIP
                                        - box.getMaxY()
                                : signs.bottom(from, to, Measures.HALF_STAFF + OFF_STAFF - OVER_TIP)
                                        + OVER_TIP
                                        - box.getMinY();
                signs.glyph(
                        sign == Sign.ACCENT ? Kind.ACCENT : Kind.OPEN_OR_CLOSED,
                        glyph,
                        1,
                        x,
                        y,
                        owner);
            }
        }
    }
}
