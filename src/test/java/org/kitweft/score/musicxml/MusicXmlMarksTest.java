package org.kitweft.score.musicxml;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.kitweft.band.Chord;
import org.kitweft.band.ChordChart;
import org.kitweft.band.PitchName;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Voicing;
import org.kitweft.groove.Weaver;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.pattern.Sticking;
import org.kitweft.score.model.Notation;
import org.kitweft.score.model.NotationOptions;
import org.kitweft.score.model.PlayedWith;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/** Swing, tempo and chords of a file, read by the W3C's schema and its descriptions. */
class MusicXmlMarksTest {
    /**
     * Semitones of the kinds: W3C MusicXML 4.0, documentation of kind-value in the schema that the
     * library brings.
     */
    private static final Map<String, List<Integer>> KINDS =
            Map.ofEntries(
                    entry("major", List.of(0, 4, 7)),
                    entry("minor", List.of(0, 3, 7)),
                    entry("augmented", List.of(0, 4, 8)),
                    entry("diminished", List.of(0, 3, 6)),
                    entry("dominant", List.of(0, 4, 7, 10)),
                    entry("major-seventh", List.of(0, 4, 7, 11)),
                    entry("minor-seventh", List.of(0, 3, 7, 10)),
                    entry("diminished-seventh", List.of(0, 3, 6, 9)),
                    entry("augmented-seventh", List.of(0, 4, 8, 10)),
                    entry("half-diminished", List.of(0, 3, 6, 10)),
                    entry("major-minor", List.of(0, 3, 7, 11)),
                    entry("major-sixth", List.of(0, 4, 7, 9)),
                    entry("minor-sixth", List.of(0, 3, 7, 9)),
                    entry("dominant-ninth", List.of(0, 4, 7, 10, 14)),
                    entry("major-ninth", List.of(0, 4, 7, 11, 14)),
                    entry("minor-ninth", List.of(0, 3, 7, 10, 14)),
                    entry("dominant-11th", List.of(0, 4, 7, 10, 14, 17)),
                    entry("major-11th", List.of(0, 4, 7, 11, 14, 17)),
                    entry("minor-11th", List.of(0, 3, 7, 10, 14, 17)),
                    entry("dominant-13th", List.of(0, 4, 7, 10, 14, 17, 21)),
                    entry("major-13th", List.of(0, 4, 7, 11, 14, 17, 21)),
                    entry("minor-13th", List.of(0, 3, 7, 10, 14, 17, 21)),
                    entry("suspended-second", List.of(0, 2, 7)),
                    entry("suspended-fourth", List.of(0, 5, 7)),
                    entry("power", List.of(0, 7)));

    private static final int[] MAJOR = {0, 2, 4, 5, 7, 9, 11};

    @Test
    void swingIsTheExactRatioOfTheNotesThatSwing() throws Exception {
        for (int percent = Grid.STRAIGHT + 1; percent <= Grid.MOST_SWING; percent++) {
            for (int steps : new int[] {2, 4}) {
                Element root = read(groove(steps, percent), Optional.empty());
                Element swing = only(root, "swing");
                int first = Integer.parseInt(only(swing, "first").getTextContent());
                int second = Integer.parseInt(only(swing, "second").getTextContent());
                assertThat(first * (100 - percent)).isEqualTo(second * percent);
                assertThat(only(swing, "swing-type").getTextContent())
                        .isEqualTo(steps == 2 ? "eighth" : "16th");
                assertThat(only(root, "words").getTextContent())
                        .startsWith("swing " + percent + " %");
                assertThat(only(root, "per-minute").getTextContent()).isEqualTo("90");
            }
        }
    }

    /** Thirty-seconds swing, but the schema has no word for them. */
    @Test
    void swingOfOtherNotesHasWordsAlone() throws Exception {
        Element root = read(groove(8, 60), Optional.empty());
        assertThat(only(root, "words").getTextContent()).isEqualTo("swing 60 %, thirty-seconds");
        assertThat(all(root, "swing")).isEmpty();
    }

