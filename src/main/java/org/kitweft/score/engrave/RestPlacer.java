package org.kitweft.score.engrave;

import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Set;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.model.Event;
import org.kitweft.score.model.NoteValue;
import org.kitweft.score.model.Rest;
import org.kitweft.score.model.Voice;

/**
 * Places rests: on the middle of the staff where one voice plays, higher and lower where two do,
 * and out of the way of notes. Where both voices rest alike, one rest says it.
 */
final class RestPlacer {
    private static final double CLEAR = 0.15;
    private static final int MOST_STEPS = 12;
    private static final double FIRST_VOICE_Y = -1;
    private static final double SECOND_VOICE_Y = 2;
    private static final Set<Kind> OBSTACLES =
            EnumSet.of(
                    Kind.HEAD,
                    Kind.PARENTHESIS,
                    Kind.ACCIDENTAL,
                    Kind.DOT,
                    Kind.STEM,
                    Kind.FLAG,
                    Kind.BEAM,
                    Kind.BUZZ,
                    Kind.TIE,
                    Kind.SLUR,
                    Kind.REST,
                    Kind.LEDGER_LINE,
                    Kind.GRACE_HEAD,
                    Kind.GRACE_STEM);

    private final SignList signs;
    private final int measure;
    private final NavigableMap<Long, Double> columnXs;
    private final double start;
    private final double end;

    RestPlacer(
            SignList signs,
            int measure,
            NavigableMap<Long, Double> columnXs,
            double start,
            double end) {
        this.signs = signs;
        this.measure = measure;
        this.columnXs = columnXs;
        this.start = start;
        this.end = end;
    }

    void place(List<Voice> voices) {
        for (Voice voice : voices) {
            for (Event event : voice.events()) {
                if (event instanceof Rest rest) {
                    boolean alike =
                            voices.size() > 1
                                    && voices.stream().allMatch(v -> v.events().contains(rest));
                    if (!alike) {
                        place(rest, voice, voices.size() > 1);
                    } else if (voice.number() == voices.get(0).number()) {
                        place(rest, voice, false);
                    }
                }
            }
        }
    }

    private void place(Rest rest, Voice voice, boolean shared) {
        Glyph glyph = HeadGlyphs.rest(rest.value());
        Owner owner = Owner.of(measure, voice.number(), rest.tick());
        Rectangle2D own = signs.fonts().music().bounds(glyph);
        double x = Objects.requireNonNull(columnXs.get(rest.tick()));
        if (rest.wholeBar()) {
            x = (start + end - Measures.AFTER_BAR_LINE) / 2 - own.getCenterX();
        }
        // A whole rest hangs from the line above the middle one.
        double base = rest.value() == NoteValue.WHOLE ? -1 : 0;
        boolean low = shared && voice.number() % 2 == 0;
        double wanted = base + (!shared ? 0 : low ? SECOND_VOICE_Y : FIRST_VOICE_Y);
        double side = low ? 1 : -1;
        double y = wanted;
        for (int step = 0; step <= MOST_STEPS && taken(glyph, x, y, rest); step++) {
            y = wanted + side * step;
        }
        signs.glyph(Kind.REST, glyph, 1, x, y, owner);
        boolean onLine = Math.abs(y - Math.rint(y)) < 0.01;
        for (int dot = 0; dot < rest.dots(); dot++) {
            signs.glyph(
                    Kind.DOT,
                    Glyph.DOT,
                    1,
                    x + own.getMaxX() + 0.3 + dot * 0.6,
                    y - (onLine ? 0.5 : 0),
                    owner);
        }
    }

    private boolean taken(Glyph glyph, double x, double y, Rest rest) {
        Rectangle2D box = signs.glyphBox(glyph, 1, x, y);
        return signs.inked(
                new Rectangle2D.Double(
                        box.getX() - CLEAR,
                        box.getY() - CLEAR,
                        box.getWidth() + 2 * CLEAR + rest.dots() * 0.8,
                        box.getHeight() + 2 * CLEAR),
                OBSTACLES::contains);
    }
}
