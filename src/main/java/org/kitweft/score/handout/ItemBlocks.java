package org.kitweft.score.handout;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Section;
import org.kitweft.lesson.LessonItem;
import org.kitweft.score.engrave.EngravedSystem;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.Kind;
import org.kitweft.score.engrave.Owner;
import org.kitweft.score.engrave.SignList;
import org.kitweft.score.engrave.TempoSign;
import org.kitweft.score.font.TextStyle;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.Score;
import org.kitweft.score.page.ScorePage;

/** The blocks of one item: heading, lines of the staff, kit with tempo steps and remarks. */
final class ItemBlocks {
    private static final double HEADING_SIZE = 13;
    private static final double HEADING_LINE = 15.5;
    private static final double TEMPO_ROOM = 110;
    private static final double TEXT_SIZE = 9.5;
    private static final double LINE = 12.5;
    private static final double AFTER_STAFF = 12;
    private static final double KIT_WIDTH = 178;
    private static final double KIT_HEIGHT = 114;

    private final Engraver engraver;
    private final HandoutSettings settings;
    private final double left;
    private final double width;

    ItemBlocks(Engraver engraver, HandoutSettings settings, double left, double width) {
        this.engraver = engraver;
        this.settings = settings;
        this.left = left;
        this.width = width;
    }

    /** The score of an item. */
    Score score(LessonItem item) {
        Phrase phrase = new Phrase(List.of(new Section(item.role(), item.recipe().weave())));
        return Notation.of(phrase, settings.notation());
    }

    List<Block> blocks(int number, LessonItem item, Score score) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(heading(number, item));
        ScorePage.Scaled scaled = ScorePage.engrave(engraver, score, width);
        List<EngravedSystem> systems = scaled.engraved().systems();
        for (int i = 0; i < systems.size(); i++) {
            EngravedSystem system = systems.get(i);
            blocks.add(
                    new Block(
                            system.height() * scaled.space() + AFTER_STAFF,
                            i == systems.size() - 1,
                            (signs, y) -> ScorePage.place(signs, system, scaled.space(), left, y)));
        }
        blocks.add(practice(item, item.recipe().weave()));
        return blocks;
    }

    private Block heading(int number, LessonItem item) {
        String title = item.title().isBlank() ? item.recipe().sticking().text() : item.title();
        String numbered = number + "   ";
        double indent = engraver.fonts().text().width(TextStyle.BOLD, HEADING_SIZE, numbered);
        List<String> lines =
                Words.lines(
                        engraver.fonts().text(),
                        TextStyle.BOLD,
                        HEADING_SIZE,
                        title,
                        width - indent - TEMPO_ROOM);
        return new Block(
                HEADING_SIZE + 12 + (lines.size() - 1) * HEADING_LINE,
                true,
                (signs, y) -> {
                    double base = y + HEADING_SIZE;
                    signs.text(
                            Kind.TEXT,
                            Integer.toString(number),
                            TextStyle.BOLD,
                            HEADING_SIZE,
                            left,
                            base,
                            Owner.NONE);
                    tempo(signs, item, base);
                    for (String line : lines) {
                        signs.text(
                                Kind.TEXT,
                                line,
                                TextStyle.BOLD,
                                HEADING_SIZE,
                                left + indent,
                                base,
                                Owner.NONE);
                        base += HEADING_LINE;
                    }
                });
    }

    /** What the item is for, and its tempo with the note that is the beat. */
    private void tempo(SignList signs, LessonItem item, double base) {
        TempoSign sign = new TempoSign(item.tempo(), item.recipe().grid().meter(), TEXT_SIZE);
        double x = left + width - sign.width(signs.fonts());
        sign.place(signs, Kind.TEXT, x, base, Owner.NONE);
        String role = item.role().id();
        x -= signs.fonts().text().width(TextStyle.REGULAR, TEXT_SIZE, role) + 10;
        signs.text(Kind.ASIDE, role, TextStyle.REGULAR, TEXT_SIZE, x, base, Owner.NONE);
    }

    private Block practice(LessonItem item, Groove groove) {
        double textLeft = left + (settings.kit() ? KIT_WIDTH + 18 : 0);
        double textWidth = left + width - textLeft;
        List<String> lines =
                Words.lines(
                        engraver.fonts().text(),
                        TextStyle.REGULAR,
                        TEXT_SIZE,
                        item.remarks(),
                        textWidth);
        TempoBoxes boxes = TempoBoxes.of(item.tempoSteps(), item.tempo(), textWidth);
        double textHeight = lines.size() * LINE + boxes.height() + 8;
        double height = Math.max(settings.kit() ? KIT_HEIGHT : 0, textHeight) + 18;
        return new Block(
                height,
                false,
                (signs, y) -> {
                    if (settings.kit()) {
                        new KitPicture(groove).place(signs, left, y, KIT_WIDTH, KIT_HEIGHT);
                    }
                    double at = y + 4;
                    boxes.place(signs, textLeft, at);
                    at += boxes.height() + 4;
                    for (String line : lines) {
                        at += LINE;
                        signs.text(
                                Kind.TEXT,
                                line,
                                TextStyle.REGULAR,
                                TEXT_SIZE,
                                textLeft,
                                at,
                                Owner.NONE);
                    }
                });
    }
}
