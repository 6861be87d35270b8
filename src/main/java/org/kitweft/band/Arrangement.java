package org.kitweft.band;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.kitweft.groove.Phrase;

/**
 * All that a band needs beside the drums: a chart, a style, the clave's direction, and a seed for
 * what players vary. Immutable; the same arrangement on the same phrase gives the same notes.
 *
 * @param chart the chords
 * @param style how the band plays
 * @param clave which side of the clave comes first; only styles with a clave hear it
 * @param seed for the choices among figures and equal ways
 */
public record Arrangement(ChordChart chart, Style style, ClaveDirection clave, long seed) {
    /** Our own channels, away from the percussion channel and those of the built-in kits. */
    private static final int BASS_CHANNEL = 13;

    private static final int COMPING_CHANNEL = 14;
    private static final int PUNCHES_CHANNEL = 15;

    public Arrangement {
        Objects.requireNonNull(chart, "chart");
        Objects.requireNonNull(style, "style");
        Objects.requireNonNull(clave, "clave");
    }

    /** A chart in a style, clave 3-2, seed 0. */
    public static Arrangement of(ChordChart chart, Style style) {
        return new Arrangement(chart, style, ClaveDirection.THREE_TWO, 0);
    }

    /** The same with another chart. */
    public Arrangement with(ChordChart other) {
        return new Arrangement(other, style, clave, seed);
    }

    /** The same in another style. */
    public Arrangement with(Style other) {
        return new Arrangement(chart, other, clave, seed);
    }

    /** The same with the clave in a direction. */
    public Arrangement with(ClaveDirection other) {
        return new Arrangement(chart, style, other, seed);
    }

    /** The same with another seed. */
    public Arrangement withSeed(long other) {
        return new Arrangement(chart, style, clave, other);
    }

    /**
     * Plays a phrase: bass, comping, punches, in this order, always all three. A chart shorter than
     * the phrase starts again.
     *
     * @throws IllegalArgumentException if the chart is longer than the phrase
     */
    public List<BandPart> play(Phrase phrase) {
        PhraseTime time = new PhraseTime(phrase, chart);
        return List.of(
                bass(time),
                chords("comping", COMPING_CHANNEL, style.comping(), time),
                chords("punches", PUNCHES_CHANNEL, style.punches(), time));
    }

    private BandPart bass(PhraseTime time) {
        StyleLine line = style.bass();
        List<Cue> cues = CueSheet.of(time, style, line, clave, seed);
        List<Integer> keys =
                new BassSearch(line).search(cues.stream().filter(Cue::sounds).toList(), seed);
        List<BandNote> notes = new ArrayList<>();
        int sounding = 0;
        for (int i = 0; i < cues.size(); i++) {
            if (cues.get(i).sounds()) {
                notes.add(note(cues, i, keys.get(sounding++), line, time));
            }
        }
        return new BandPart("bass", BASS_CHANNEL, line.program(), notes);
    }

    private BandPart chords(String name, int channel, StyleLine line, PhraseTime time) {
        List<Cue> cues = CueSheet.of(time, style, line, clave, seed);
        List<Chord> chords =
                cues.stream().filter(Cue::sounds).map(cue -> cue.chord().orElseThrow()).toList();
        VoicingSearch search =
                new VoicingSearch(line.voices().orElseThrow(), line.low(), line.high());
        List<List<Integer>> voicings = search.search(chords);
        List<BandNote> notes = new ArrayList<>();
        int sounding = 0;
        for (int i = 0; i < cues.size(); i++) {
            if (cues.get(i).sounds()) {
                List<Integer> voicing = voicings.get(sounding++);
                for (int key : part(voicing, cues.get(i).step().voice())) {
                    notes.add(note(cues, i, key, line, time));
                }
            }
        }
        return new BandPart(name, channel, line.program(), notes);
    }

    /** The voices that a step of a figure strikes: the lowest, the inner, the outer, or all. */
    private static List<Integer> part(List<Integer> voicing, String voice) {
        int top = voicing.size() - 1;
        return switch (voice) {
            case "b" -> voicing.subList(0, 1);
            case "i" -> top > 1 ? voicing.subList(1, top) : voicing;
            case "o" -> top > 0 ? List.of(voicing.get(0), voicing.get(top)) : voicing;
            default -> voicing;
        };
    }

    private static BandNote note(
            List<Cue> cues, int index, int key, StyleLine line, PhraseTime time) {
        Cue cue = cues.get(index);
        return new BandNote(
                cue.start(),
                Lengths.of(cues, index, line, time),
                key,
                CueSheet.velocity(line, cue.step(), time.placeOf(cue.written())));
    }
}
