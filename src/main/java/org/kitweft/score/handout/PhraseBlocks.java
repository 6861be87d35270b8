package org.kitweft.score.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kitweft.band.Backing;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.band.Style;
import org.kitweft.groove.Meter;
import org.kitweft.lesson.LessonPhrase;
import org.kitweft.score.engrave.EngravedSystem;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.TempoSign;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.score.model.Score;
import org.kitweft.score.page.ScorePage;

/**
 * The blocks of one phrase: heading, its sections and band in a line, the staff with chord symbols
 * over it, tempo steps and remarks.
 */
final class PhraseBlocks {
    private static final double HEADING_SIZE = 13;
    private static final double TEXT_SIZE = 9.5;
    private static final double LINE = 12.5;
    private static final double AFTER_STAFF = 12;
    private static final double AFTER_ALL = 18;
    private static final double TEMPO_WIDTH = 60;

    private final Engraver engraver;
    private final HandoutSettings settings;
    private final double left;
    private final double width;

    PhraseBlocks(Engraver engraver, HandoutSettings settings, double left, double width) {
        this.engraver = engraver;
        this.settings = settings;
        this.left = left;
        this.width = width;
    }

    /**
     * The score of a phrase: not counted, for its bars stand close, and with chords over them all
     * written out.
     */
    Score score(LessonPhrase phrase) {
        return Notation.of(
                phrase.plan().weave(),
                settings.notation().withCounting(false),
                PlayedWith.NOTHING.withChart(
                        phrase.playingBand()
                                .map(band -> band.chart().first(phrase.plan().bars()))));
    }

    List<Block> blocks(int number, LessonPhrase phrase, Score score) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(heading(number, phrase));
        List<String> about = words(sections(phrase) + band(phrase));
        blocks.add(lines(about, true, 6));
        ScorePage.Scaled scaled = ScorePage.engrave(engraver, score, width);
        for (EngravedSystem system : scaled.engraved().systems()) {
            blocks.add(
                    new Block(
                            system.height() * scaled.space() + AFTER_STAFF,
                            false,
                            (signs, y) -> ScorePage.place(signs, system, scaled.space(), left, y)));
        }
        blocks.add(practice(phrase));
        return blocks;
    }

    private Block heading(int number, LessonPhrase phrase) {
        String title = phrase.title().isBlank() ? "Phrase" : phrase.title();
        return new Block(
                HEADING_SIZE + 10,
                true,
                (signs, y) -> {
                    double base = y + HEADING_SIZE;
                    Meter meter = phrase.plan().sections().get(0).recipe().grid().meter();
                    String words =
                            Words.lines(
                                            signs.fonts().text(),
                                            TextStyle.BOLD,
                                            HEADING_SIZE,
                                            number + "   " + title,
                                            width - TEMPO_WIDTH)
                                    .get(0);
                    signs.text(
                            Kind.TEXT, words, TextStyle.BOLD, HEADING_SIZE, left, base, Owner.NONE);
                    TempoSign tempo = new TempoSign(phrase.tempo(), meter, TEXT_SIZE);
                    double at = left + width - tempo.width(signs.fonts());
                    tempo.place(signs, Kind.TEXT, at, base, Owner.NONE);
                });
    }

    /** What the phrase consists of: {@code 6 bars of time, 1 bar of fill, 1 bar of punch}. */
    private static String sections(LessonPhrase phrase) {
        return phrase.plan().sections().stream()
                .map(s -> (s.bars() == 1 ? "1 bar" : s.bars() + " bars") + " of " + s.role().id())
                .collect(Collectors.joining(", "));
    }

    private static String band(LessonPhrase phrase) {
        if (phrase.playingBand().isEmpty()) {
            return "";
        }
        Backing band = phrase.playingBand().get();
        Style style = BuiltInStyles.load(band.style());
        return ".  Band: "
                + style.title()
                + (style.hasClave() ? ", clave " + band.clave().id() : "")
                + ".";
    }

    private List<String> words(String text) {
        return Words.lines(engraver.fonts().text(), TextStyle.REGULAR, TEXT_SIZE, text, width);
    }

    private Block lines(List<String> lines, boolean keepsWithNext, double after) {
        return new Block(
                lines.size() * LINE + after,
                keepsWithNext,
                (signs, y) -> {
                    double at = y;
                    for (String line : lines) {
                        at += LINE;
                        signs.text(
                                Kind.ASIDE,
                                line,
                                TextStyle.REGULAR,
                                TEXT_SIZE,
                                left,
                                at - 2,
                                Owner.NONE);
                    }
                });
    }

    private Block practice(LessonPhrase phrase) {
        TempoBoxes boxes = TempoBoxes.of(phrase.tempoSteps(), phrase.tempo(), width);
        List<String> remarks = words(phrase.remarks());
        return new Block(
                boxes.height() + remarks.size() * LINE + AFTER_ALL,
                false,
                (signs, y) -> {
                    boxes.place(signs, left, y);
                    double at = y + boxes.height() - 2;
                    for (String line : remarks) {
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
}
