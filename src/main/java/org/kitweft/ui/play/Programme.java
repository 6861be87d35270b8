package org.kitweft.ui.play;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.core.ArithmeticUtils;
import org.kitweft.band.Backing;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Section;
import org.kitweft.sound.Playable;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.SessionModel;

/**
 * What a session plays: its phrase or its groove, with the band where that is on. It also knows
 * where the steps that a player tells of stand in what is written and in the grid. Immutable;
 * {@link #playable()} may take a while, all else is quick.
 *
 * <p>A groove that a band plays with comes round until the chart and the style's figures have come
 * round too, and for {@value #FEWEST_BARS} bars at least, so that what the seed varies is heard.
 *
 * @param phrase whether a phrase plays, and not the groove in the grid
 * @param written what the staff shows
 * @param grid what the grid shows
 * @param open which section of what is written the grid shows, if one
 * @param band what is asked of the band; empty: it does not play
 */
record Programme(
        boolean phrase, Phrase written, Groove grid, OptionalInt open, Optional<Backing> band) {
    private static final int FEWEST_BARS = 4;

    Programme {
        Objects.requireNonNull(written, "written");
        Objects.requireNonNull(grid, "grid");
        Objects.requireNonNull(open, "open");
        Objects.requireNonNull(band, "band");
    }

    /** What a session plays now. */
    static Programme of(SessionModel session) {
        PhraseDraft draft = session.session().draft();
        return new Programme(
                draft.plays(),
                session.phrase(),
                session.groove(),
                draft.plays() ? draft.open() : OptionalInt.of(0),
                Optional.of(draft.backing()).filter(Backing::on));
    }

    /** Whether nothing else is heard than of another: the grid may show something else. */
    boolean soundsLike(Programme other) {
        return phrase == other.phrase && written.equals(other.written) && band.equals(other.band);
    }

    /** What is played, worked out now. */
    Playable playable() {
        Phrase all = comingRound();
        return band.map(b -> Playable.of(all, b.arrangement(all.bars())))
                .orElseGet(() -> Playable.of(all));
    }

    /** The drums alone, at once. */
    Playable drums() {
        return Playable.of(comingRound());
    }

    private Phrase comingRound() {
        if (band.isEmpty() || phrase) {
            return written;
        }
        Section section = written.sections().get(0);
        List<Section> round = new ArrayList<>();
        for (int i = 0; i < times(section.groove()); i++) {
            round.add(section);
        }
        return new Phrase(round);
    }

    private int times(Groove groove) {
        Backing backing = band.orElseThrow();
        int figures = BuiltInStyles.load(backing.style()).figureBars(groove.grid());
        long bars = ArithmeticUtils.lcm((long) groove.bars(), backing.chart().bars().size());
        bars = ArithmeticUtils.lcm(bars, figures);
        long few = bars * ((FEWEST_BARS + bars - 1) / bars);
        return (int) Math.max(1, Math.min(few, Groove.MAX_BARS) / groove.bars());
    }

    /** Where a step that the player tells of stands in what is written; empty: no longer there. */
    Optional<Place> written(Place told) {
        int inWritten = phrase ? told.bar() : (told.bar() - 1) % written.bars() + 1;
        return inWritten <= written.bars()
                ? Optional.of(new Place(inWritten, told.step()))
                : Optional.empty();
    }

    /** Where a step of what is written stands in the grid, if it is there. */
    Optional<Place> inGrid(Place place) {
        if (open.isEmpty()) {
            return Optional.empty();
        }
        int before = 0;
        for (int i = 0; i < open.getAsInt(); i++) {
            before += written.sections().get(i).groove().bars();
        }
        int inSection = place.bar() - before;
        boolean there =
                inSection >= 1
                        && inSection <= written.sections().get(open.getAsInt()).groove().bars();
        return there
                ? Optional.of(new Place((inSection - 1) % grid.bars() + 1, place.step()))
                : Optional.empty();
    }
}
