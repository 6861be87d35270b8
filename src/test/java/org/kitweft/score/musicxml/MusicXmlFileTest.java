package org.kitweft.score.musicxml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kitweft.band.ChordChart;
import org.kitweft.file.SafeFile;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Ticks;
import org.kitweft.groove.Voicing;
import org.kitweft.groove.Weaver;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.RandomGrooves;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.PlayedWith;
import org.kitweft.score.model.Score;
import org.xml.sax.SAXException;

class MusicXmlFileTest {
    private static final int CASES = 250;
    private static final Optional<ChordChart> CHART =
            Optional.of(ChordChart.parse("Dm7 G7(b9) | Ebmaj7/G N.C. Am"));
    private static final MusicXmlSettings SETTINGS = new MusicXmlSettings("Test & <title>");

    @Test
    void everyFileIsValidAndSoundsAtTheGroovesOnsetsOnItsKeys() throws Exception {
        MusicXmlSchema schema = new MusicXmlSchema();
        try (LibraryReader library = new LibraryReader()) {
            for (int seed = 0; seed < CASES; seed++) {
                Groove groove = RandomGrooves.of(seed);
                boolean fold = seed % 2 == 0;
                Score score =
                        Notation.of(
                                Phrase.of(groove),
                                NotationOptions.DEFAULT
                                        .withFoldRepeats(fold)
                                        .withOneVoice(seed % 5 == 0),
                                PlayedWith.at(new Tempo(90))
                                        .withChart(seed % 3 == 0 ? CHART : Optional.empty()));
                byte[] file = MusicXmlFile.bytes(score, SETTINGS);
                schema.check(file);
                assertThat(MusicXmlReader.read(file))
                        .as("seed %d", seed)
                        .isEqualTo(expected(groove));
                assertThat(library.read(file))
                        .as("seed %d, library", seed)
                        .isEqualTo(expected(groove));
            }
        }
    }

    /** So that the property above speaks of every kit, step and meter that it should. */
    @Test
    void theCasesCoverEveryKitStepAndMeter() {
        Set<String> kits = new TreeSet<>();
        Set<Integer> steps = new TreeSet<>();
        Set<String> meters = new TreeSet<>();
        for (int seed = 0; seed < CASES; seed++) {
            Groove groove = RandomGrooves.of(seed);
            kits.add(groove.kit().name());
            steps.add(groove.grid().stepsPerBeat());
            meters.add(groove.grid().meter().text());
        }
        assertThat(kits).containsAll(BuiltInKits.names());
        assertThat(steps).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 12);
        assertThat(meters)
                .contains("2/4", "3/4", "4/4", "5/4", "3/8", "5/8", "6/8", "7/8", "9/8", "12/8");
    }

    /** The library's reader is no echo: other keys and other lengths are seen. */
    @Test
    void theLibrarySeesAnotherKeyAndAnotherLength() throws Exception {
        String text = new String(bytesOfParadiddle(), StandardCharsets.UTF_8);
        try (LibraryReader library = new LibraryReader()) {
            SortedSet<MusicXmlReader.Onset> right = library.read(bytesOfParadiddle());
            assertThat(library.read(changed(text, "<midi-unpitched>39<", "<midi-unpitched>41<")))
                    .isNotEqualTo(right)
                    .hasSameSizeAs(right);
            assertThat(library.read(changed(text, "<duration>1<", "<duration>2<")))
                    .isNotEqualTo(right)
                    .hasSameSizeAs(right);
        }
    }

    private static byte[] changed(String text, String from, String to) {
        assertThat(text).contains(from);
        return text.replace(from, to).getBytes(StandardCharsets.UTF_8);
    }

    private static SortedSet<MusicXmlReader.Onset> expected(Groove groove) {
        SortedSet<MusicXmlReader.Onset> onsets = new TreeSet<>();
        for (Hit hit : groove.hits()) {
            onsets.add(
                    new MusicXmlReader.Onset(
                            Ticks.quarters(hit.written()), groove.kit().sound(hit.sound()).key()));
        }
        return onsets;
    }

    @Test
    void schemaRefusesWhatIsNotMusicXml() throws Exception {
        String wrong =
                new String(bytesOfParadiddle(), StandardCharsets.UTF_8)
                        .replace("<duration>1</duration>", "<duration>long</duration>");
        MusicXmlSchema schema = new MusicXmlSchema();
        assertThatThrownBy(() -> schema.check(wrong.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(SAXException.class)
                .hasMessageContaining("long");
    }

    /** MusicXML 4.0, midi-unpitched: counts from 1, so the snare's key 38 is written 39. */
    @Test
    void unpitchedKeysCountFromOne() {
        assertThat(new String(bytesOfParadiddle(), StandardCharsets.UTF_8))
                .contains("<midi-unpitched>39</midi-unpitched>")
                .contains("version=\"4.0\">")
                .contains("<text>R</text>");
    }

    @Test
    void compressedFileHoldsContainerAndScore(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("groove.mxl");
        Score score = Notation.of(paradiddle(), NotationOptions.DEFAULT);
        MusicXmlFile.write(score, SETTINGS, file, SafeFile.Existing.KEEP);
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip =
                new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
                if (entry.getName().equals("score.musicxml")) {
                    assertThat(zip.readAllBytes()).isEqualTo(MusicXmlFile.bytes(score, SETTINGS));
                }
            }
        }
        assertThat(names).containsExactly("META-INF/container.xml", "score.musicxml");
    }

    private static Groove paradiddle() {
        Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
        return Weaver.weave(
                Sticking.parse(">RLRR >LRLL"),
                kit,
                Voicing.plain(kit),
                new Grid(Meter.COMMON, 4, 50, false));
    }

    private static byte[] bytesOfParadiddle() {
        return MusicXmlFile.bytes(Notation.of(paradiddle(), NotationOptions.DEFAULT), SETTINGS);
    }
}
