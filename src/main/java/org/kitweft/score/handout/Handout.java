package org.kitweft.score.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.kitweft.kit.SoundName;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.engrave.TooDenseException;
import org.kitweft.score.font.TextFont;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.LegendEntry;
import org.kitweft.score.model.Score;
import org.kitweft.score.page.LegendBlock;
import org.kitweft.score.page.Progress;
import org.kitweft.score.page.Sheet;
import org.kitweft.score.page.Sheets;

/**
 * Lays a lesson out on sheets, ready for {@code PdfFile} or {@code SheetPrinter}. Immutable and
 * safe to share between threads.
 */
public final class Handout {
    private static final double MARGIN = 42;
    private static final double TITLE_SIZE = 21;
    private static final double TEXT_SIZE = 10;
    private static final double LINE = 13.5;
    private static final double FOOT = 24;

    private static final double FOOT_SIZE = 8;
    private static final double LEGEND_NAME_SIZE = 8.5;
    private static final double FOOT_LINE = 10;
    private static final double PAGE_NUMBER_ROOM = 50;

    /** The room to write a name on. */
    private static final double NAME_ROOM = 100;

    private static final double LEAST_NAME_WIDTH = 190;
    private static final double BESIDE_NAME = 20;

    private final Engraver engraver;
    private final HandoutSettings settings;
    private final double width;
    private final List<String> nameLines;
    private final double nameWidth;
    private final List<String> footLines;

    /** A handout with these settings. */
    public Handout(Engraver engraver, HandoutSettings settings) {
        this.engraver = Objects.requireNonNull(engraver, "engraver");
        this.settings = Objects.requireNonNull(settings, "settings");
        this.width = settings.paper().width() - 2 * MARGIN;
        TextFont font = engraver.fonts().text();
        this.nameLines =
                Words.lines(
                        font,
                        TextStyle.REGULAR,
                        TEXT_SIZE,
                        settings.nameLine(),
                        width / 2 - NAME_ROOM);
        double words =
                nameLines.stream()
                        .mapToDouble(line -> font.width(TextStyle.REGULAR, TEXT_SIZE, line))
                        .max()
                        .orElse(0);
        this.nameWidth = Math.max(LEAST_NAME_WIDTH, words + NAME_ROOM);
        this.footLines =
                Words.lines(
                        font,
                        TextStyle.REGULAR,
                        FOOT_SIZE,
                        settings.footer(),
                        width - PAGE_NUMBER_ROOM);
    }

    /**
     * Lays out a lesson.
     *
     * @param progress hears of each item
     * @throws IllegalArgumentException if the lesson has neither items nor phrases
     * @throws TooDenseException naming the bar, if one does not fit the page
     * @throws java.util.concurrent.CancellationException if {@code progress} stops it
     */
    public Sheets sheets(Lesson lesson, Progress progress) {
        if (lesson.items().isEmpty() && lesson.phrases().isEmpty()) {
            throw new IllegalArgumentException(
                    "the lesson \"%s\" has no items: a handout needs at least one groove"
                            .formatted(lesson.title()));
        }
        List<Block> blocks = new ArrayList<>(opening(lesson));
        ItemBlocks itemBlocks = new ItemBlocks(engraver, settings, MARGIN, width);
        Map<Object, Score> legends = new LinkedHashMap<>();
        int number = 1;
        for (LessonItem item : lesson.items()) {
            progress.check(number - 1, lesson.items().size());
            Score score = itemBlocks.score(item);
            blocks.addAll(itemBlocks.blocks(number, item, score));
            legends.merge(score.kit().name(), score, Handout::withBothLegends);
            number++;
        }
        PhraseBlocks phraseBlocks = new PhraseBlocks(engraver, settings, MARGIN, width);
        for (LessonPhrase phrase : lesson.phrases()) {
            Score score = phraseBlocks.score(phrase);
            blocks.addAll(phraseBlocks.blocks(number, phrase, score));
            legends.merge(score.kit().name(), score, Handout::withBothLegends);
            number++;
        }
        progress.check(lesson.items().size(), lesson.items().size());
        if (settings.legend()) {
            for (Score score : legends.values()) {
                legend(score, legends.size() > 1).ifPresent(blocks::add);
            }
        }
        ClosingBlocks closing = new ClosingBlocks(engraver.fonts().text(), MARGIN, width);
        if (settings.practiceLog()) {
            blocks.add(closing.practiceLog());
        }
        if (settings.careNotes()) {
            blocks.add(closing.careNotes());
        }
        return paginate(lesson.title(), blocks);
    }

    /** What the noteheads of a kit mean; which kit, if there are several. */
    private Optional<Block> legend(Score score, boolean named) {
        LegendBlock legend = new LegendBlock(engraver, score, width);
        if (legend.isEmpty()) {
            return Optional.empty();
        }
        double name = named ? LEGEND_NAME_SIZE + 4 : 0;
        return Optional.of(
                new Block(
                        name + legend.height() + 14,
                        false,
                        (signs, y) -> {
                            if (named) {
                                signs.text(
                                        Kind.ASIDE,
                                        score.kit().name(),
                                        TextStyle.ITALIC,
                                        LEGEND_NAME_SIZE,
                                        MARGIN,
                                        y + LEGEND_NAME_SIZE,
                                        Owner.NONE);
                            }
                            legend.place(signs, MARGIN, y + name);
                        }));
    }

