package org.kitweft.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.explore.role.Reason;
import org.kitweft.explore.role.RoleScore;
import org.kitweft.explore.search.Serving;
import org.kitweft.groove.Role;

/** What a search for a role has found, as text and as JSON. */
final class ServingText {
    private static final int MOST_REASONS = 4;

    private ServingText() {}

    static String text(Role role, long seed, List<Serving> servings) {
        StringBuilder text = new StringBuilder();
        text.append("The best %d for %s, seed %d.\n".formatted(servings.size(), role.id(), seed));
        for (Serving serving : servings) {
            RoleScore score = serving.fit().of(role);
            text.append(
                    String.format(
                            Locale.ROOT,
                            "\n\"%s\"\n  %.0f %%, difficulty %.0f\n  %s\n  %s\n",
                            serving.recipe().sticking().text(),
                            100 * score.value(),
                            serving.difficulty().points(),
                            reasons(score).stream()
                                    .limit(MOST_REASONS)
                                    .collect(Collectors.joining(", ")),
                            VoicingText.line(VoicingText.options(serving.recipe()))));
        }
        return text.append("\nDifficulty: ")
                .append(Difficulty.UNIT)
                .append("\nThe options go with the command groove.\n")
                .toString();
    }

    private static List<String> reasons(RoleScore score) {
        return score.reasons().stream().map(Reason::text).toList();
    }

    static String json(int strokes, Role role, long seed, List<Serving> servings) {
        return JsonText.of(
                json -> {
                    json.writeStartObject();
                    json.writeNumberField("strokes", strokes);
                    json.writeStringField("role", role.id());
                    json.writeStringField("seed", Long.toString(seed));
                    json.writeArrayFieldStart("servings");
                    for (Serving serving : servings) {
                        RoleScore score = serving.fit().of(role);
                        json.writeStartObject();
                        json.writeStringField("sticking", serving.recipe().sticking().text());
                        json.writeNumberField("score", Math.round(1000 * score.value()) / 1000.0);
                        json.writeNumberField("difficulty", serving.difficulty().points());
                        json.writeArrayFieldStart("reasons");
                        for (String reason : reasons(score)) {
                            json.writeString(reason);
                        }
                        json.writeEndArray();
                        json.writeArrayFieldStart("options");
                        for (String option : VoicingText.options(serving.recipe())) {
                            json.writeString(option);
                        }
                        json.writeEndArray();
                        json.writeEndObject();
                    }
                    json.writeEndArray();
                    json.writeEndObject();
                });
    }
}
