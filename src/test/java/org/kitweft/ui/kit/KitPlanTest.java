package org.kitweft.ui.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Surface;
import org.kitweft.pattern.Letter;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.session.Target;

class KitPlanTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(10, 20, 600, 400);

    private static Surface surface(Kit kit, String id) {
        return kit.surface(id).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"five-piece", "extended", "hand-drums", "marimba", "vibraphone", "timpani"})
    void everySurfaceLiesInTheAreaAndIsFoundAtItsAnchor(String name) {
        Kit kit = BuiltInKits.load(name);
        KitPlan plan = new KitPlan(kit, AREA);
        Rectangle2D roomy =
                new Rectangle2D.Double(9, 19, AREA.getWidth() + 2, AREA.getHeight() + 2);
        for (Surface surface : kit.surfaces()) {
            assertThat(roomy.contains(plan.shape(surface).getBounds2D())).as(surface.id()).isTrue();
            assertThat(plan.at(plan.anchor(surface).getX(), plan.anchor(surface).getY()))
                    .contains(surface);
        }
    }

    @Test
    void thePlayersRightIsRightAndAwayIsUp() {
        Kit kit = BuiltInKits.load("five-piece");
        KitPlan plan = new KitPlan(kit, AREA);
        assertThat(plan.anchor(surface(kit, "ride")).getX())
                .isGreaterThan(plan.anchor(surface(kit, "hi-hat")).getX());
        assertThat(plan.anchor(surface(kit, "crash")).getY())
                .isLessThan(plan.anchor(surface(kit, "snare")).getY());
    }

    /** A token that is dropped between two bars lands on one of them. */
    @ParameterizedTest
    @ValueSource(strings = {"marimba", "vibraphone"})
    void barsLieSideBySideWithoutHolesBetween(String name) {
        Kit kit = BuiltInKits.load(name);
        KitPlan plan = new KitPlan(kit, AREA);
        Rectangle2D lowest = plan.shape(surface(kit, "f-3")).getBounds2D();
        Rectangle2D next = plan.shape(surface(kit, "g-3")).getBounds2D();
        assertThat(lowest.getHeight()).isGreaterThan(3 * lowest.getWidth());
        assertThat(next.getMinX()).isGreaterThan(lowest.getMaxX());
        for (double x = lowest.getCenterX(); x <= next.getCenterX(); x++) {
            Surface nearer =
                    surface(kit, x < (lowest.getCenterX() + next.getCenterX()) / 2 ? "f-3" : "g-3");
            assertThat(plan.at(x, lowest.getCenterY())).contains(nearer);
        }
    }

    @ParameterizedTest(name = "from {0} {1},{2}: {3}")
    @CsvSource({
        "snare, -1, 0, hi-hat",
        "snare, 1, 0, bass-drum",
        "hi-hat, 0, -1, crash",
        "high-tom, 1, 0, mid-tom",
        "ride, 1, 0, ride"
    })
    void arrowKeysWalkToTheNeighbour(String from, int dx, int dy, String to) {
        Kit kit = BuiltInKits.load("five-piece");
        assertThat(new KitPlan(kit, AREA).next(surface(kit, from), dx, dy))
                .isEqualTo(surface(kit, to));
    }

    /** Every surface can be come to by keys from every other. */
    @ParameterizedTest
    @ValueSource(
            strings = {"five-piece", "extended", "hand-drums", "marimba", "vibraphone", "timpani"})
    void noSurfaceIsOutOfReachOfTheArrowKeys(String name) {
        Kit kit = BuiltInKits.load(name);
        KitPlan plan = new KitPlan(kit, AREA);
        Set<Surface> seen = new HashSet<>();
        Deque<Surface> open = new ArrayDeque<>();
        open.add(kit.surfaces().get(0));
        while (!open.isEmpty()) {
            Surface at = open.remove();
            if (seen.add(at)) {
                open.add(plan.next(at, 1, 0));
                open.add(plan.next(at, -1, 0));
                open.add(plan.next(at, 0, 1));
                open.add(plan.next(at, 0, -1));
            }
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(kit.surfaces());
    }

    @Test
    void aLetterIsPlacedByKeysAndHeard() {
        SessionModel session = new SessionModel(Session.opening());
        StringBuilder heard = new StringBuilder();
        Placing placing = new Placing(session, (kit, sound) -> heard.append(sound));
        placing.choose(Letter.R);
        placing.hover(surface(session.recipe().kit(), "ride"));
        assertThat(placing.said()).isEqualTo("R → Ride");
        placing.place(false);
        assertThat(session.recipe().voicing().letter(Letter.R).orElseThrow().path())
                .extracting(Object::toString)
                .containsExactly("ride.bow");
        assertThat(heard).hasToString("ride.bow");
    }

    @Test
    void whatWasSaidOfOneKitIsForgottenOnAnother() {
        SessionModel session = new SessionModel(Session.opening());
        Placing placing = new Placing(session, (kit, sound) -> {});
        placing.hover(surface(session.recipe().kit(), "ride"));
        placing.place(false);
        assertThat(placing.said()).isEqualTo("R plays Ride");
        session.edit("Kit", session.session().on(BuiltInKits.load("timpani")));
        assertThat(placing.said()).isEmpty();
        assertThat(placing.over()).isEmpty();
    }

    @Test
    void placingWhereOnlyFeetReachSaysWhoTakesOver() {
        SessionModel session = new SessionModel(Session.opening());
        Placing placing = new Placing(session, (kit, sound) -> {});
        placing.choose(Letter.L);
        placing.hover(surface(session.recipe().kit(), "bass-drum"));
        assertThat(placing.said()).contains("handed over to the right foot");
        placing.place(false);
        assertThat(session.recipe().voicing().letter(Letter.L).orElseThrow().limb())
                .isEqualTo(Limb.RIGHT_FOOT);
    }

    @Test
    void tokensStandWhereLettersPlayAndTheOthersLieAside() {
        KitModel model = KitModel.of(Session.opening().recipe());
        assertThat(model.surfaceOf(Letter.L, Target.ALL)).map(Surface::id).contains("snare");
        assertThat(model.aside()).extracting(Token::letter).containsExactly(Letter.K, Letter.H);
        assertThat(model.companions()).extracting(Companion::limb).containsOnly(Limb.RIGHT_FOOT);
    }
}
