package org.kitweft.ui.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.rule.Rule;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;
import org.kitweft.ui.play.Playhead;
import org.kitweft.ui.session.FaultsFail;
import org.kitweft.ui.session.Session;
import org.kitweft.ui.session.SessionModel;
import org.kitweft.ui.task.Tasks;
import org.kitweft.ui.theme.Theme;

/** Which role's reasons are shown: they stay, so that one variation can be held beside another. */
class WhyPanelTest {
    @BeforeAll
    static void theme() {
        Theme.LIGHT.install(100);
    }

    private static Selected explained(Recipe recipe) {
        return Selected.of(recipe.weave(), RoleWeights.DEFAULT);
    }

    /** Down the toms in one bar: better as a fill than as time. */
    private static Recipe fill() {
        Recipe opening = Session.opening().recipe();
        Kit kit = BuiltInKits.load("five-piece");
        String[] drums = {"snare", "high-tom", "mid-tom", "floor-tom"};
        Recipe recipe = opening.with(Sticking.parse("RLRLRLRLRLRLRLRL"));
        for (int stroke = 0; stroke < 16; stroke++) {
            recipe = recipe.with(recipe.voicing().withStroke(stroke, kit.find(drums[stroke / 4])));
        }
        return recipe;
    }

    @Test
    void theRoleStaysWhileVariationsAreHeard() {
        Selected time = explained(Session.opening().recipe());
        Selected fill = explained(fill());
        assertThat(time.fit().best()).isEqualTo(Role.TIME);
        assertThat(fill.fit().best()).isEqualTo(Role.FILL);
        WhyPanel why = new WhyPanel(new Weighing());
        why.show(time);
        assertThat(chosen(why)).startsWith("Time");
        why.show(fill);
        assertThat(chosen(why)).startsWith("Time");
        why.ask(Role.PUNCH);
        why.show(time);
        assertThat(chosen(why)).startsWith("Punch");
    }

    @Test
    void aRoleThatSomebodyChoseOutlivesAnotherRule() {
        SessionModel session = new SessionModel(Session.opening());
        Exploring exploring = new Exploring(session, Tasks.DIRECT);
        VariationPanel panel =
                new VariationPanel(
                        session,
                        exploring,
                        new Weighing(),
                        new Playhead(),
                        Tasks.DIRECT,
                        () -> 1,
                        new FaultsFail());
        JComboBox<?> order = find(panel, JComboBox.class).get(0);
        order.setSelectedItem(Order.BEST_FILL);
        assertThat(chosen(panel)).startsWith("Fill");
        find(panel, JToggleButton.class).stream()
                .filter(button -> button.getText().startsWith("Time"))
                .forEach(JToggleButton::doClick);
        session.edit("Reach", session.session().with(List.of(new Rule.Reach(60))));
        assertThat(chosen(panel)).startsWith("Time");
        order.setSelectedItem(Order.LEAST_TRAVEL);
        assertThat(chosen(panel)).startsWith("Time");
    }

    private static String chosen(Container within) {
        return find(within, JToggleButton.class).stream()
                .filter(JToggleButton::isSelected)
                .map(JToggleButton::getText)
                .findFirst()
                .orElseThrow();
    }

    private static <C extends Component> List<C> find(Container within, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Component child : within.getComponents()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Container inner) {
                found.addAll(find(inner, type));
            }
        }
        return found;
    }
}
