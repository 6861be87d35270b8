package org.kitweft.ui.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.explore.role.Feature;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.groove.Role;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.ui.theme.Theme;

class WindowSettingsTest {
    @TempDir Path folder;

    @Test
    void whatIsWrittenIsRead() throws IOException {
        Path file = folder.resolve("deep/down/window.properties");
        WindowSettings settings =
                WindowSettings.FIRST
                        .withTheme(Theme.DARK)
                        .withZoom(150)
                        .withTempo(72)
                        .withFolder("/a folder")
                        .withStaff(
                                NotationOptions.DEFAULT
                                        .withSticking(false)
                                        .withCounting(true)
                                        .withOneVoice(true)
                                        .withFoldRepeats(true))
                        .withWindow(1000, 700, true);
        settings.write(file);
        assertThat(WindowSettings.read(file)).isEqualTo(settings);
    }

    @Test
    void withoutAFileAllIsAsOnTheFirstStart() throws IOException {
        assertThat(WindowSettings.read(folder.resolve("none"))).isEqualTo(WindowSettings.FIRST);
    }

    @Test
    void whatTheUserWeighsIsKept() throws IOException {
        Path file = folder.resolve("weights");
        RoleWeights own = RoleWeights.DEFAULT.with(Role.FILL, Feature.GROWS, -0.3);
        WindowSettings.FIRST.with(own).write(file);
        assertThat(WindowSettings.read(file)).isEqualTo(WindowSettings.FIRST.with(own));
        Files.writeString(file, "weights=fill.grows=much\n");
        assertThat(WindowSettings.read(file)).isEqualTo(WindowSettings.FIRST);
    }

    @Test
    void nonsenseIsAsOnTheFirstStart() throws IOException {
        Path file =
                Files.writeString(
                        folder.resolve("odd"), "zoom=9000\ntempo=-3\ntheme=pink\nwidth=1e9\n");
        assertThat(WindowSettings.read(file)).isEqualTo(WindowSettings.FIRST.withZoom(200));
    }

    @Test
    void aFolderWhereNoFileCanBeIsAFaultWithItsName() throws IOException {
        Path blocked = Files.writeString(folder.resolve("blocked"), "");
        assertThatThrownBy(() -> WindowSettings.FIRST.write(blocked.resolve("window.properties")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("blocked");
    }

    /** XDG Base Directory Specification 0.8 for Linux; the others common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "Linux, , /h/.config/kitweft/window.properties",
        "Linux, /x, /x/kitweft/window.properties",
        "Mac OS X, , /h/Library/Application Support/kitweft/window.properties"
    })
    void settingsLieWhereTheSystemWantsThem(String system, String xdg, String expected) {
        Map<String, String> environment = xdg == null ? Map.of() : Map.of("XDG_CONFIG_HOME", xdg);
        assertThat(WindowSettings.file(environment, system, Path.of("/h")))
                .isEqualTo(Path.of(expected));
    }

    @ParameterizedTest
    @CsvSource({"RLRR LRLL, RLRR LRLL", "a/b\\c:d, abcd", "'   ', groove", "Übung 1, Übung 1"})
    void proposedFileNamesHoldNothingThatSystemsRefuse(String title, String name) {
        assertThat(FileDialogs.plain(title)).isEqualTo(name);
    }

    /** Source: shared/reference/noise-exposure.csv (NIOSH 98-126). */
    @Test
    void exposureTimesAgreeWithThePublishedTable() throws IOException {
        String table;
        try (InputStream in =
                Objects.requireNonNull(
                        getClass()
                                .getResourceAsStream(
                                        "/org/kitweft/shared/reference/noise-exposure.csv"))) {
            table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        table.lines()
                .filter(line -> line.matches("\\d+,.*"))
                .forEach(
                        line -> {
                            String[] cells = line.split(",", -1);
                            assertThat(CareNotes.minutes(Integer.parseInt(cells[0])))
                                    .isCloseTo(
                                            60 * Double.parseDouble(cells[1]), Offset.offset(1e-3));
                        });
        assertThat(CareNotes.text())
                .contains("8 hours")
                .contains("Local rules and a clinician or audiologist come first.");
    }
}