    @Test
    void swingWithoutEffectIsNotSaid() throws Exception {
        for (Groove groove : List.of(groove(3, 67), groove(4, Grid.STRAIGHT), groove(1, 67))) {
            Element root = read(groove, Optional.empty());
            assertThat(all(root, "swing")).isEmpty();
            assertThat(all(root, "words")).isEmpty();
        }
    }

    @Test
    void everyChordReadsBackToItsTonesAndBass() throws Exception {
        for (String text :
                List.of(
                        "C",
                        "Am",
                        "Dm7",
                        "G7",
                        "Cmaj7",
                        "F#m7b5",
                        "Bbmaj9",
                        "C7(b9,#11)",
                        "Am/G",
                        "Bdim7",
                        "Ebdim",
                        "E7(#9)",
                        "Asus4",
                        "A7sus4",
                        "Dsus2",
                        "Cadd9",
                        "F6",
                        "Fm6",
                        "Gm9",
                        "G13",
                        "C+",
                        "G5",
                        "D/F#",
                        "C7(b9,#9)",
                        "Dm11")) {
            Chord chord = Chord.parse(text);
            Element root = read(groove(4, 50), Optional.of(ChordChart.parse(text)));
            List<Element> harmonies = all(root, "harmony");
            assertThat(harmonies).as(text).hasSize(1);
            Element harmony = harmonies.get(0);
            assertThat(tones(harmony))
                    .as(text)
                    .isEqualTo(
                            chord.tones().stream()
                                    .map(PitchName::pitchClass)
                                    .collect(Collectors.toCollection(TreeSet::new)));
            List<Element> bass = all(harmony, "bass");
            assertThat(bass).as(text).hasSize(chord.slashBass().isPresent() ? 1 : 0);
            for (Element of : bass) {
                assertThat(pitchClass(of, "bass")).isEqualTo(chord.bass().pitchClass());
            }
        }
    }

    @Test
    void chordsStandWhereTheyBeginAndSilenceIsSaid() throws Exception {
        Element root = read(groove(4, 50), Optional.of(ChordChart.parse("Dm7 / G7 N.C.")));
        List<Element> harmonies = all(root, "harmony");
        int divisions = Integer.parseInt(only(root, "divisions").getTextContent());
        assertThat(harmonies).hasSize(3);
        assertThat(harmonies.stream().map(MusicXmlMarksTest::place))
                .containsExactly(0.0, 2.0 * divisions, 3.0 * divisions);
        assertThat(only(harmonies.get(2), "kind").getTextContent()).isEqualTo("none");
    }

    /** A chord before grace notes makes LilyPond's reader skip back, with a warning. */
    @Test
    void chordsStandBetweenGraceNotesAndTheirNote() throws Exception {
        Element root =
                read(
                        groove("lR L llR K", 4, Grid.STRAIGHT),
                        Optional.of(ChordChart.parse("Dm7 G7")));
        List<Element> harmonies = all(root, "harmony");
        assertThat(harmonies).hasSize(2);
        for (Element harmony : harmonies) {
            assertThat(all(neighbour(harmony, Node::getPreviousSibling), "grace")).hasSize(1);
            assertThat(all(neighbour(harmony, Node::getNextSibling), "grace")).isEmpty();
        }
        int divisions = Integer.parseInt(only(root, "divisions").getTextContent());
        assertThat(harmonies.stream().map(MusicXmlMarksTest::place))
                .containsExactly(0.0, 2.0 * divisions);
    }

    private static Element neighbour(Element element, UnaryOperator<Node> step) {
        Node at = step.apply(element);
        while (!(at instanceof Element found)) {
            at = step.apply(at);
        }
        return found;
    }

    /** Divisions from the start of the measure: notes before it in its voice, and its offset. */
    private static double place(Element harmony) {
        double place = 0;
        for (Element offset : all(harmony, "offset")) {
            place += Double.parseDouble(offset.getTextContent());
        }
        for (Node at = harmony.getPreviousSibling(); at != null; at = at.getPreviousSibling()) {
            assertThat(at.getNodeName()).as("all before it is one voice").isNotEqualTo("backup");
            boolean timed =
                    at instanceof Element note
                            && note.getTagName().equals("note")
                            && all(note, "chord").isEmpty()
                            && all(note, "grace").isEmpty();
            if (timed) {
                place += Double.parseDouble(only((Element) at, "duration").getTextContent());
            }
        }
        return place;
    }

