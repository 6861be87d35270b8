package org.kitweft.ui.staff;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.score.engrave.EngraveSettings;
import org.kitweft.score.engrave.EngravedScore;
import org.kitweft.score.engrave.EngravedSystem;
import org.kitweft.score.engrave.Engraver;
import org.kitweft.score.engrave.TooDenseException;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.score.model.Score;

/**
 * A phrase, or a groove, engraved for a width, its lines below each other. Immutable; lengths are
 * staff spaces from the upper left corner.
 *
 * @param phrase what is written
 * @param score its lines, every bar written out
 * @param width of the lines; more than was asked for where a bar does not fit
 * @param middles for each line where its middle staff line lies
 * @param room over the first line and under the last, in which all their signs are
 */
record Engraving(
        Phrase phrase, EngravedScore score, double width, List<Double> middles, Room room) {
    private static final double BETWEEN = 2.5;

    Engraving {
        middles = List.copyOf(middles);
    }

    /**
     * Engraves; takes a while for long phrases.
     *
     * @param with what is written over the staff
     * @param width in staff spaces
     * @param before the room that was taken before
     */
    static Engraving of(
            Phrase phrase,
            PlayedWith with,
            NotationOptions options,
            Engraver engraver,
            double width,
            Room before) {
        Score score = Notation.of(phrase, options, with);
        EngravedScore engraved;
        double taken = width;
        try {
            engraved = engraver.engrave(score, EngraveSettings.ofWidth(width));
        } catch (TooDenseException e) {
            taken = e.needed() + 1;
            engraved = engraver.engrave(score, EngraveSettings.ofWidth(taken));
        }
        List<EngravedSystem> systems = engraved.systems();
        EngravedSystem last = systems.get(systems.size() - 1);
        Room room = before.keptFor(new Room(-systems.get(0).top(), last.bottom()));
        List<Double> middles = new ArrayList<>();
        double y = room.above() + systems.get(0).top();
        for (EngravedSystem system : systems) {
            middles.add(y - system.top());
            y += system.height() + BETWEEN;
        }
        return new Engraving(phrase, engraved, taken, middles, room);
    }

    /** All lines, the space between, and the room around them. */
    double height() {
        return middles.get(middles.size() - 1) + room.below();
    }

    /** The first line with the room over it, and under it if it is the only one. */
    double firstHeight() {
        return middles.size() == 1 ? height() : middles.get(0) + score.systems().get(0).bottom();
    }

    /** Where a step of the phrase stands: its x and the middle of its line. */
    Optional<Point2D> at(Place place) {
        if (place.bar() > score.score().measures().size()) {
            return Optional.empty();
        }
        Measure measure = score.score().measures().get(place.bar() - 1);
        Grid grid = phrase.sections().get(measure.section()).groove().grid();
        long tick = measure.start() + (place.step() - 1) * grid.stepTicks();
        EngravedScore.Playhead head = score.playhead(tick);
        return Optional.of(new Point2D.Double(head.x(), middles.get(head.system())));
    }

    /** The place in the phrase of the hit whose note lies at a point. */
    Optional<Place> placeAt(double x, double y) {
        for (int i = 0; i < middles.size(); i++) {
            EngravedSystem system = score.systems().get(i);
            double inLine = y - middles.get(i);
            if (inLine >= system.top() - 1 && inLine <= system.bottom() + 1) {
                return system.ownerAt(x, inLine)
                        .map(
                                owner ->
                                        new Place(
                                                owner.measure() + 1,
                                                owner.hit().orElseThrow().place().step()));
            }
        }
        return Optional.empty();
    }
}
