package org.kitweft.ui.groove;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.session.StrokeEdits;

/** What keys and mouse do to the cells of the grid. Knows nothing of pixels. */
final class GridEdits {
    private final SessionModel session;

    GridEdits(SessionModel session) {
        this.session = session;
    }

    /** The next dynamic of what is struck in a cell; of the stroke at the column if nothing is. */
    void nextDynamic(GridModel model, int row, int column) {
        Optional<GridMark> layered =
                model.marksAt(row, column).stream()
                        .filter(mark -> mark.layer().isPresent())
                        .findFirst();
        if (layered.isPresent()) {
            int index = layered.get().layer().getAsInt();
            Layer layer = session.recipe().voicing().layers().get(index);
            long step = layered.get().hit().written() / model.layerStepTicks(layer);
            session.edit("Change layer", StrokeEdits.nextLayerStep(session.recipe(), index, step));
            return;
        }
        OptionalInt stroke = model.strokeAt(column);
        if (stroke.isPresent()) {
            session.edit(
                    "Change dynamic", StrokeEdits.nextDynamic(session.recipe(), stroke.getAsInt()));
        }
    }

    /** One dynamic for the stroke at a column. */
    void dynamic(GridModel model, int column, Dynamic dynamic) {
        OptionalInt stroke = model.strokeAt(column);
        if (stroke.isPresent()) {
            session.edit(
                    "Change dynamic",
                    StrokeEdits.withDynamic(session.recipe(), stroke.getAsInt(), dynamic));
        }
    }

    /**
     * Moves the stroke at a column to a row; the sound there is the first that its limb can strike,
     * or the first at all, which then shows as a conflict.
     *
     * @return what was chosen, if the column has a stroke that is struck
     */
    Optional<SoundName> move(GridModel model, int column, int row) {
        Optional<Letter> letter = letterAt(model, column);
        OptionalInt stroke = model.strokeAt(column);
        if (letter.isEmpty() || stroke.isEmpty()) {
            return Optional.empty();
        }
        SoundName sound = soundOn(model, row, limb(letter.get()));
        moveTo(stroke.getAsInt(), sound);
        return Optional.of(sound);
    }

    /** Moves one stroke to a sound. */
    void moveTo(int stroke, SoundName sound) {
        session.edit("Move stroke", StrokeEdits.moveStroke(session.recipe(), stroke, sound));
    }

    /** The stroke at a column goes back to where its letter plays. */
    void giveBack(GridModel model, int column) {
        OptionalInt stroke = model.strokeAt(column);
        if (stroke.isPresent()) {
            session.edit(
                    "Return stroke", StrokeEdits.returnStroke(session.recipe(), stroke.getAsInt()));
        }
    }

    /**
     * The nearest row above (-1) or below (1) the stroke at a column where its limb can strike;
     * empty if there is none.
     */
    OptionalInt nextRow(GridModel model, int column, int direction) {
        Optional<Letter> letter = letterAt(model, column);
        if (letter.isEmpty()) {
            return OptionalInt.empty();
        }
        Kit kit = session.recipe().kit();
        Limb limb = limb(letter.get());
        int from = rowOfStroke(model, column).orElse(direction > 0 ? -1 : model.rows().size());
        for (int row = from + direction; row >= 0 && row < model.rows().size(); row += direction) {
            if (model.rows().get(row).sounds().stream().anyMatch(s -> kit.canStrike(limb, s))) {
                return OptionalInt.of(row);
            }
        }
        return OptionalInt.empty();
    }

    /** The row where the stroke at a column is struck. */
    OptionalInt rowOfStroke(GridModel model, int column) {
        OptionalInt stroke = model.strokeAt(column);
        return model.marks().stream()
                .filter(
                        mark ->
                                mark.layer().isEmpty()
                                        && (int) mark.column() == column
                                        && mark.hit().stroke().equals(stroke))
                .mapToInt(GridMark::row)
                .findFirst();
    }

    /** Pins the stroke at a column to the sound it has now, or lets it go again. */
    void pin(GridModel model, int column) {
        OptionalInt stroke = model.strokeAt(column);
        model.marks().stream()
                .filter(
                        mark ->
                                mark.hit().source() == HitSource.STROKE
                                        && (int) mark.column() == column
                                        && mark.hit().stroke().equals(stroke))
                .findFirst()
                .ifPresent(
                        mark ->
                                session.edit(
                                        "Pin stroke",
                                        session.session()
                                                .pinned(stroke.getAsInt(), mark.hit().sound())));
    }

    /** Puts the stroke at a column on a row and pins it there, or lets it go if it was. */
    void pinOn(GridModel model, int column, int row) {
        Optional<Letter> letter = letterAt(model, column);
        OptionalInt stroke = model.strokeAt(column);
        if (letter.isPresent() && stroke.isPresent()) {
            SoundName sound = soundOn(model, row, limb(letter.get()));
            Recipe moved = StrokeEdits.moveStroke(session.recipe(), stroke.getAsInt(), sound);
            session.edit(
                    "Pin stroke", session.session().with(moved).pinned(stroke.getAsInt(), sound));
        }
    }

    /** A pinned stroke may go anywhere again. */
    void letGo(Rule.Pin pin) {
        session.edit("Let stroke go", session.session().pinned(pin.index(), pin.sound()));
    }

    /** The pin of the stroke at a column. */
    Optional<Rule.Pin> pinAt(GridModel model, int column) {
        OptionalInt stroke = model.strokeAt(column);
        return session.session().rules().stream()
                .filter(Rule.Pin.class::isInstance)
                .map(Rule.Pin.class::cast)
                .filter(pin -> stroke.isPresent() && pin.index() == stroke.getAsInt())
                .findFirst();
    }

    private SoundName soundOn(GridModel model, int row, Limb limb) {
        Kit kit = session.recipe().kit();
        List<SoundName> sounds = model.rows().get(row).sounds();
        return sounds.stream()
                .filter(sound -> kit.canStrike(limb, sound))
                .findFirst()
                .orElse(sounds.get(0));
    }

    private Optional<Letter> letterAt(GridModel model, int column) {
        return model.stroke(column).flatMap(s -> s.struck()).map(struck -> struck.letter());
    }

    private Limb limb(Letter letter) {
        Recipe recipe = session.recipe();
        return recipe.voicing()
                .letter(letter)
                .map(LetterVoicing::limb)
                .orElse(Voicing.limbOf(letter, recipe.kit()));
    }
}