    private static SortedSet<Integer> tones(Element harmony) {
        List<Integer> tones =
                new ArrayList<>(
                        KINDS.getOrDefault(only(harmony, "kind").getTextContent(), List.of()));
        for (Element degree : all(harmony, "degree")) {
            int number = Integer.parseInt(only(degree, "degree-value").getTextContent());
            int alter = Integer.parseInt(only(degree, "degree-alter").getTextContent());
            int natural = MAJOR[(number - 1) % 7] + 12 * ((number - 1) / 7);
            switch (only(degree, "degree-type").getTextContent()) {
                case "add" -> tones.add(natural + alter - (number == 7 ? 1 : 0));
                case "subtract" -> tones.remove(near(tones, natural));
                default -> {
                    Integer old = near(tones, natural);
                    tones.remove(old);
                    tones.add(old + alter);
                }
            }
        }
        int root = pitchClass(harmony, "root");
        return tones.stream()
                .map(tone -> (tone + root) % 12)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Integer near(List<Integer> tones, int natural) {
        return tones.stream()
                .filter(tone -> Math.abs(tone - natural) < 2)
                .findFirst()
                .orElseThrow();
    }

    private static int pitchClass(Element parent, String what) {
        int step = "C D EF G A B".indexOf(only(parent, what + "-step").getTextContent());
        int alter =
                all(parent, what + "-alter").stream()
                        .mapToInt(a -> Integer.parseInt(a.getTextContent()))
                        .sum();
        return Math.floorMod(step + alter, 12);
    }

    /** W3C MusicXML 4.0, slur: most are a start and a stop of one number. */
    @Test
    void graceNotesAreSlurredToTheirNote() throws Exception {
        Groove groove = groove("lR L >rrL - (lR) K", 4, Grid.STRAIGHT);
        Element root = read(groove, Optional.empty());
        long graced = groove.hits().stream().filter(h -> h.ornament().graceNotes() > 0).count();
        int slurred = 0;
        Optional<Element> open = Optional.empty();
        for (Element note : all(root, "note")) {
            boolean grace = !all(note, "grace").isEmpty();
            for (Element slur : all(note, "slur")) {
                assertThat(slur.getAttribute("number")).isEqualTo("1");
                boolean start = slur.getAttribute("type").equals("start");
                assertThat(start).isEqualTo(grace).isEqualTo(open.isEmpty());
                if (start) {
                    assertThat(slur.getAttribute("placement")).isEqualTo("below");
                    assertThat(only(note, "stem").getTextContent()).isEqualTo("up");
                }
                open = start ? Optional.of(note) : Optional.empty();
                slurred += start ? 1 : 0;
            }
            assertThat(open.isPresent()).as("slurs span grace notes alone").isEqualTo(grace);
        }
        assertThat(slurred).isEqualTo((int) graced).isPositive();
    }

    private static Groove groove(int steps, int swing) {
        return groove("RLRR LRLL", steps, swing);
    }

    private static Groove groove(String sticking, int steps, int swing) {
        Kit kit = BuiltInKits.load(BuiltInKits.DEFAULT);
        return Weaver.weave(
                Sticking.parse(sticking),
                kit,
                Voicing.plain(kit),
                new Grid(Meter.COMMON, steps, swing, false));
    }

    private static Element read(Groove groove, Optional<ChordChart> chart) throws Exception {
        byte[] file =
                MusicXmlFile.bytes(
                        Notation.of(
                                Phrase.of(groove),
                                NotationOptions.DEFAULT,
                                PlayedWith.at(new Tempo(90)).withChart(chart)),
                        MusicXmlSettings.NONE);
        new MusicXmlSchema().check(file);
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        builder.setEntityResolver((p, s) -> new InputSource(new ByteArrayInputStream(new byte[0])));
        return builder.parse(new ByteArrayInputStream(file)).getDocumentElement();
    }

    private static Element only(Element parent, String name) {
        List<Element> found = all(parent, name);
        assertThat(found).as(name).hasSize(1);
        return found.get(0);
    }

    private static List<Element> all(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        var nodes = parent.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }
}
