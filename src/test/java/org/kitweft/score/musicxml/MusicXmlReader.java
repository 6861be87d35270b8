package org.kitweft.score.musicxml;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.numbers.fraction.Fraction;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/**
 * Reads the sounding notes of a MusicXML file as the W3C reference describes it: divisions, chord,
 * backup, ties, repeats, midi-unpitched less one, pitches. Shares nothing with the writer.
 */
final class MusicXmlReader {
    /** When a key sounds, in quarters from the start. */
    record Onset(Fraction start, int key) implements Comparable<Onset> {
        @Override
        public int compareTo(Onset other) {
            int order = start.compareTo(other.start);
            return order != 0 ? order : Integer.compare(key, other.key);
        }
    }

    private final Map<String, Integer> keys = new HashMap<>();
    private int divisions = 1;

    static SortedSet<Onset> read(byte[] file) throws Exception {
        return new MusicXmlReader().onsets(file);
    }

    private SortedSet<Onset> onsets(byte[] file) throws Exception {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        builder.setEntityResolver((p, s) -> new InputSource(new ByteArrayInputStream(new byte[0])));
        Document document = builder.parse(new ByteArrayInputStream(file));
        for (Element midi : all(document.getDocumentElement(), "midi-instrument")) {
            all(midi, "midi-unpitched")
                    .forEach(
                            key ->
                                    keys.put(
                                            midi.getAttribute("id"),
                                            Integer.parseInt(key.getTextContent()) - 1));
        }
        List<Element> measures = unrolled(all(document.getDocumentElement(), "measure"));
        SortedSet<Onset> onsets = new TreeSet<>();
        Fraction start = Fraction.ZERO;
        for (Element measure : measures) {
            start = start.add(measure(measure, start, onsets));
        }
        return onsets;
    }

    private static List<Element> unrolled(List<Element> measures) {
        List<Element> played = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < measures.size(); i++) {
            int times = 1;
            for (Element repeat : all(measures.get(i), "repeat")) {
                if (repeat.getAttribute("direction").equals("forward")) {
                    from = i;
                } else {
                    times = Integer.parseInt(repeat.getAttribute("times"));
                }
            }
            played.add(measures.get(i));
            for (int again = 1; again < times; again++) {
                played.addAll(measures.subList(from, i + 1));
            }
        }
        return played;
    }

    /** The length of the measure: where its farthest voice ends. */
    private Fraction measure(Element measure, Fraction start, SortedSet<Onset> onsets) {
        int at = 0;
        int last = 0;
        int farthest = 0;
        for (Element child : children(measure)) {
            switch (child.getTagName()) {
                case "attributes" ->
                        all(child, "divisions")
                                .forEach(d -> divisions = Integer.parseInt(d.getTextContent()));
                case "backup" -> at -= number(child, "duration");
                case "note" -> {
                    if (!all(child, "grace").isEmpty()) {
                        continue;
                    }
                    int duration = number(child, "duration");
                    boolean chord = !all(child, "chord").isEmpty();
                    int onset = chord ? last : at;
                    boolean tiedBack =
                            all(child, "tie").stream()
                                    .anyMatch(t -> t.getAttribute("type").equals("stop"));
                    if (all(child, "rest").isEmpty() && !tiedBack) {
                        onsets.add(new Onset(start.add(Fraction.of(onset, divisions)), key(child)));
                    }
                    if (!chord) {
                        last = at;
                        at += duration;
                        farthest = Math.max(farthest, at);
                    }
                }
                default -> {}
            }
        }
        return Fraction.of(farthest, divisions);
    }

    private int key(Element note) {
        if (!all(note, "pitch").isEmpty()) {
            int step = "C D EF G A B".indexOf(all(note, "step").get(0).getTextContent());
            int alter =
                    all(note, "alter").stream()
                            .mapToInt(a -> Integer.parseInt(a.getTextContent()))
                            .sum();
            return 12 * (number(note, "octave") + 1) + step + alter;
        }
        String instrument = all(note, "instrument").get(0).getAttribute("id");
        return keys.getOrDefault(instrument, -1);
    }

    private static int number(Element parent, String name) {
        return Integer.parseInt(all(parent, name).get(0).getTextContent());
    }

    private static List<Element> all(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        var nodes = parent.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    private static List<Element> children(Element parent) {
        List<Element> found = new ArrayList<>();
        for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element element) {
                found.add(element);
            }
        }
        return found;
    }
}
