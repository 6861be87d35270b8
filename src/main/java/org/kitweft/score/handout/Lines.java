package org.kitweft.score.handout;

import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;

/** Straight lines on a page. */
final class Lines {
    private static final double THICKNESS = 0.6;

    private Lines() {}

    static void across(SignList signs, double x1, double x2, double y) {
        signs.box(Kind.DRAWING, x1, y - THICKNESS / 2, x2, y + THICKNESS / 2, Owner.NONE);
    }

    static void down(SignList signs, double x, double y1, double y2) {
        signs.box(Kind.DRAWING, x - THICKNESS / 2, y1, x + THICKNESS / 2, y2, Owner.NONE);
    }

    static void box(SignList signs, double x, double y, double width, double height) {
        across(signs, x, x + width, y);
        across(signs, x, x + width, y + height);
        down(signs, x, y, y + height);
        down(signs, x + width, y, y + height);
    }
}
