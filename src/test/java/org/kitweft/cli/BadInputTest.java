package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kitweft.lesson.LessonFile;

/** Whatever is wrong with the input: exit code 1 or 2, one clear line, nothing else. */
class BadInputTest {
    @TempDir Path folder;

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        groove;RL;--on;R=snar             | --on R=snar: surface "snar" is not in kit "five-piece"; did you mean "snare"? (snare, high-tom, mid-tom, floor-tom, bass-drum, ride, crash, hi-hat)
        groove;RL;--on;R=ride.bel         | --on R=ride.bel: sound "ride.bel" is not in kit "five-piece"; did you mean "ride.bell"? (ride.bow, ride.bell)
        groove;RL;--on;R=ride,,crash      | --on R=ride,,crash: a sound is missing, as in snare or ride.bell
        groove;RL;--on;R                  | --on R: expected a letter and its sounds, as in R=ride
        groove;RL;--on;Q=ride             | --on Q=ride: found "Q", expected R, L, K, H or B: a letter and its sounds, as in R=ride
        groove;RL;--on;L=hi-hat.foot      | --on L=hi-hat.foot: the left hand cannot strike hi-hat.foot, only the left foot can; hand it over with --limb L=left-foot
        groove;RL;--accent;L=hi-hat.foot  | --accent L=hi-hat.foot: the left hand cannot strike hi-hat.foot, only the left foot can; hand it over with --limb L=left-foot
        groove;RL;--ghost;R=bass-drum     | --ghost R=bass-drum: the right hand cannot strike bass-drum.head, only the right foot can; hand it over with --limb R=right-foot
        groove;KL;--on;K=floor-tom        | --on K=floor-tom: the right foot cannot strike floor-tom.head, only the right hand or the left hand can; hand it over with --limb K=right-hand
        groove;RL;--limb;R=tail           | --limb R=tail: found "tail", expected right-hand, left-hand, right-foot or left-foot
        groove;RL;--kit;marimba;--left-handed | --left-handed: kit "marimba" cannot be mirrored, since bars lie from low at the left to high at the right for every player; leave it out, and type R and L as this player strikes
        kits;vibraphone;--left-handed     | --left-handed: kit "vibraphone" cannot be mirrored, since bars lie from low at the left to high at the right for every player; leave it out, and type R and L as this player strikes
        groove;RL;--limb;R=left-foot;--kit;hand-drums | --limb R=left-foot: kit "hand-drums" has nothing for the left foot
        groove;RL;--tacet;X               | --tacet X: found "X", expected R, L, K, H or B: a letter, as in L
        groove;RL;--double;R=crash by right-foot | --double R=crash by right-foot: the right foot cannot strike crash.edge, only the right hand or the left hand can
        groove;K;--double;K=bass-drum     | --double K=bass-drum: the right foot cannot double itself; another limb must strike bass-drum.head
        groove;RL;--stroke;3=crash        | --stroke 3=crash: the sticking has strokes 1 to 2
        groove;RL;--stroke;0=crash        | --stroke 0=crash: the sticking has strokes 1 to 2
        groove;RL;--stroke;two=crash      | --stroke two=crash: found "two", expected a number
        groove;R-;--stroke;2=crash        | --stroke 2=crash: stroke 2 is a rest
        groove;RL;--stroke;2=bass-drum    | --stroke 2=bass-drum: the left hand cannot strike bass-drum.head, only the right foot can; hand it over with --limb L=right-foot
        groove;RL;--layer;hi-hat.foot     | --layer "hi-hat.foot": expected a sound, its steps a beat and a figure, as in "hi-hat.foot@2: - x - x"
        groove;RL;--layer;snare@9: x      | --layer "snare@9: x": 9 steps per beat: expected 1 to 8 or 12
        groove;RL;--layer;snare@x: x      | --layer "snare@x: x": found "x", expected a number
        groove;RL;--layer;hi-hat.foot by left-hand@2: x | --layer "hi-hat.foot by left-hand@2: x": the left hand cannot strike hi-hat.foot, only the left foot can
        groove;RL;--meter;0/4             | meter 0/4: expected 1 to 32 beats over 4 or 8, as in 4/4 or 6/8
        groove;RL;--meter;four            | meter "four": expected two numbers, as in 4/4 or 6/8
        groove;RL;--tempo;0               | tempo 0: expected 20 to 400 beats a minute
        groove;RL;--tempo;10000           | tempo 10000: expected 20 to 400 beats a minute
        groove;RL;--swing;80              | swing 80: expected 50 (straight) to 75 percent
        groove;RL;--steps;9               | 9 steps per beat: expected 1 to 8 or 12
        groove;RL;--bars;0                | 0 bars: expected 1 to 512
        groove;RL;--loops;0               | --loops 0: expected 1 to 10000
        groove;RL;--loops;10001           | 10001 loops: expected 0 to 10000
        groove;RL;--count-in;9            | 9 count-in bars: expected 0 to 8
        groove;RL;--kit;fife-piece        | kit "fife-piece" is not in the built-in kits; did you mean "five-piece"? (five-piece, extended, hand-drums, marimba, vibraphone, timpani)
        groove;RL;--kit;no/such.json      | kit file no/such.json: there is no such file
        groove;RL;--midi;no/such/a.mid    | cannot write no/such/a.mid: there is no folder *
        groove;RL;--pdf;                  | --pdf "": expected a file name
        groove;RL;--wav;/                 | / is a folder, expected a file
        groove;RL;--force;--wav;/         | / is a folder, expected a file
        groove;RL;--midi;a.x;--png;./a.x  | --midi and --png both write to ./a.x
        groove;RL;--wav;a.wav;--bank;pom.xml | sound bank pom.xml: expected a whole SF2 or DLS file, this one cannot be read
        groove;RL;--play;--bank;none.sf2  | sound bank none.sf2: there is no such file
        count;RL;--choose;R=snare         | letter L of the sticking has no choices: expected sounds for it, as in L=snare
        count;RL;--choose;R=snare;--choose;L=hi-hat.foot | --choose L: the left hand cannot strike hi-hat.foot, only the left foot can
        count;RL;--choose;RL              | choices "RL": expected a letter and its sounds, as in R=snare,high-tom
        stickings;0                       | a sticking has 1 to 512 strokes, not 0
        stickings;513                     | a sticking has 1 to 512 strokes, not 513
        stickings;4;--from;-1             | --from -1: expected 0 or more
        stickings;4;--take;-1             | --take -1: expected 0 or more
        stickings;4;--family;flams        | --family flams: expected singles, doubles, paradiddles or longer-runs
        stickings;4;--longest-run;0       | --longest-run 0: expected 1 or more
        stickings;4;--starts-with;RK      | --starts-with RK: expected R and L only, the catalogue is of hands
        stickings;4;--cycle-of;RLR        | --cycle-of RLR: expected 4 strokes of R and L
        rudiments;41                      | rudiment 41: there are 40, expected a number from 1 to 40
        rudiments;flums                   | rudiment "flums": expected a number from 1 to 40, a name or a part of one; without it all are listed
        kits;timpany                      | kit "timpany" is not in the built-in kits; did you mean "timpani"? (five-piece, extended, hand-drums, marimba, vibraphone, timpani)
        demo;                             | folder "": expected a name, or . for the current one
        demo;pom.xml                      | pom.xml is a file, expected a folder
        """)
    void wrongInputIsToldInOneLine(String command, String line) {
        Run run = Run.of(command.split(";", -1));
        if (line.endsWith("*")) {
            assertThat(run.err()).startsWith("kitweft: " + line.replace("*", ""));
        } else {
            assertThat(run.err()).isEqualTo("kitweft: " + line + "\n");
        }
        assertThat(run.code()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(run.err().lines()).hasSize(1);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        RLX         | sticking, character 3: found 'X', expected R, L, K, H, B, a rest '-' or a repeat '[' | RLX | 3
        RL [RLRR    | sticking, character 4: found '[', expected a ']' and a number of times for this repeat | RL [RLRR | 4
        [R]*512 R   | sticking, character 9: found 'R', expected at most 512 strokes in all | [R]*512 R | 9
        """)
    void aFaultOfTheStickingIsShownWithACaret(
            String sticking, String line, String shown, int column) {
        Run run = Run.of("groove", sticking);
        assertThat(run.code()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .isEqualTo(
                        "kitweft: %s\n  %s\n  %s^\n"
                                .formatted(line, shown, " ".repeat(column - 1)));
        assertThat(Run.of("count", sticking).err()).isEqualTo(run.err());
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aPipeIsNeverReplaced() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
        for (String option : List.of("--midi", "--png")) {
            Run run = Run.of("groove", "RL", option, pipe.toString(), "--force");
            assertThat(run.code()).isEqualTo(Cli.WRONG_INPUT);
            assertThat(run.err())
                    .isEqualTo("kitweft: %s is no regular file, it cannot be replaced\n", pipe);
        }
    }

    @Test
    void jsonNestedTooDeepIsToldInOurWords() throws IOException {
        Path deep = Files.writeString(folder.resolve("deep.json"), "[".repeat(2000));
        Run run = Run.of("kits", deep.toString());
        assertThat(run.code()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(run.err())
                .contains("nested too deep")
                .contains("deep.json")
                .doesNotContain("jackson", "StreamRead")
                .hasLineCount(1);
        assertThatThrownBy(() -> LessonFile.parse("[".repeat(2000), "deep.lesson"))
                .hasMessageContaining("nested too deep")
                .hasMessageNotContaining("StreamRead");
    }

    @Test
    void aStickingMayStartWithSeveralRests() {
        for (String sticking : List.of("---- RL", "--lR L", "--[RL]*2", "-RL")) {
            Run run = Run.of("groove", sticking, "--steps", "4");
            assertThat(run.err()).as(sticking).isEmpty();
            assertThat(run.code()).as(sticking).isEqualTo(Cli.DONE);
        }
    }

    @Test
    void aFaultOfAFigureIsShownWithACaret() {
        assertThat(Run.of("groove", "RL", "--layer", "snare@2: x y").err())
                .isEqualTo(
                        """
                        kitweft: layer, character 3: found 'y', expected x, >x, (x) or a rest '-'
                          x y
                            ^
                        """);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
        groove                  | Missing required parameter: 'STICKING' | kitweft groove
        groove;RL;--tempoo;90   | Unknown options: '--tempoo', '90' | kitweft groove
        groove;RL;--tempo;fast  | Invalid value for option '--tempo': 'fast' is not a whole number | kitweft groove
        stickings;four          | Invalid value for positional parameter at index 0 (N): 'four' is not a whole number | kitweft stickings
        list;RLRR;--best;3;--sample;3 | --best=N, --sample=N are mutually exclusive (specify only one) | kitweft list
        grove;RL                | Unmatched arguments from index 0: 'grove', 'RL' | kitweft
        count;RL;LR             | Unmatched argument at index 2: 'LR' | kitweft count
        """)
    void wrongUsageHasACodeOfItsOwn(String command, String line, String help) {
        Run run = Run.of(command.split(";"));
        assertThat(run.code()).isEqualTo(Cli.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("kitweft: " + line).endsWith("Try: " + help + " --help\n");
        assertThat(run.err()).doesNotContain("Exception", "\tat ");
    }

    @Test
    void aKitFileWithAFaultIsNamedWithItsPlace() throws IOException {
        Path file = folder.resolve("kit.json");
        String whole = Run.of("kits", "five-piece", "--json").out();
        List<String> faults = new ArrayList<>();
        for (String json :
                Arrays.asList(
                        whole.replaceFirst("\"left-hand\"", "\"third-hand\""),
                        whole.replaceFirst("\"key\" : 38", "\"key\" : 138"),
                        whole.replace("\"high-tom\"", "\"snare\""),
                        whole.substring(0, whole.length() / 2))) {
            Files.writeString(file, json);
            Run run = Run.of("groove", "RL", "--kit", file.toString());
            assertThat(run.code()).isEqualTo(Cli.WRONG_INPUT);
            assertThat(run.err().lines()).hasSize(1);
            faults.add(run.err().replace(file.toString(), "FILE").strip());
        }
        assertThat(faults.get(0))
                .startsWith("kitweft: kit file FILE: surface 1 (\"snare\"): unknown limb");
        assertThat(faults.get(1)).contains("key 138 is outside 0 to 127");
        assertThat(faults.get(2)).contains("two surfaces have the id \"snare\"");
        assertThat(faults.get(3)).contains("line ", "it is not whole JSON text");
    }

    @ParameterizedTest
    @CsvSource({"--midi,a.mid", "--wav,a.wav", "--png,a.png"})
    void anExistingFileIsNeverReplacedUnasked(String option, String name) throws IOException {
        Path target = Files.writeString(folder.resolve(name), "mine");
        Run run = Run.of("groove", "RLRR", option, target.toString());
        assertThat(run.code()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(run.err())
                .isEqualTo(
                        "kitweft: %s exists already and was not replaced; --force replaces it\n"
                                .formatted(target));
        assertThat(target).hasContent("mine");
        assertThat(folder).isDirectoryNotContaining(path -> !path.equals(target));
    }

    @Test
    void nothingIsWrittenIfOneOfTheTargetsExists() throws IOException {
        Path png = Files.writeString(folder.resolve("a.png"), "mine");
        Path midi = folder.resolve("a.mid");
        Run run = Run.of("groove", "RL", "--midi", midi.toString(), "--png", png.toString());
        assertThat(run.code()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(midi).doesNotExist();
    }
}
