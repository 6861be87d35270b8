package org.kitweft.ui.groove;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import javax.swing.JScrollPane;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.search.NoneCan;
import org.kitweft.groove.Place;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Tempo;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.theme.Theme;

class GrooveGridTest {
    private static final String REASON = "hi-hat.closed and hi-hat.open cannot sound together";
    private static final Optional<NoneCan> FORBIDDING =
            Optional.of(
                    new NoneCan(
                            List.of(
                                    new NoneCan.Obstacle(
                                            List.of(new Place(1, 3), new Place(1, 9)), REASON))));

    private final SessionModel session = new SessionModel(Session.opening());

    private void onGrid(Consumer<GrooveGrid> work) throws Exception {
        EventQueue.invokeAndWait(
                () -> {
                    Theme.LIGHT.install(100);
                    work.accept(new GrooveGrid(session, new Playhead()));
                });
    }

    private static BufferedImage painted(Component component) {
        component.setSize(component.getPreferredSize());
        BufferedImage image =
                new BufferedImage(
                        component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        component.paint(g);
        g.dispose();
        return image;
    }

    private static Component counting(GrooveGrid grid) {
        return ((JScrollPane) grid.getComponent(0)).getColumnHeader().getView();
    }

    /** The columns of 16 in which two pictures differ. */
    private static Set<Integer> differing(BufferedImage one, BufferedImage other) {
        Set<Integer> columns = new TreeSet<>();
        for (int x = 0; x < one.getWidth(); x++) {
            for (int y = 0; y < one.getHeight(); y++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    columns.add(x * 16 / one.getWidth());
                }
            }
        }
        return columns;
    }

    @Test
    void stepsThatForbidASearchAreMarkedInCellsAndCounting() throws Exception {
        onGrid(
                grid -> {
                    BufferedImage cells = painted(grid.focusTarget());
                    BufferedImage counting = painted(counting(grid));
                    grid.showForbidding(FORBIDDING);
                    assertThat(differing(cells, painted(grid.focusTarget()))).containsExactly(2, 8);
                    assertThat(differing(counting, painted(counting(grid)))).containsExactly(2, 8);
                    grid.goTo(1, 9);
                    assertThat(description(grid)).contains("forbids every sticking: " + REASON);
                    grid.goTo(1, 8);
                    assertThat(description(grid)).doesNotContain("forbids");
                });
    }

    @Test
    void marksGoWithTheNextSearchAndWithAnEditOfTheGrooveOnly() throws Exception {
        onGrid(
                grid -> {
                    BufferedImage bare = painted(grid.focusTarget());
                    grid.showForbidding(FORBIDDING);
                    session.edit("Tempo", session.session().with(new Tempo(61)));
                    assertThat(differing(bare, painted(grid.focusTarget()))).containsExactly(2, 8);
                    grid.showForbidding(Optional.empty());
                    assertThat(differing(bare, painted(grid.focusTarget()))).isEmpty();

                    grid.showForbidding(FORBIDDING);
                    Recipe before = session.recipe();
                    session.edit("Bars", before.withBars(OptionalInt.of(2)));
                    session.edit("Bars", before);
                    assertThat(differing(bare, painted(grid.focusTarget()))).isEmpty();
                    grid.goTo(1, 9);
                    assertThat(description(grid)).doesNotContain("forbids");
                });
    }

    private static String description(GrooveGrid grid) {
        return grid.focusTarget().getAccessibleContext().getAccessibleDescription();
    }
}
