package org.kitweft.ui.play;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.core.ArithmeticUtils;
import org.kitweft.band.Backing;
import org.kitweft.band.BandPart;
import org.kitweft.band.BuiltInStyles;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Section;
import org.kitweft.sound.Playable;
import org.kitweft.ui.session.PhraseDraft;
import org.kitweft.ui.session.SessionModel;

/**
 * What a session plays: its phrase or its groove, with the band where that is on, whole or some
 * bars of it. It also knows where the steps that a player tells of stand in what is written and in
 * the grid. Immutable; {@link #playable()} may take a while, all else is quick.
 *
 * <p>A groove that a band plays with comes round until the chart and the style's figures have come
 * round too, and for {@value #FEWEST_BARS} bars at least, so that what the seed varies is heard.
 *
 * @param phrase whether a phrase plays, and not the groove in the grid
 * @param written what the staff shows
 * @param grid what the grid shows
 * @param open which section of what is written the grid shows, if one
 * @param band what is asked of the band; empty: it does not play
 * @param bars the bars of what is written that are played; empty: all
 */
record Programme(
        boolean phrase,
        Phrase written,
        Groove grid,
        OptionalInt open,
        Optional<Backing> band,
        Optional<Bars> bars) {
    private static final int FEWEST_BARS = 4;

    Programme {
        Objects.requireNonNull(written, "written");
        Objects.requireNonNull(grid, "grid");
        Objects.requireNonNull(open, "open");
        Objects.requireNonNull(band, "band");
        int most = written.bars();
        bars =
                bars.filter(b -> b.first() <= most)
                        .map(b -> new Bars(b.first(), Math.min(b.last(), most)));
    }

    /** What a session plays now. */
    static Programme of(SessionModel session, Optional<Bars> bars) {
        PhraseDraft draft = session.session().draft();
        return new Programme(
                draft.plays(),
                session.phrase(),
                session.groove(),
                draft.plays() ? draft.open() : OptionalInt.of(0),
                Optional.of(draft.backing()).filter(Backing::on),
                draft.plays() ? bars : Optional.empty());
    }

    /** Whether nothing else is heard than of another: the grid may show something else. */
    boolean soundsLike(Programme other) {
        return phrase == other.phrase
                && written.equals(other.written)
                && band.equals(other.band)
                && bars.equals(other.bars);
    }

    /** What is played, worked out now. */
    Playable playable() {
        Playable whole = whole();
        if (bars.isEmpty()) {
            return whole;
        }
        Phrase cut = whole.phrase().bars(bars.get().first(), bars.get().last());
        long from =
                bars.get().first() == 1
                        ? 0
                        : whole.phrase().bars(1, bars.get().first() - 1).ticks();
        List<BandPart> parts =
                whole.band().stream().map(p -> p.between(from, from + cut.ticks())).toList();
        return new Playable(cut, parts);
    }

    /** All bars of it, whichever are practised just now, worked out now. */
    Playable whole() {
        Phrase all = comingRound();
        return band.map(b -> Playable.of(all, b.arrangement(all.bars())))
                .orElseGet(() -> Playable.of(all));
    }

    /** The drums alone, at once. */
    Playable drums() {
        Phrase all = comingRound();
        return Playable.of(bars.map(b -> all.bars(b.first(), b.last())).orElse(all));
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
        int bar = told.bar() + bars.map(b -> b.first() - 1).orElse(0);
        int inWritten = phrase ? bar : (bar - 1) % written.bars() + 1;
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
