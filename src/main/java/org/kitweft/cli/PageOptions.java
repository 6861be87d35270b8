package org.kitweft.cli;

import java.util.Locale;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.page.Paper;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How what is printed looks. */
final class PageOptions {
    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            converter = PaperName.class,
            description = "Paper of a PDF document; a4 where nothing is said.")
    private Paper paper = Paper.A4;

    @Option(names = "--no-counting", description = "No counting line under the printed staff.")
    private boolean noCounting;

    @Option(
            names = "--one-voice",
            description = "Hands and feet in one voice on the staff, all stems up.")
    private boolean oneVoice;

    @Option(names = "--no-legend", description = "No legend of the noteheads on the printed page.")
    private boolean noLegend;

    Paper paper() {
        return paper;
    }

    boolean legend() {
        return !noLegend;
    }

    /** The staff as it is printed. */
    NotationOptions printed() {
        return staff().withCounting(!noCounting);
    }

    /** The staff as it stands alone. */
    NotationOptions staff() {
        return NotationOptions.DEFAULT.withOneVoice(oneVoice);
    }

    HandoutSettings handout() {
        HandoutSettings usual = HandoutSettings.DEFAULT;
        return usual.withPaper(paper)
                .withLegend(legend())
                .withNotation(usual.notation().withOneVoice(oneVoice).withCounting(!noCounting));
    }

    /** Reads the name of a size of paper. */
    static final class PaperName implements ITypeConverter<Paper> {
        @Override
        public Paper convert(String name) {
            for (Paper paper : Paper.values()) {
                if (paper.id().equals(name.toLowerCase(Locale.ROOT))) {
                    return paper;
                }
            }
            throw new TypeConversionException(
                    "\"" + name + "\" is no paper, expected a4 or letter");
        }
    }
}
