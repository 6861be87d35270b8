package org.kitweft.score.handout;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;

/** What stands once at the end of a handout: practice log and care notes. */
final class ClosingBlocks {
    private static final double TITLE_SIZE = 10.5;
    private static final double TEXT_SIZE = 8;
    private static final double LINE = 10.5;
    private static final double ROW = 18;
    private static final int ROWS = 6;
    private static final List<String> COLUMNS =
            List.of("Date", "Item", "Tempo", "Minutes", "What went well, what comes next");
    private static final double[] SHARES = {0.14, 0.09, 0.1, 0.1, 0.57};
    private static final char NO_BREAK = '\u00A0';
    private static final int[] LEVELS = {85, 88, 91, 94, 97, 100, 103};

    private final TextFont font;
    private final double left;
    private final double width;

    ClosingBlocks(TextFont font, double left, double width) {
        this.font = font;
        this.left = left;
        this.width = width;
    }

    Block practiceLog() {
        return new Block(
                TITLE_SIZE + 8 + (ROWS + 1) * ROW + 16,
                false,
                (signs, y) -> {
                    title(signs, "Practice log", y);
                    double top = y + TITLE_SIZE + 8;
                    double bottom = top + (ROWS + 1) * ROW;
                    for (int row = 0; row <= ROWS + 1; row++) {
                        Lines.across(signs, left, left + width, top + row * ROW);
                    }
                    double x = left;
                    for (int column = 0; column < SHARES.length; column++) {
                        Lines.down(signs, x, top, bottom);
                        signs.text(
                                Kind.ASIDE,
                                COLUMNS.get(column),
                                TextStyle.REGULAR,
                                TEXT_SIZE,
                                x + 4,
                                top + ROW - 6,
                                Owner.NONE);
                        x += SHARES[column] * width;
                    }
                    Lines.down(signs, left + width, top, bottom);
                });
    }

    Block careNotes() {
        List<String> lines = new ArrayList<>();
        for (String paragraph : careTexts()) {
            lines.addAll(Words.lines(font, TextStyle.REGULAR, TEXT_SIZE, paragraph, width));
        }
        return new Block(
                TITLE_SIZE + 6 + lines.size() * LINE,
                false,
                (signs, y) -> {
                    title(signs, "Care", y);
                    double at = y + TITLE_SIZE + 4;
                    for (String line : lines) {
                        at += LINE;
                        signs.text(
                                Kind.TEXT,
                                line,
                                TextStyle.REGULAR,
                                TEXT_SIZE,
                                left,
                                at,
                                Owner.NONE);
                    }
                });
    }

    private void title(SignList signs, String words, double y) {
        signs.text(
                Kind.TEXT, words, TextStyle.SEMIBOLD, TITLE_SIZE, left, y + TITLE_SIZE, Owner.NONE);
    }

    /** The care notes: usual cautions, exposure times by formula, and who comes first. */
    static List<String> careTexts() {
        StringBuilder times = new StringBuilder();
        for (int level : LEVELS) {
            times.append(times.isEmpty() ? "" : ", ")
                    .append(level)
                    .append(" dBA ")
                    .append(NoiseExposure.words(level).replace(' ', NO_BREAK));
        }
        return List.of(
                "Start slow and soft, and take a pause before you are tired. Stop when something"
                        + " hurts, tingles or goes numb, and when your ears ring.",
                "Drums are loud: wear hearing protection. A working day at these levels is within the"
                        + " limit recommended in NIOSH 98-126 for at most: "
                        + times
                        + "; half the time for every 3 dB more, nothing above "
                        + NoiseExposure.CEILING_DBA
                        + " dBA.",
                "These are general notes: local rules and a clinician or audiologist come first.");
    }
}
