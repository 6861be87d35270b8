package org.kitweft.score.handout;

import java.util.Objects;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.page.Paper;

/**
 * How a handout looks. Immutable; the {@code with…} methods make changed copies.
 *
 * @param paper its size
 * @param nameLine what stands before the line for a name; empty: no such line
 * @param footer what stands at the foot of each page; may be empty
 * @param notation what is written on the staff
 * @param kit whether the kit is shown from above
 * @param legend whether the noteheads are explained
 * @param practiceLog whether there is a table to fill in
 * @param careNotes whether the care notes stand at its end
 */
public record HandoutSettings(
        Paper paper,
        String nameLine,
        String footer,
        NotationOptions notation,
        boolean kit,
        boolean legend,
        boolean practiceLog,
        boolean careNotes) {

    /** A4 with everything; nothing personal. */
    public static final HandoutSettings DEFAULT =
            new HandoutSettings(
                    Paper.A4,
                    "Name",
                    "",
                    NotationOptions.DEFAULT.withCounting(true).withFoldRepeats(true),
                    true,
                    true,
                    true,
                    true);

    public HandoutSettings {
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(nameLine, "nameLine");
        Objects.requireNonNull(footer, "footer");
        Objects.requireNonNull(notation, "notation");
    }

    /** The same on other paper. */
    public HandoutSettings withPaper(Paper other) {
        return new HandoutSettings(
                other, nameLine, footer, notation, kit, legend, practiceLog, careNotes);
    }

    /** The same with another name line. */
    public HandoutSettings withNameLine(String other) {
        return new HandoutSettings(
                paper, other, footer, notation, kit, legend, practiceLog, careNotes);
    }

    /** The same with another footer. */
    public HandoutSettings withFooter(String other) {
        return new HandoutSettings(
                paper, nameLine, other, notation, kit, legend, practiceLog, careNotes);
    }

    /** The same with other notation. */
    public HandoutSettings withNotation(NotationOptions other) {
        return new HandoutSettings(
                paper, nameLine, footer, other, kit, legend, practiceLog, careNotes);
    }

    /** The same with the kit from above or without. */
    public HandoutSettings withKit(boolean other) {
        return new HandoutSettings(
                paper, nameLine, footer, notation, other, legend, practiceLog, careNotes);
    }

    /** The same with the legend or without. */
    public HandoutSettings withLegend(boolean other) {
        return new HandoutSettings(
                paper, nameLine, footer, notation, kit, other, practiceLog, careNotes);
    }

    /** The same with the practice log or without. */
    public HandoutSettings withPracticeLog(boolean other) {
        return new HandoutSettings(
                paper, nameLine, footer, notation, kit, legend, other, careNotes);
    }

    /** The same with the care notes or without. */
    public HandoutSettings withCareNotes(boolean other) {
        return new HandoutSettings(
                paper, nameLine, footer, notation, kit, legend, practiceLog, other);
    }
}