    private static Score withBothLegends(Score one, Score other) {
        Map<SoundName, LegendEntry> entries = new LinkedHashMap<>();
        one.legend().forEach(e -> entries.put(e.sound(), e));
        other.legend().forEach(e -> entries.putIfAbsent(e.sound(), e));
        List<LegendEntry> sorted = new ArrayList<>(entries.values());
        sorted.sort((a, b) -> Integer.compare(b.place().diatonic(), a.place().diatonic()));
        return new Score(one.kit(), one.clef(), one.tempo(), one.measures(), sorted);
    }

    private List<Block> opening(Lesson lesson) {
        List<Block> blocks = new ArrayList<>();
        List<String> titleLines =
                Words.lines(
                        engraver.fonts().text(),
                        TextStyle.BOLD,
                        TITLE_SIZE,
                        lesson.title(),
                        width - (nameLines.isEmpty() ? 0 : nameWidth + BESIDE_NAME));
        double titleHeight =
                Math.max(
                        Math.max(1, titleLines.size()) * TITLE_SIZE * 1.15,
                        TITLE_SIZE + (nameLines.size() - 1) * LINE);
        blocks.add(
                new Block(
                        titleHeight + 12,
                        true,
                        (signs, y) -> {
                            double at = y;
                            for (String line : titleLines) {
                                at += TITLE_SIZE * 1.15;
                                signs.text(
                                        Kind.TEXT,
                                        line,
                                        TextStyle.BOLD,
                                        TITLE_SIZE,
                                        MARGIN,
                                        at - TITLE_SIZE * 0.15,
                                        Owner.NONE);
                            }
                            nameLine(signs, y + TITLE_SIZE);
                        }));
        List<String> remarks =
                Words.lines(
                        engraver.fonts().text(),
                        TextStyle.REGULAR,
                        TEXT_SIZE,
                        lesson.remarks(),
                        width);
        for (int i = 0; i < remarks.size(); i++) {
            String line = remarks.get(i);
            boolean last = i == remarks.size() - 1;
            blocks.add(
                    new Block(
                            LINE + (last ? 14 : 0),
                            last,
                            (signs, y) ->
                                    signs.text(
                                            Kind.TEXT,
                                            line,
                                            TextStyle.REGULAR,
                                            TEXT_SIZE,
                                            MARGIN,
                                            y + TEXT_SIZE,
                                            Owner.NONE)));
        }
        return blocks;
    }

    /** The words, and after the last of them a line to write on. */
    private void nameLine(SignList signs, double base) {
        double from = MARGIN + width - nameWidth;
        for (int i = 0; i < nameLines.size(); i++) {
            String words = nameLines.get(i);
            double at = base + i * LINE;
            signs.text(Kind.ASIDE, words, TextStyle.REGULAR, TEXT_SIZE, from, at, Owner.NONE);
            if (i == nameLines.size() - 1) {
                double end = signs.fonts().text().width(TextStyle.REGULAR, TEXT_SIZE, words);
                Lines.across(signs, from + end + 6, MARGIN + width, at + 1.5);
            }
        }
    }

    /** Fills pages from above; a heading goes with what it is about to the next page. */
    private Sheets paginate(String title, List<Block> blocks) {
        double bottom =
                settings.paper().height()
                        - MARGIN
                        - FOOT
                        - Math.max(0, footLines.size() - 1) * FOOT_LINE;
        List<SignList> pages = new ArrayList<>();
        SignList page = new SignList(engraver.fonts());
        pages.add(page);
        double y = MARGIN;
        for (int i = 0; i < blocks.size(); i++) {
            double needed = together(blocks, i);
            boolean fitsFreshPage = needed <= bottom - MARGIN;
            double measured = fitsFreshPage ? needed : blocks.get(i).height();
            if (y + measured > bottom && y > MARGIN) {
                page = new SignList(engraver.fonts());
                pages.add(page);
                y = MARGIN;
            }
            blocks.get(i).draw().accept(page, y);
            y += blocks.get(i).height();
        }
        List<Sheet> sheets = new ArrayList<>();
        Set<String> unwritable = new LinkedHashSet<>();
        for (int i = 0; i < pages.size(); i++) {
            foot(pages.get(i), i + 1, pages.size());
            unwritable.addAll(pages.get(i).unwritable());
            sheets.add(
                    new Sheet(
                            settings.paper().width(),
                            settings.paper().height(),
                            pages.get(i).signs()));
        }
        return new Sheets(title, sheets, List.copyOf(unwritable));
    }

    private static double together(List<Block> blocks, int from) {
        double height = 0;
        for (int i = from; i < blocks.size(); i++) {
            height += blocks.get(i).height();
            if (!blocks.get(i).keepsWithNext()) {
                break;
            }
        }
        return height;
    }

    private void foot(SignList signs, int number, int of) {
        double base = settings.paper().height() - MARGIN;
        double size = FOOT_SIZE;
        double at = base - (footLines.size() - 1) * FOOT_LINE;
        for (String line : footLines) {
            signs.text(Kind.ASIDE, line, TextStyle.REGULAR, size, MARGIN, at, Owner.NONE);
            at += FOOT_LINE;
        }
        if (of > 1) {
            String words = number + " / " + of;
            double textWidth = signs.fonts().text().width(TextStyle.REGULAR, size, words);
            signs.text(
                    Kind.ASIDE,
                    words,
                    TextStyle.REGULAR,
                    size,
                    MARGIN + width - textWidth,
                    base,
                    Owner.NONE);
        }
    }
}
