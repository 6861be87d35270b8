package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.BuiltInKits;

class KitCommandsTest {
    @Test
    void whatAnotherKitDoesNotHaveIsNamedOnce() {
        Recipe recipe = OpeningGroove.recipe();
        assertThat(KitCommands.lost(recipe, BuiltInKits.load("marimba")))
                .containsExactly("hi-hat.closed", "bass-drum.head", "snare.head");
        assertThat(KitCommands.lost(recipe, BuiltInKits.load("extended"))).isEmpty();
    }
}
