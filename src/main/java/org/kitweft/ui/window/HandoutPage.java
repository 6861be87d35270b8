package org.kitweft.ui.window;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.kitweft.file.SafeFile;
import org.kitweft.score.handout.HandoutSettings;
import org.kitweft.score.page.Paper;

/**
 * How this teacher's handouts look, kept beside the window's settings: it stays from lesson to
 * lesson, and what it says of a person never gets into a lesson file. Event thread only.
 */
final class HandoutPage {
    private final Path file;
    private HandoutSettings settings = HandoutSettings.DEFAULT;

    /** Kept in a file, which need not exist. */
    HandoutPage(Path file) {
        this.file = file;
    }

    HandoutSettings settings() {
        return settings;
    }

    /** Uses other settings and keeps them. */
    void use(HandoutSettings other) throws IOException {
        settings = other;
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Properties p = properties(other);
        SafeFile.write(
                file,
                SafeFile.Existing.REPLACE,
                out -> {
                    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
                    p.store(writer, "Kitweft's handouts");
                    writer.flush();
                });
    }

    /**
     * Takes up what was kept; without a file all stays as it is at first. What cannot be understood
     * is as at first too.
     *
     * @throws IOException if there is a file and it cannot be read
     */
    void read() throws IOException {
        if (!Files.exists(file)) {
            return;
        }
        Properties p = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            p.load(reader);
        } catch (IllegalArgumentException e) {
            throw new IOException("%s has a fault: %s".formatted(file, e.getMessage()), e);
        }
        settings = settings(p);
    }

    private static Properties properties(HandoutSettings s) {
        Properties p = new Properties();
        p.setProperty("paper", s.paper().id());
        p.setProperty("nameLine", s.nameLine());
        p.setProperty("footer", s.footer());
        p.setProperty("sticking", Boolean.toString(s.notation().sticking()));
        p.setProperty("counting", Boolean.toString(s.notation().counting()));
        p.setProperty("oneVoice", Boolean.toString(s.notation().oneVoice()));
        p.setProperty("kit", Boolean.toString(s.kit()));
        p.setProperty("legend", Boolean.toString(s.legend()));
        p.setProperty("practiceLog", Boolean.toString(s.practiceLog()));
        p.setProperty("careNotes", Boolean.toString(s.careNotes()));
        return p;
    }

    private static HandoutSettings settings(Properties p) {
        HandoutSettings first = HandoutSettings.DEFAULT;
        return first.withPaper(paper(p.getProperty("paper", "")))
                .withNameLine(p.getProperty("nameLine", first.nameLine()))
                .withFooter(p.getProperty("footer", first.footer()))
                .withNotation(
                        first.notation()
                                .withSticking(flag(p, "sticking", first.notation().sticking()))
                                .withCounting(flag(p, "counting", first.notation().counting()))
                                .withOneVoice(flag(p, "oneVoice", first.notation().oneVoice())))
                .withKit(flag(p, "kit", first.kit()))
                .withLegend(flag(p, "legend", first.legend()))
                .withPracticeLog(flag(p, "practiceLog", first.practiceLog()))
                .withCareNotes(flag(p, "careNotes", first.careNotes()));
    }

    private static boolean flag(Properties p, String key, boolean otherwise) {
        return Boolean.parseBoolean(p.getProperty(key, Boolean.toString(otherwise)));
    }

    private static Paper paper(String id) {
        for (Paper paper : Paper.values()) {
            if (paper.id().equals(id)) {
                return paper;
            }
        }
        return HandoutSettings.DEFAULT.paper();
    }
}
