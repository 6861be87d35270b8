package org.kitweft.score.musicxml;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.audiveris.proxymusic.MidiInstrument;
import org.audiveris.proxymusic.PartList;
import org.audiveris.proxymusic.PartName;
import org.audiveris.proxymusic.ScoreInstrument;
import org.audiveris.proxymusic.ScorePart;
import org.kitweft.groove.Hit;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.Clef;
import org.kitweft.score.model.Score;

/**
 * The instruments of a part: one for each unpitched sound, one for all bars of a pitched kit.
 * Programs and unpitched keys count from 1 in MusicXML, channels too.
 */
final class Instruments {
    private static final String PART_ID = "P1";

    private final Score score;
    private final Map<String, ScoreInstrument> byId = new LinkedHashMap<>();
    private final Map<String, MidiInstrument> midiById = new LinkedHashMap<>();

    Instruments(Score score) {
        this.score = score;
        score.measures().stream()
                .flatMap(m -> m.voices().stream())
                .flatMap(v -> v.events().stream())
                .filter(Chord.class::isInstance)
                .flatMap(e -> ((Chord) e).heads().stream())
                .map(head -> head.hit().sound())
                .filter(score.kit()::has)
                .sorted()
                .forEach(this::add);
    }

    boolean pitched() {
        return score.clef() != Clef.PERCUSSION;
    }

    private void add(SoundName name) {
        String id = idOf(name);
        if (byId.containsKey(id)) {
            return;
        }
        Kit kit = score.kit();
        Sound sound = kit.sound(name);
        ScoreInstrument instrument = new ScoreInstrument();
        instrument.setId(id);
        instrument.setInstrumentName(
                pitched() ? kit.name() : kit.surfaceOf(name).name() + " " + sound.id());
        byId.put(id, instrument);
        MidiInstrument midi = new MidiInstrument();
        midi.setId(instrument);
        midi.setMidiChannel(sound.channel());
        sound.program().ifPresent(program -> midi.setMidiProgram(program + 1));
        if (!pitched()) {
            midi.setMidiUnpitched(sound.key() + 1);
        }
        midiById.put(id, midi);
    }

    private String idOf(SoundName name) {
        return PART_ID + "-" + (pitched() ? "bars" : name.text());
    }

    /** The instrument that plays a hit; one that the kit lacks gets an instrument without MIDI. */
    ScoreInstrument of(Hit hit) {
        String id =
                score.kit().has(hit.sound())
                        ? idOf(hit.sound())
                        : PART_ID + "-unknown-" + hit.sound().text();
        return byId.computeIfAbsent(
                id,
                any -> {
                    ScoreInstrument unknown = new ScoreInstrument();
                    unknown.setId(id);
                    unknown.setInstrumentName(hit.sound().text());
                    return unknown;
                });
    }

    /** The list of the one part; call it after all hits were asked for. */
    PartList partList(ScorePart part) {
        part.setId(PART_ID);
        PartName name = new PartName();
        name.setValue(Objects.requireNonNull(score.kit().name()));
        part.setPartName(name);
        part.getScoreInstrument().addAll(byId.values());
        part.getMidiDeviceAndMidiInstrument().addAll(midiById.values());
        PartList list = new PartList();
        list.getPartGroupOrScorePart().add(part);
        return list;
    }
}
