package org.kitweft.ui.phrase;

import java.util.OptionalInt;
import org.kitweft.groove.PhrasePlan;

/**
 * Where the sections of a phrase lie on a strip: as wide as they have bars, but never too narrow to
 * be read and caught. Immutable; knows no pixels of its own.
 *
 * @param phrase the sections
 * @param width of the strip
 * @param least the least width of a section, where the strip is wide enough for all
 */
record StripPlan(PhrasePlan phrase, double width, double least) {

    /** Where a section begins; that of the number of sections is the end of the strip. */
    double x(int index) {
        int count = phrase.sections().size();
        double floor = Math.min(least, width / count);
        double shared = width - floor * count;
        double x = 0;
        for (int i = 0; i < index; i++) {
            x += floor + shared * phrase.sections().get(i).bars() / phrase.bars();
        }
        return x;
    }

    /** Where a bar, counted from 1, or a part of it, lies: 1.5 is the middle of the first. */
    double xOfBar(double bar) {
        int last = phrase.sections().size() - 1;
        int index = last;
        while (index > 0 && phrase.firstBar(index) > bar) {
            index--;
        }
        double part = (bar - phrase.firstBar(index)) / phrase.sections().get(index).bars();
        return x(index) + (x(index + 1) - x(index)) * Math.max(0, Math.min(1, part));
    }

    /** The section at a point; empty beside the strip. */
    OptionalInt at(double x) {
        for (int i = 0; i < phrase.sections().size(); i++) {
            if (x >= x(i) && x < x(i + 1)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The section whose right edge lies within reach of a point: there it is lengthened. */
    OptionalInt edgeAt(double x, double reach) {
        for (int i = 0; i < phrase.sections().size(); i++) {
            if (Math.abs(x - x(i + 1)) <= reach) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The place that a section dropped at a point would take. */
    int placeAt(double x) {
        int place = 0;
        for (int i = 1; i < phrase.sections().size(); i++) {
            if (x >= x(i)) {
                place = i;
            }
        }
        return place;
    }

    /** Bars that a way along the strip is worth at a section. */
    double bars(int index, double way) {
        double wide = x(index + 1) - x(index);
        return way * phrase.sections().get(index).bars() / wide;
    }
}
