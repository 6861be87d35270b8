package org.kitweft.cli;

import java.util.stream.Collectors;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;

/** A lesson as text: title, remarks, and each item with its grid. */
final class LessonText {
    private LessonText() {}

    /** The text, its lines ended by {@code \n}. */
    static String of(Lesson lesson, Symbols symbols) {
        StringBuilder text = new StringBuilder();
        text.append(lesson.title()).append("\n");
        text.append("=".repeat(lesson.title().length())).append("\n\n");
        text.append(wrapped(lesson.remarks())).append("\n");
        int number = 1;
        for (LessonItem item : lesson.items()) {
            String heading = "%d. %s (%s)".formatted(number, item.title(), item.role().id());
            text.append("\n").append(heading).append("\n");
            text.append("-".repeat(heading.length())).append("\n\n");
            text.append(wrapped(item.remarks())).append("\n");
            if (!item.tempoSteps().isEmpty()) {
                text.append("Tempo steps: ")
                        .append(
                                item.tempoSteps().stream()
                                        .map(step -> "[ ] " + step)
                                        .collect(Collectors.joining("  ")))
                        .append("\n\n");
            }
            text.append(GrooveText.of(item.recipe().weave(), item.tempo(), symbols));
            number++;
        }
        return text.toString();
    }

    /** Remarks in lines of the grid's width; their own line ends stay. */
    private static String wrapped(String remarks) {
        return remarks.lines().map(LessonText::wrappedLine).collect(Collectors.joining());
    }

    private static String wrappedLine(String line) {
        StringBuilder text = new StringBuilder();
        int used = 0;
        for (String word : line.split(" ", -1)) {
            if (used > 0 && used + 1 + word.length() > GridText.WIDTH) {
                text.append("\n");
                used = 0;
            } else if (used > 0) {
                text.append(" ");
                used++;
            }
            text.append(word);
            used += word.length();
        }
        return text.append("\n").toString();
    }
}
