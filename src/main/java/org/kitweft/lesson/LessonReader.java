package org.kitweft.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.kitweft.groove.Recipe;
import org.kitweft.groove.Role;
import org.kitweft.groove.Tempo;

/** From the tree of a lesson file to the lesson; {@link LessonFile} describes the form. */
final class LessonReader {
    private final String source;
    private final RecipeReader recipes = new RecipeReader();

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
        Field phraseList = top.at("phrases");
        List<LessonPhrase> phrases =
                phraseList.isPresent()
                        ? phraseList.list("phrase").stream()
                                .map(new PhraseReader(recipes)::phrase)
                                .toList()
                        : List.of();
        String title = top.at("title").text("");
        String remarks = top.at("remarks").text("");
        Lesson known =
                top.checked(() -> new Lesson(title, remarks, items, phrases, UnknownFields.NONE));
        ObjectNode bare = LessonWriter.bareTree(known);
        bare.putArray("items");
        bare.putArray("phrases");
        return new Lesson(title, remarks, items, phrases, Json.beyond(root, bare));
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
        Recipe recipe = recipes.recipe(item);
        Field tempo = item.at("tempo");
        List<Integer> tempoSteps = RecipeReader.tempoSteps(item.at("tempoSteps"));
        Role role = RecipeReader.role(item.at("role"));
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
}
