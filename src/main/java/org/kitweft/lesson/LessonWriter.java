package org.kitweft.lesson;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.kitweft.band.Backing;
import org.kitweft.groove.Doubling;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Layer;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.groove.PlannedSection;
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
        if (!lesson.phrases().isEmpty()) {
            ArrayNode phrases = root.putArray("phrases");
            for (LessonPhrase phrase : lesson.phrases()) {
                ObjectNode node = bareTree(phrase);
                Json.restore(phrase.unknown(), node);
                phrases.add(node);
            }
        }
        Json.restore(lesson.unknown(), root);
        return root;
    }

    /** Without items, phrases and unknown fields. */
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
                        .put("remarks", item.remarks());
        putWarp(node, recipe);
        recipe.bars().ifPresent(bars -> node.put("bars", bars));
        node.put("tempo", item.tempo().beatsPerMinute());
        putTempoSteps(node, item.tempoSteps());
        putVoicing(node.putObject("voicing"), recipe.voicing());
        return node;
    }

    /** Without unknown fields. */
    static ObjectNode bareTree(LessonPhrase phrase) {
        ObjectNode node =
                Json.MAPPER
                        .createObjectNode()
                        .put("title", phrase.title())
                        .put("remarks", phrase.remarks())
                        .put("tempo", phrase.tempo().beatsPerMinute());
        putTempoSteps(node, phrase.tempoSteps());
        phrase.band().ifPresent(band -> putBand(node.putObject("band"), band));
        ArrayNode sections = node.putArray("sections");
        for (PlannedSection section : phrase.plan().sections()) {
            ObjectNode part = sections.addObject().put("role", section.role().id());
            part.put("bars", section.bars());
            putWarp(part, section.recipe());
            putVoicing(part.putObject("voicing"), section.recipe().voicing());
        }
        return node;
    }

    private static void putBand(ObjectNode node, Backing band) {
        node.put("on", band.on())
                .put("chords", band.chords())
                .put("style", band.style())
                .put("clave", band.clave().id())
                .put("seed", band.seed());
    }

    private static void putTempoSteps(ObjectNode node, List<Integer> steps) {
        ArrayNode tempoSteps = node.putArray("tempoSteps");
        steps.forEach(tempoSteps::add);
    }

    /** All of a recipe but its bars and its voicing. */
    private static void putWarp(ObjectNode node, Recipe recipe) {
        node.put("sticking", recipe.sticking().text());
        putKit(node, recipe.kit());
        putGrid(node.putObject("grid"), recipe.grid());
    }

    private static void putKit(ObjectNode node, Kit kit) {
        if (BuiltInKits.names().contains(kit.name())) {
            Kit builtIn = BuiltInKits.load(kit.name());
            if (kit.equals(builtIn) || kit.equals(builtIn.forOtherHand())) {
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
