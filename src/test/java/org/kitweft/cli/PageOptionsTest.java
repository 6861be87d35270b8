package org.kitweft.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageOptionsTest {
    @TempDir Path folder;

    private String pdf(float height, String... options) throws IOException {
        Path file = folder.resolve("page.pdf");
        String[] args = new String[options.length + 4];
        System.arraycopy(new String[] {"groove", "RLRR LRLL", "--pdf"}, 0, args, 0, 3);
        args[3] = file.toString();
        System.arraycopy(options, 0, args, 4, options.length);
        assertThat(Run.of(args))
                .extracting(Run::code, Run::err)
                .contains(0, "written: " + file + "\n");
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getPage(0).getMediaBox().getHeight())
                    .isBetween(height - 1, height + 1);
            return new PDFTextStripper().getText(document);
        }
    }

    /** ISO 216: 297 mm are 841.9 points. */
    @Test
    void aPageIsA4WithCountingAndLegend() throws IOException {
        assertThat(pdf(841.9f)).contains("1 e & a 2 e & a", "Snare");
    }

    @Test
    void paperCountingAndLegendCanBeChosen() throws IOException {
        assertThat(pdf(792, "--paper", "Letter", "--no-counting", "--no-legend"))
                .contains("R L R R")
                .doesNotContain("1 e & a", "Snare");
    }

    @Test
    void aPaperThatIsNoneIsWrongUsage() {
        Run run = Run.of("groove", "RL", "--paper", "b7");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("\"b7\" is no paper, expected a4 or letter");
    }

    @Test
    void oneVoiceHoldsHandsAndFeet() throws IOException {
        assertThat(voices("--one-voice")).containsExactly("1");
        assertThat(voices()).containsExactly("1", "2");
    }

    private Set<String> voices(String... options) throws IOException {
        Path file = folder.resolve(options.length + ".musicxml");
        String[] args = new String[options.length + 4];
        System.arraycopy(new String[] {"groove", "RLKL RLKL", "--musicxml"}, 0, args, 0, 3);
        args[3] = file.toString();
        System.arraycopy(options, 0, args, 4, options.length);
        assertThat(Run.of(args).code()).isZero();
        return Pattern.compile("<voice>(\\d)</voice>")
                .matcher(Files.readString(file))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"pdf", "svg"})
    void aBarTooDenseForThePageIsOneLineAndNothingIsWritten(String kind) {
        Path file = folder.resolve("dense." + kind);
        Path midi = folder.resolve("dense.mid");
        Run run =
                Run.of(
                        "groove",
                        "RLRL",
                        "--meter",
                        "32/4",
                        "--steps",
                        "12",
                        "--midi",
                        midi.toString(),
                        "--" + kind,
                        file.toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains("bar 1 is too dense for the page", "fewer steps per beat");
        assertThat(folder).isEmptyDirectory();
    }
}
