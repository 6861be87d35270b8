package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.KitFile;

/** The commands {@code rudiments} and {@code kits}, and the help of all. */
class TablesTest {
    @TempDir Path folder;

    @Test
    void allRudimentsAreListed() {
        assertThat(Run.of("rudiments").lines())
                .hasSize(40)
                .anyMatch(line -> line.matches("16 +Single Paradiddle +>R L R R >L R L L"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"19", "single paradiddle-diddle", "Single Paradiddle Diddle"})
    void oneRudimentIsToldOf(String wanted) {
        assertThat(Run.of("rudiments", wanted).out())
                .startsWith("19  Single Paradiddle-Diddle\n")
                .contains("Family:    diddle\n", "On repeat: the lead stays\n");
    }

    @Test
    void aPartOfANameFindsAllThatHaveIt() {
        assertThat(Run.of("rudiments", "ratamacue").lines()).hasSize(3);
    }

    @Test
    void rudimentsAsJson() throws JsonProcessingException {
        JsonNode all = Run.of("rudiments", "--json").json();
        assertThat(all).hasSize(40);
        JsonNode one = Run.of("rudiments", "20", "--json").json();
        assertThat(one.toString())
                .isEqualTo(
                        "{\"number\":20,\"name\":\"Flam\",\"family\":\"flam\",\"sticking\":\"lR rL\","
                                + "\"evenSteps\":true,\"rhythm\":\"one flam a note\"}");
        assertThat(all.get(19)).isEqualTo(one);
    }

    @Test
    void theSixKitsAreListed() throws JsonProcessingException {
        assertThat(Run.of("kits").lines())
                .extracting(line -> line.substring(0, line.indexOf(' ')))
                .containsExactlyElementsOf(BuiltInKits.names());
        assertThat(Run.of("kits", "--json").json()).hasSize(6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"five-piece", "marimba"})
    void aKitAsJsonIsItsFile(String name) {
        assertThat(KitFile.parse(Run.of("kits", name, "--json").out(), name))
                .isEqualTo(BuiltInKits.load(name));
    }

    @Test
    void aKitForALeftHandedPlayerIsMirrored() {
        assertThat(KitFile.parse(Run.of("kits", "extended", "--json", "--left-handed").out(), ""))
                .isEqualTo(BuiltInKits.load("extended").forOtherHand());
    }

    @Test
    void aKitFileIsCheckedAndShown() throws IOException {
        Path file = folder.resolve("own.json");
        Files.writeString(
                file, Run.of("kits", "hand-drums", "--json").out().replace("hand-drums", "beach"));
        assertThat(Run.of("kits", file.toString()).lines())
                .contains("beach", "Conga (conga), x 0 cm, y 40 cm");
        assertThat(Run.of("groove", "RL", "--kit", file.toString()).out()).contains("· beach\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "groove", "count", "stickings", "rudiments", "kits", "demo"})
    void everyCommandHasHelp(String command) {
        Run run = command.isEmpty() ? Run.of("--help") : Run.of(command, "--help");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Usage: kitweft " + command, "Exit codes:");
        assertThat(run.lines()).allMatch(line -> line.length() <= 80);
        if (!command.isEmpty()) {
            assertThat(run.out()).containsPattern("Examples?:\n  kitweft " + command);
        }
    }

    @Test
    void theVersionIsTold() {
        assertThat(Run.of("--version").out()).startsWith("Kitweft ").contains("Java 17");
    }
}
