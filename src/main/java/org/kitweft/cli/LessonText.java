package org.kitweft.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.kitweft.lesson.Lesson;
import org.kitweft.lesson.LessonItem;
import org.kitweft.lesson.LessonPhrase;

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
            text.append(steps(item.tempoSteps()));
            text.append(GrooveText.of(item.recipe().weave(), item.tempo(), symbols));
            number++;
        }
        for (LessonPhrase phrase : lesson.phrases()) {
            String heading = "%d. %s (phrase)".formatted(number, phrase.title());
            text.append("\n").append(heading).append("\n");
            text.append("-".repeat(heading.length())).append("\n\n");
            text.append(wrapped(phrase.remarks())).append("\n");
            text.append(steps(phrase.tempoSteps()));
            phrase.playingBand()
                    .ifPresent(
                            band ->
                                    text.append(
                                            "Band: %s, %s\n\n"
                                                    .formatted(band.style(), band.chords())));
            text.append(PhraseText.of(phrase.plan().weave(), phrase.tempo(), symbols));
            number++;
        }
        return text.toString();
    }

    private static String steps(List<Integer> steps) {
        return steps.isEmpty()
                ? ""
                : "Tempo steps: "
                        + steps.stream()
                                .map(step -> "[ ] " + step)
                                .collect(Collectors.joining("  "))
                        + "\n\n";
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
