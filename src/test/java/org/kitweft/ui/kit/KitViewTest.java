package org.kitweft.ui.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.session.Target;
import org.kitweft.ui.session.VoicingEdits;

class KitViewTest {
    private static KitView view(Recipe recipe, int width, int height) {
        SessionModel session = new SessionModel(Session.opening());
        KitView view =
                new KitView(
                        KitModel.of(recipe),
                        new Placing(session, (kit, sound) -> {}),
                        new Playhead());
        view.setBounds(0, 0, width, height);
        return view;
    }

    private static Recipe on(Kit kit) {
        return Session.opening().on(kit).recipe();
    }

    /** R and L on each surface in turn, together: also on the outermost. */
    @ParameterizedTest
    @ValueSource(
            strings = {"five-piece", "extended", "hand-drums", "marimba", "vibraphone", "timpani"})
    void tokensAreWholeOnEverySurface(String name) {
        Kit kit = BuiltInKits.load(name);
        for (Surface surface : kit.surfaces()) {
            Recipe recipe = on(kit);
            for (Letter letter : new Letter[] {Letter.R, Letter.L}) {
                recipe = VoicingEdits.place(recipe, letter, surface, Target.ALL, false);
            }
            for (int width : new int[] {300, 460, 900}) {
                KitView view = view(recipe, width, 340);
                Rectangle2D whole = new Rectangle2D.Double(0, 0, width, 340);
                assertThat(view.tokenBoxes().values())
                        .as("%s at %d", surface.id(), width)
                        .hasSize(KitModel.of(recipe).tokens().size())
                        .allMatch(whole::contains);
            }
        }
    }

    /** Side by side, or one below the other: each letter can be read. */
    @ParameterizedTest
    @ValueSource(strings = {"marimba", "vibraphone"})
    void twoTokensOnABarDoNotCoverEachOther(String name) {
        KitView view = view(on(BuiltInKits.load(name)), 460, 340);
        Rectangle2D r = box(view, Letter.R);
        Rectangle2D l = box(view, Letter.L);
        assertThat(r.intersects(l)).isFalse();
    }

    private static Rectangle2D box(KitView view, Letter letter) {
        return view.tokenBoxes().entrySet().stream()
                .filter(entry -> entry.getKey().letter() == letter)
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    @ParameterizedTest
    @CsvSource({"marimba, c-sharp-3, C sharp 3", "five-piece, ride, Ride"})
    void theToolTipNamesTheSurface(String kit, String id, String name) {
        KitView view = view(on(BuiltInKits.load(kit)), 460, 340);
        var at = view.plan().anchor(view.model().kit().surface(id).orElseThrow());
        MouseEvent over =
                new MouseEvent(
                        view,
                        MouseEvent.MOUSE_MOVED,
                        0,
                        0,
                        (int) at.getX(),
                        (int) at.getY(),
                        0,
                        false);
        assertThat(view.getToolTipText(over)).isEqualTo(name);
    }
}
