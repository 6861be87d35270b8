package org.kitweft.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import org.kitweft.pattern.Sticking;

/** From the tree of a lesson file to the lesson; {@link LessonFile} describes the form. */
final class LessonReader {
    private final String source;
    private final Map<String, Kit> builtIn = new HashMap<>();

    LessonReader(String source) {
        this.source = source;
    }

    Lesson lesson(JsonNode root) {
        Field top = Field.root(source, root);
        if (!LessonFile.FORMAT.equals(root.path("format").asText())) {
            throw top.fault(
                    "it is not a lesson, expected \"format\": \"%s\"".formatted(LessonFile.FORMAT));
        }
        checkVersion(top.at("version"));
        List<LessonItem> items = top.at("items").list("item").stream().map(this::item).toList();
        String title = top.at("title").text("");
        String remarks = top.at("remarks").text("");
        Lesson known = top.checked(() -> new Lesson(title, remarks, items));
        ObjectNode bare = LessonWriter.bareTree(known);
        bare.putArray("items");
        return new Lesson(title, remarks, items, Json.beyond(root, bare));
    }

    private static void checkVersion(Field version) {
        int found = version.whole();
        if (found > LessonFile.VERSION) {
            throw version.fault(
                    "the lesson was saved by a newer Kitweft (version %d, this program reads up to %d) and was left as it is"
                            .formatted(found, LessonFile.VERSION));
        }
        if (found < 1) {
            throw version.fault("found %d, expected 1 or more".formatted(found));
        }
    }

    private LessonItem item(Field item) {
        item.object();
        Recipe recipe = recipe(item);
        Field tempo = item.at("tempo");
        List<Integer> tempoSteps =
                item.at("tempoSteps").isPresent()
                        ? item.at("tempoSteps").list("tempo step").stream()
                                .map(Field::whole)
                                .toList()
                        : List.of();
        Role role = role(item.at("role"));
        LessonItem known =
                item.checked(
                        () ->
                                new LessonItem(
                                        item.at("title").text(""),
                                        role,
                                        recipe,
                                        new Tempo(tempo.whole(Tempo.DEFAULT.beatsPerMinute())),
                                        tempoSteps,
                                        item.at("remarks").text("")));
        return new LessonItem(
                known.title(),
                role,
                recipe,
                known.tempo(),
                tempoSteps,
                known.remarks(),
                Json.beyond(item.node(), LessonWriter.bareTree(known)));
    }

    private Recipe recipe(Field item) {
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

    private static Role role(Field role) {
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
        return item.at("leftHanded").bool() ? loaded.mirrored() : loaded;
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
