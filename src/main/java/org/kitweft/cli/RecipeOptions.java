package org.kitweft.cli;

import java.io.IOException;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Recipe;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** All that a groove is woven from. */
final class RecipeOptions {
    @Parameters(
            index = "0",
            paramLabel = "STICKING",
            description =
                    "R, L (hands), K (kick), H (hi-hat pedal), B (both hands), - a rest; >R accent, (R) ghost, lR flam, llR drag, Rz buzz, [RL]*2 repeat. At most 512 strokes. In quotes; to start with rests, give it first, or after --.")
    private String sticking = "";

    @Mixin private KitOptions kitOptions = new KitOptions();
    @Mixin private GridOptions gridOptions = new GridOptions();
    @Mixin private VoicingOptions voicingOptions = new VoicingOptions();

    Recipe recipe() throws IOException {
        Sticking parsed = Sticking.parse(sticking);
        Grid grid = gridOptions.grid();
        Kit kit = kitOptions.kit();
        return new Recipe(
                parsed, kit, voicingOptions.voicing(parsed, kit, grid), grid, gridOptions.bars());
    }
}
