package org.kitweft.lesson;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import org.kitweft.pattern.Sticking;

/** Reads what items and sections of phrases have in common: what a groove is woven from. */
final class RecipeReader {
    private final Map<String, Kit> builtIn = new HashMap<>();

    /** The recipe; {@code bars} if the field is there. */
    Recipe recipe(Field item) {
        Field text = item.at("sticking");
        Sticking sticking = text.checked(() -> Sticking.parse(text.text()));
        Kit kit = kit(item);
        Grid grid = grid(item.at("grid"));
        Field bars = item.at("bars");
        return item.checked(
                () ->
                        new Recipe(
                                sticking,
                                kit,
                                new VoicingReader(kit).voicing(item.at("voicing")),
                                grid,
                                bars.isPresent()
                                        ? OptionalInt.of(bars.whole())
                                        : OptionalInt.empty()));
    }

    /** Tempo steps; none where the field is missing. */
    static List<Integer> tempoSteps(Field steps) {
        return steps.isPresent()
                ? steps.list("tempo step").stream().map(Field::whole).toList()
                : List.of();
    }

    /** A role by its id; time where the field is missing. */
    static Role role(Field role) {
        String id = role.text(Role.TIME.id());
        for (Role one : Role.values()) {
            if (one.id().equals(id)) {
                return one;
            }
        }
        throw role.fault("unknown role \"%s\", expected time, fill or punch".formatted(id));
    }

    private Kit kit(Field item) {
        Field kit = item.at("kit");
        if (kit.node().isObject()) {
            return kit.checked(() -> KitFile.parse(kit.node().toString(), "in the lesson"));
        }
        String name = kit.text(BuiltInKits.DEFAULT);
        Kit loaded =
                kit.checked(() -> builtIn.computeIfAbsent(name, any -> BuiltInKits.load(name)));
        return item.at("leftHanded").bool() ? loaded.forOtherHand() : loaded;
    }

    private static Grid grid(Field grid) {
        Grid usual = Grid.SIXTEENTHS;
        if (!grid.isPresent()) {
            return usual;
        }
        grid.object();
        return grid.checked(
                () ->
                        new Grid(
                                Meter.parse(grid.at("meter").text(usual.meter().text())),
                                grid.at("steps").whole(usual.stepsPerBeat()),
                                grid.at("swing").whole(usual.swing()),
                                grid.at("overTheBar").bool()));
    }
}
