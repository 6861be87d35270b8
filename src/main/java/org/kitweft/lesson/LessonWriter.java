package org.kitweft.lesson;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Voicing;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import org.kitweft.kit.SoundName;

/** From a lesson to the tree of its file; {@link LessonFile} describes the form. */
final class LessonWriter {
    private LessonWriter() {}

    static ObjectNode tree(Lesson lesson) {
        ObjectNode root = bareTree(lesson);
        ArrayNode items = root.putArray("items");
        for (LessonItem item : lesson.items()) {
            ObjectNode node = bareTree(item);
            Json.restore(item.unknown(), node);
            items.add(node);
        }
        Json.restore(lesson.unknown(), root);
        return root;
    }

    /** Without items and unknown fields. */
    static ObjectNode bareTree(Lesson lesson) {
        return Json.MAPPER
                .createObjectNode()
                .put("format", LessonFile.FORMAT)
                .put("version", LessonFile.VERSION)
                .put("title", lesson.title())
                .put("remarks", lesson.remarks());
    }

    /** Without unknown fields. */
    static ObjectNode bareTree(LessonItem item) {
        Recipe recipe = item.recipe();
        ObjectNode node =
                Json.MAPPER
                        .createObjectNode()
                        .put("title", item.title())
                        .put("role", item.role().id())
                        .put("remarks", item.remarks())
                        .put("sticking", recipe.sticking().text());
        putKit(node, recipe.kit());
        putGrid(node.putObject("grid"), recipe.grid());
        recipe.bars().ifPresent(bars -> node.put("bars", bars));
        node.put("tempo", item.tempo().beatsPerMinute());
        ArrayNode tempoSteps = node.putArray("tempoSteps");
        item.tempoSteps().forEach(tempoSteps::add);
        putVoicing(node.putObject("voicing"), recipe.voicing());
        return node;
    }

    private static void putKit(ObjectNode node, Kit kit) {
        if (BuiltInKits.names().contains(kit.name())) {
            Kit builtIn = BuiltInKits.load(kit.name());
            if (kit.equals(builtIn) || kit.equals(builtIn.mirrored())) {
                node.put("kit", kit.name()).put("leftHanded", kit.leftHanded());
                return;
            }
        }
        node.set("kit", KitFile.tree(kit));
    }

    private static void putGrid(ObjectNode node, Grid grid) {
        node.put("meter", grid.meter().text())
                .put("steps", grid.stepsPerBeat())
                .put("swing", grid.swing())
                .put("overTheBar", grid.overTheBar());
    }

    private static void putVoicing(ObjectNode node, Voicing voicing) {
        ObjectNode letters = node.putObject("letters");
        voicing.letters()
                .forEach((letter, voiced) -> putLetter(letters.putObject(letter.name()), voiced));
        ObjectNode strokes = node.putObject("strokes");
        voicing.strokes()
                .forEach((index, sound) -> strokes.put(Integer.toString(index + 1), sound.text()));
        ArrayNode layers = node.putArray("layers");
        for (Layer layer : voicing.layers()) {
            layers.addObject()
                    .put("limb", layer.limb().id())
                    .put("sound", layer.sound().text())
                    .put("steps", layer.stepsPerBeat())
                    .put("figure", layer.figure().text());
        }
    }

    private static void putLetter(ObjectNode node, LetterVoicing voiced) {
        node.put("limb", voiced.limb().id());
        putSounds(node.putArray("path"), voiced.path());
        putSounds(node.putArray("accents"), voiced.accents());
        putSounds(node.putArray("ghosts"), voiced.ghosts());
        ArrayNode doublings = node.putArray("doublings");
        for (Doubling doubling : voiced.doublings()) {
            doublings
                    .addObject()
                    .put("limb", doubling.limb().id())
                    .put("sound", doubling.sound().text())
                    .put("accentsOnly", doubling.accentsOnly());
        }
        node.put("tacet", voiced.tacet());
    }

    private static void putSounds(ArrayNode array, List<SoundName> sounds) {
        sounds.forEach(sound -> array.add(sound.text()));
    }
}
