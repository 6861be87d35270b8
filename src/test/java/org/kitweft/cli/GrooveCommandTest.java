package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrooveCommandTest {
    @TempDir Path folder;

    @Test
    void swingIsNamedWhereStepsGoInPairsOnly() {
        assertThat(Run.of("groove", "RLRL", "--swing", "75").out()).contains("swing 75 %");
        Run triplets = Run.of("groove", "RLRL", "--steps", "3", "--swing", "75");
        assertThat(triplets.out()).doesNotContain("swing");
        assertThat(triplets.err())
                .isEqualTo("swing has no effect on 3 steps a beat, only on 2, 4 or 8\n");
        assertThat(triplets.code()).isEqualTo(Cli.DONE);
    }

    @Test
    void theGridIsShownAsText() {
        Run run =
                Run.of(
                        "groove",
                        ">R(L)RR >LR(L)(L)",
                        "--on",
                        "R=hi-hat",
                        "--double-accents",
                        "R=bass-drum",
                        "--tempo",
                        "84");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .isEqualTo(
                        """
                        >R (L) R R >L R (L) (L)
                        4/4 · sixteenths · ♩ = 84 · 1 bar · five-piece

                        Bar 1     | 1   e   &   a    2   e   &   a    3   e   &   a    4   e   &   a  |
                        Sticking  |>R  (L)  R   R   >L   R  (L) (L)  >R  (L)  R   R   >L   R  (L) (L) |
                        Hi-hat    |>R   ·   R   R    ·   R   ·   ·   >R   ·   R   R    ·   R   ·   ·  |
                        Snare     | ·  (L)  ·   ·   >L   ·  (L) (L)   ·  (L)  ·   ·   >L   ·  (L) (L) |
                        Bass drum |>K   ·   ·   ·    ·   ·   ·   ·   >K   ·   ·   ·    ·   ·   ·   ·  |

                        No conflicts: it can be played as written.
                        Stickings of 8 strokes with 2 letters: 256. Ways to play this one on this kit, one sound a surface:
                        49 with each letter on one sound, 5,764,801 with each stroke on its own.
                        """);
    }

    @Test
    void ornamentsTacetStrokesAndLayersBetweenTheStepsAreShown() {
        Run run =
                Run.of(
                        "groove",
                        "lR L Rz -",
                        "--steps",
                        "2",
                        "--meter",
                        "2/4",
                        "--tacet",
                        "L",
                        "--layer",
                        "bass-drum@3: >x x (x)");
        assertThat(run.lines())
                .containsSubsequence(
                        "2/4 · eighths · ♩ = 90 · 1 bar · five-piece",
                        "Bar 1     | 1       &        2       &      |",
                        "Sticking  |lR       L        Rz      -      |",
                        "Snare     |lR       ·        Rz      ·      |",
                        "Bass drum |>K   K   ·  (K)  >K   K   ·  (K) |");
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "5", "6", "7", "8", "12"})
    void longBarsWrapAtBeatsWithin80Columns(String steps) {
        Run run = Run.of("groove", ">R(L)RL", "--steps", steps, "--on", "R=snare.cross-stick");
        assertThat(run.out().lines().filter(line -> line.endsWith("|")))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        String beats =
                String.join("", run.lines().stream().filter(l -> l.startsWith("Bar 1")).toList());
        assertThat(beats).containsSubsequence("1 ", "2 ", "3 ", "4 ");
    }

    @Test
    void conflictsAreListedWithTheirSteps() {
        Run run = Run.of("groove", "RL", "--layer", "ride by right-hand@1: x", "--bars", "2");
        assertThat(run.code()).isZero();
        assertThat(run.lines())
                .containsSubsequence(
                        "Conflicts:",
                        "  the right hand cannot strike ride.bow and snare.head at one instant: bar 1 step 1,"
                                + " bar 1 step 5, bar 1 step 9, bar 1 step 13, bar 2 step 1, bar 2 step 5 and 2"
                                + " more");
    }

    @Test
    void jsonHasTheFieldsOfTheContract() throws JsonProcessingException {
        JsonNode json =
                Run.of(
                                "groove",
                                "RL",
                                "--meter",
                                "3/8",
                                "--steps",
                                "6",
                                "--tempo",
                                "60",
                                "--on",
                                "R=ride.bell",
                                "--layer",
                                "ride by right-hand@1: >x",
                                "--json")
                        .json();
        assertThat(names(json))
                .containsExactly(
                        "sticking", "meter", "tempo", "steps", "bars", "kit", "hits", "conflicts");
        assertThat(json.get("sticking").textValue()).isEqualTo("RL");
        assertThat(json.get("meter").textValue()).isEqualTo("3/8");
        assertThat(json.get("tempo").intValue()).isEqualTo(60);
        assertThat(json.get("steps").intValue()).isEqualTo(6);
        assertThat(json.get("bars").intValue()).isEqualTo(1);
        assertThat(json.get("kit").textValue()).isEqualTo("five-piece");
        assertThat(json.get("hits")).hasSize(7);
        assertThat(json.get("hits").get(0).toString())
                .isEqualTo(
                        "{\"bar\":1,\"step\":1,\"start\":\"0\",\"limb\":\"right-hand\",\"letter\":\"R\","
                                + "\"surface\":\"ride\",\"sound\":\"bell\",\"channel\":10,\"key\":53,"
                                + "\"velocity\":80,\"dynamic\":\"plain\"}");
        assertThat(json.get("hits").get(1).toString())
                .isEqualTo(
                        "{\"bar\":1,\"step\":1,\"start\":\"0\",\"limb\":\"right-hand\",\"letter\":null,"
                                + "\"surface\":\"ride\",\"sound\":\"bow\",\"channel\":10,\"key\":51,"
                                + "\"velocity\":115,\"dynamic\":\"accent\"}");
        assertThat(json.get("hits").get(6).get("start").textValue()).isEqualTo("5/4");
        assertThat(json.get("conflicts").toString())
                .isEqualTo(
                        "[{\"kind\":\"two-at-once\",\"limb\":\"right-hand\","
                                + "\"sounds\":[\"ride.bell\",\"ride.bow\"],"
                                + "\"places\":[{\"bar\":1,\"step\":1}],"
                                + "\"reason\":\"the right hand cannot strike ride.bell and ride.bow at one"
                                + " instant\"}]");
    }

    @Test
    void aConflictOfNoLimbHasNull() throws JsonProcessingException {
        JsonNode conflict =
                Run.of("groove", "K", "--kit", "hand-drums", "--json").json().at("/conflicts/0");
        assertThat(conflict.get("kind").textValue()).isEqualTo("nothing-to-strike");
        assertThat(conflict.get("limb").isNull()).isTrue();
        assertThat(conflict.get("sounds")).isEmpty();
    }

    @Test
    void everyOptionOfTheVoicingIsWoven() throws JsonProcessingException {
        JsonNode json =
                Run.of(
                                "groove",
                                "R >R (L) L K B H",
                                "--meter",
                                "7/8",
                                "--steps",
                                "1",
                                "--on",
                                "R=ride,floor-tom",
                                "--accent",
                                "R=crash",
                                "--ghost",
                                "L=snare.cross-stick",
                                "--on",
                                "B=high-tom",
                                "--limb",
                                "K=left-foot",
                                "--double",
                                "L=bass-drum",
                                "--double-accents",
                                "R=snare by left-hand",
                                "--stroke",
                                "4=mid-tom",
                                "--tacet",
                                "H",
                                "--json")
                        .json();
        List<String> hits = new ArrayList<>();
        json.get("hits")
                .forEach(
                        hit ->
                                hits.add(
                                        "%d %s %s.%s"
                                                .formatted(
                                                        hit.get("step").intValue(),
                                                        hit.get("limb").textValue(),
                                                        hit.get("surface").textValue(),
                                                        hit.get("sound").textValue())));
        assertThat(hits)
                .containsExactly(
                        "1 right-hand ride.bow",
                        "2 right-hand crash.edge",
                        "2 left-hand snare.head",
                        "3 left-hand snare.cross-stick",
                        "3 right-foot bass-drum.head",
                        "4 left-hand mid-tom.head",
                        "4 right-foot bass-drum.head",
                        "5 left-foot hi-hat.foot",
                        "6 right-hand high-tom.head",
                        "6 left-hand high-tom.head");
    }

    @Test
    void aLeftHandedKitKicksWithTheLeftFoot() throws JsonProcessingException {
        JsonNode hit = Run.of("groove", "K", "--left-handed", "--json").json().at("/hits/0");
        assertThat(hit.get("limb").textValue()).isEqualTo("left-foot");
        assertThat(Run.of("groove", "K", "--left-handed").out())
                .contains("five-piece (left-handed)")
                .containsPattern("Bass drum\\s*\\|K K K K");
    }

    @Test
    void aStickingMayStartWithARest() {
        assertThat(Run.of("groove", "-RL", "--bars", "1").out()).startsWith("-RL\n");
        assertThat(Run.of("groove", "--", "--R").out()).startsWith("--R\n");
    }

    @Test
    void filesAreWrittenWhole() throws IOException {
        Path midi = folder.resolve("g.mid");
        Path wav = folder.resolve("g.wav");
        Path png = folder.resolve("g.png");
        Run run =
                Run.of(
                        "groove",
                        "RLRR LRLL",
                        "--midi",
                        midi.toString(),
                        "--wav",
                        wav.toString(),
                        "--png",
                        png.toString(),
                        "--loops",
                        "2",
                        "--count-in",
                        "1");
        assertThat(run.code()).isZero();
        assertThat(run.err())
                .isEqualTo("written: %s\nwritten: %s\nwritten: %s\n".formatted(midi, wav, png));
        assertThat(start(midi, 4)).isEqualTo("MThd");
        assertThat(start(wav, 4)).isEqualTo("RIFF");
        // Three bars of 4/4 at 90 bpm are 8 seconds of 44,100 frames of 4 bytes.
        assertThat(Files.size(wav)).isGreaterThan(8L * 44_100 * 4);
        BufferedImage image = ImageIO.read(png.toFile());
        assertThat(image.getRGB(0, 0)).isEqualTo(0xFFFFFFFF);
    }

    @Test
    void forceReplaces() throws IOException {
        Path midi = Files.writeString(folder.resolve("g.mid"), "old");
        assertThat(Run.of("groove", "RL", "--midi", midi.toString(), "--force").code()).isZero();
        assertThat(start(midi, 4)).isEqualTo("MThd");
    }

    private static String start(Path file, int bytes) throws IOException {
        return new String(Files.readAllBytes(file), 0, bytes, StandardCharsets.US_ASCII);
    }

    private static List<String> names(JsonNode object) {
        return object.properties().stream().map(field -> field.getKey()).toList();
    }
}
