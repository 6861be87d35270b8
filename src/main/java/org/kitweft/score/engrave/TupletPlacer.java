package org.kitweft.score.engrave;

import java.util.List;
import java.util.function.Function;
import org.kitweft.score.font.Glyph;
import org.kitweft.score.font.MusicFont;
import org.kitweft.score.model.Event;
import org.kitweft.score.model.Tuplet;
import org.kitweft.score.model.Voice;

/** Places the number of a tuplet on its stems' side, with a bracket where no beam joins it. */
final class TupletPlacer {
    private static final double OVER_SIGNS = 0.35;
    private static final double HOOK = 0.7;
    private static final double NUMBER_GAP = 0.35;

    /** Bravura's tuplet digits are one and a half spaces high: a little loud under 16ths. */
    private static final double SCALE = 0.85;

    private final MusicFont font;
    private final SignList signs;
    private final int measure;

    TupletPlacer(MusicFont font, SignList signs, int measure) {
        this.font = font;
        this.signs = signs;
        this.measure = measure;
    }

    /** From where to where an event is inked, and where its stem is. */
    record Reach(double left, double right, double stem) {}

    void place(Voice voice, Tuplet tuplet, Function<Event, Reach> reachOf, boolean up) {
        List<Event> events = voice.events().subList(tuplet.first(), tuplet.last() + 1);
        Owner owner = Owner.of(measure, voice.number(), events.get(0).tick());
        Reach first = reachOf.apply(events.get(0));
        Reach last = reachOf.apply(events.get(events.size() - 1));
        double from = tuplet.bracket() ? first.left() : first.stem();
        double to = tuplet.bracket() ? last.right() : last.stem();
        double middle = (from + to) / 2;
        double width = width(tuplet.actual());
        double height = font.bounds(Glyph.TUPLET_3).getHeight() * SCALE;
        double edge;
        if (tuplet.bracket()) {
            edge = up ? signs.top(from, to, -2) : signs.bottom(from, to, 2);
        } else {
            double near = width / 2 + 0.1;
            edge =
                    up
                            ? signs.top(middle - near, middle + near, -2)
                            : signs.bottom(middle - near, middle + near, 2);
        }
        double side = up ? -1 : 1;
        if (!tuplet.bracket()) {
            double y = edge + side * OVER_SIGNS + (up ? 0 : height);
            number(tuplet.actual(), middle - width / 2, y, owner);
            return;
        }
        double line = edge + side * (OVER_SIGNS + HOOK);
        number(tuplet.actual(), middle - width / 2, line + height / 2, owner);
        double half = font.recommended("tupletBracketThickness") / 2;
        double gapFrom = middle - width / 2 - NUMBER_GAP;
        double gapTo = middle + width / 2 + NUMBER_GAP;
        if (gapFrom > from + 0.2) {
            bracket(from, gapFrom, line, half, owner);
            bracket(gapTo, to, line, half, owner);
        }
        hook(from, line, side, half, owner);
        hook(to - 2 * half, line, side, half, owner);
    }

    private void bracket(double x1, double x2, double y, double half, Owner owner) {
        signs.box(Kind.TUPLET_BRACKET, x1, y - half, x2, y + half, owner);
    }

    private void hook(double x, double line, double side, double half, Owner owner) {
        double end = line - side * HOOK;
        signs.box(
                Kind.TUPLET_BRACKET,
                x,
                Math.min(line - half, end),
                x + 2 * half,
                Math.max(line + half, end),
                owner);
    }

    private double width(int number) {
        return SCALE
                * Integer.toString(number)
                        .chars()
                        .mapToDouble(d -> font.advance(HeadGlyphs.tupletDigit((char) d)))
                        .sum();
    }

    private void number(int number, double x, double y, Owner owner) {
        double at = x;
        for (char digit : Integer.toString(number).toCharArray()) {
            Glyph glyph = HeadGlyphs.tupletDigit(digit);
            signs.glyph(Kind.TUPLET_NUMBER, glyph, SCALE, at, y, owner);
            at += font.advance(glyph) * SCALE;
        }
    }
}
