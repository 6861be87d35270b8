package org.kitweft.score.musicxml;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.AccidentalValue;
import org.audiveris.proxymusic.Articulations;
import org.audiveris.proxymusic.Beam;
import org.audiveris.proxymusic.BeamValue;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.EmptyPlacement;
import org.audiveris.proxymusic.Grace;
import org.audiveris.proxymusic.Instrument;
import org.audiveris.proxymusic.Lyric;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.NoteType;
import org.audiveris.proxymusic.Notehead;
import org.audiveris.proxymusic.NoteheadValue;
import org.audiveris.proxymusic.ObjectFactory;
import org.audiveris.proxymusic.Ornaments;
import org.audiveris.proxymusic.Pitch;
import org.audiveris.proxymusic.Slur;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.StartStopContinue;
import org.audiveris.proxymusic.Stem;
import org.audiveris.proxymusic.StemValue;
import org.audiveris.proxymusic.Step;
import org.audiveris.proxymusic.Syllabic;
import org.audiveris.proxymusic.Technical;
import org.audiveris.proxymusic.TextElementData;
import org.audiveris.proxymusic.Tie;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.TimeModification;
import org.audiveris.proxymusic.Tremolo;
import org.audiveris.proxymusic.TremoloType;
import org.audiveris.proxymusic.Unpitched;
import org.audiveris.proxymusic.YesNo;
import org.kitweft.kit.StaffPlace;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.Event;
import org.kitweft.score.model.Head;
import org.kitweft.score.model.NoteValue;
import org.kitweft.score.model.Rest;
import org.kitweft.score.model.Sign;
import org.kitweft.score.model.Stems;
import org.kitweft.score.model.Tuplet;
import org.kitweft.score.model.Voice;

/** Writes the events of a voice as notes. */
final class NoteWriter {
    private static final ObjectFactory OBJECTS = new ObjectFactory();

    private final Instruments instruments;
    private final long ticksPerDivision;

    NoteWriter(Instruments instruments, long ticksPerDivision) {
        this.instruments = instruments;
        this.ticksPerDivision = ticksPerDivision;
    }

    /** The duration of ticks in divisions. */
    BigDecimal divisions(long ticks) {
        return BigDecimal.valueOf(ticks / ticksPerDivision);
    }

    /**
     * The notes of one event.
     *
     * @param letters the sticking letters under it, those of its grace notes included: readers that
     *     count syllables do not count grace notes
     */
    List<Note> notes(Voice voice, int index, Optional<String> letters) {
        Event event = voice.events().get(index);
        if (event instanceof Rest rest) {
            return List.of(rest(voice, index, rest));
        }
        Chord chord = (Chord) event;
        List<Note> notes = new ArrayList<>(graces(voice, chord));
        boolean first = true;
        for (Head head : chord.heads()) {
            Note note = new Note();
            place(note, head, !first);
            note.setDuration(divisions(chord.ticks()));
            boolean tiedOn = tiedOn(voice, index);
            if (chord.tiedBack()) {
                note.getTie().add(tie(StartStop.STOP));
            }
            if (tiedOn) {
                note.getTie().add(tie(StartStop.START));
            }
            common(note, voice, chord.value());
            dots(note, chord.dots());
            head.accidental().ifPresent(accidental -> note.setAccidental(accidental(accidental)));
            timeModification(note, voice.tupletOf(index));
            stem(note, voice);
            notehead(note, head);
            if (first) {
                beams(note, chord);
            }
            Notations notations = new Notations();
            ties(notations, chord.tiedBack(), tiedOn);
            if (chord.gracedHeads().stream().findFirst().equals(Optional.of(head))) {
                notations.getTiedOrSlurOrTuplet().add(slur(voice, StartStopContinue.STOP));
            }
            if (first) {
                tuplet(notations, voice, index);
                signs(notations, chord);
                letters.ifPresent(text -> note.getLyric().add(lyric(text)));
            }
            if (!notations.getTiedOrSlurOrTuplet().isEmpty()) {
                note.getNotations().add(notations);
            }
            notes.add(note);
            first = false;
        }
        return notes;
    }

    private Note rest(Voice voice, int index, Rest rest) {
        Note note = new Note();
        var sign = new org.audiveris.proxymusic.Rest();
        note.setRest(sign);
        note.setDuration(divisions(rest.ticks()));
        note.setVoice(Integer.toString(voice.number()));
        if (rest.wholeBar()) {
            sign.setMeasure(YesNo.YES);
            return note;
        }
        common(note, voice, rest.value());
        dots(note, rest.dots());
        timeModification(note, voice.tupletOf(index));
        Notations notations = new Notations();
        tuplet(notations, voice, index);
        if (!notations.getTiedOrSlurOrTuplet().isEmpty()) {
            note.getNotations().add(notations);
        }
        return note;
    }

    private List<Note> graces(Voice voice, Chord chord) {
        List<Note> notes = new ArrayList<>();
        int count = chord.ornament().graceNotes();
        for (int i = 0; i < count; i++) {
            boolean first = true;
            for (Head head : chord.gracedHeads()) {
                Note note = new Note();
                Grace grace = new Grace();
                if (count == 1) {
                    grace.setSlash(YesNo.YES);
                }
                note.setGrace(grace);
                place(note, head, !first);
                common(note, voice, count == 1 ? NoteValue.EIGHTH : NoteValue.SIXTEENTH);
                stem(note, voice);
                Notehead shape = new Notehead();
                shape.setValue(NoteheadValue.fromValue(head.notehead().id()));
                note.setNotehead(shape);
                if (first) {
                    for (int level = 1; count > 1 && level <= 2; level++) {
                        note.getBeam().add(beam(level, i == 0 ? BeamValue.BEGIN : BeamValue.END));
                    }
                    if (i == 0) {
                        Notations notations = new Notations();
                        notations.getTiedOrSlurOrTuplet().add(slur(voice, StartStopContinue.START));
                        note.getNotations().add(notations);
                    }
                }
                notes.add(note);
                first = false;
            }
        }
        return notes;
    }

    private void place(Note note, Head head, boolean inChord) {
        if (inChord) {
            note.setChord(new Empty());
        }
        StaffPlace place = head.place();
        Step step = Step.fromValue(Character.toString(place.letter()));
        if (instruments.pitched()) {
            Pitch pitch = new Pitch();
            pitch.setStep(step);
            if (place.sharp()) {
                pitch.setAlter(BigDecimal.ONE);
            }
            pitch.setOctave(place.octave());
            note.setPitch(pitch);
        } else {
            Unpitched unpitched = new Unpitched();
            unpitched.setDisplayStep(step);
            unpitched.setDisplayOctave(place.octave());
            note.setUnpitched(unpitched);
        }
        Instrument instrument = new Instrument();
        instrument.setId(instruments.of(head.hit()));
        note.getInstrument().add(instrument);
    }

    private static void common(Note note, Voice voice, NoteValue value) {
        note.setVoice(Integer.toString(voice.number()));
        NoteType type = new NoteType();
        type.setValue(typeName(value));
        note.setType(type);
    }

    /** The name of the MusicXML type {@code note-type-value}. */
    static String typeName(NoteValue value) {
        return switch (value) {
            case WHOLE, HALF, QUARTER, EIGHTH -> value.name().toLowerCase(Locale.ROOT);
            case SIXTEENTH -> "16th";
            case THIRTY_SECOND -> "32nd";
            case SIXTY_FOURTH -> "64th";
            case N128 -> "128th";
            case N256 -> "256th";
        };
    }

    private static void dots(Note note, int dots) {
        for (int i = 0; i < dots; i++) {
            note.getDot().add(new EmptyPlacement());
        }
    }

    private static org.audiveris.proxymusic.Accidental accidental(
            org.kitweft.score.model.Accidental accidental) {
        var sign = new org.audiveris.proxymusic.Accidental();
        sign.setValue(
                accidental == org.kitweft.score.model.Accidental.SHARP
                        ? AccidentalValue.SHARP
                        : AccidentalValue.NATURAL);
        return sign;
    }

    private static void timeModification(Note note, Optional<Tuplet> tuplet) {
        tuplet.ifPresent(
                t -> {
                    TimeModification ratio = new TimeModification();
                    ratio.setActualNotes(BigInteger.valueOf(t.actual()));
                    ratio.setNormalNotes(BigInteger.valueOf(t.normal()));
                    ratio.setNormalType(typeName(t.unit()));
                    note.setTimeModification(ratio);
                });
    }

    private static void stem(Note note, Voice voice) {
        if (voice.stems() != Stems.BY_PLACE) {
            Stem stem = new Stem();
            stem.setValue(voice.stems() == Stems.UP ? StemValue.UP : StemValue.DOWN);
            note.setStem(stem);
        }
    }

    private static void notehead(Note note, Head head) {
        Notehead shape = new Notehead();
        shape.setValue(NoteheadValue.fromValue(head.notehead().id()));
        if (head.ghost()) {
            shape.setParentheses(YesNo.YES);
        }
        note.setNotehead(shape);
    }

    private static void beams(Note note, Chord chord) {
        int level = 1;
        for (org.kitweft.score.model.Beam beam : chord.beams()) {
            BeamValue value =
                    switch (beam) {
                        case BEGIN -> BeamValue.BEGIN;
                        case CONTINUE -> BeamValue.CONTINUE;
                        case END -> BeamValue.END;
                        case FORWARD_HOOK -> BeamValue.FORWARD_HOOK;
                        case BACKWARD_HOOK -> BeamValue.BACKWARD_HOOK;
                    };
            note.getBeam().add(beam(level++, value));
        }
    }

    private static Beam beam(int level, BeamValue value) {
        Beam beam = new Beam();
        beam.setNumber(level);
        beam.setValue(value);
        return beam;
    }

    private static boolean tiedOn(Voice voice, int index) {
        return index + 1 < voice.events().size()
                && voice.events().get(index + 1) instanceof Chord next
                && next.tiedBack();
    }

    private static Tie tie(StartStop type) {
        Tie tie = new Tie();
        tie.setType(type);
        return tie;
    }

    private static void ties(Notations notations, boolean back, boolean on) {
        if (back) {
            Tied tied = new Tied();
            tied.setType(TiedType.STOP);
            notations.getTiedOrSlurOrTuplet().add(tied);
        }
        if (on) {
            Tied tied = new Tied();
            tied.setType(TiedType.START);
            notations.getTiedOrSlurOrTuplet().add(tied);
        }
    }

    /** One end of the slur from grace notes to their note, on the heads' side of the stems. */
    private static Slur slur(Voice voice, StartStopContinue type) {
        Slur slur = new Slur();
        slur.setType(type);
        slur.setNumber(1);
        if (type == StartStopContinue.START && voice.stems() != Stems.BY_PLACE) {
            slur.setPlacement(voice.stems() == Stems.UP ? AboveBelow.BELOW : AboveBelow.ABOVE);
        }
        return slur;
    }

    private static void tuplet(Notations notations, Voice voice, int index) {
        voice.tupletOf(index)
                .ifPresent(
                        t -> {
                            if (t.first() == index) {
                                notations.getTiedOrSlurOrTuplet().add(tuplet(t, StartStop.START));
                            }
                            if (t.last() == index) {
                                notations.getTiedOrSlurOrTuplet().add(tuplet(t, StartStop.STOP));
                            }
                        });
    }

    private static org.audiveris.proxymusic.Tuplet tuplet(Tuplet tuplet, StartStop type) {
        var sign = new org.audiveris.proxymusic.Tuplet();
        sign.setType(type);
        sign.setNumber(1);
        if (type == StartStop.START) {
            sign.setBracket(tuplet.bracket() ? YesNo.YES : YesNo.NO);
        }
        return sign;
    }

    private static void signs(Notations notations, Chord chord) {
        if (chord.signs().contains(Sign.BUZZ)) {
            Tremolo tremolo = new Tremolo();
            tremolo.setType(TremoloType.UNMEASURED);
            tremolo.setValue(0);
            Ornaments ornaments = new Ornaments();
            ornaments
                    .getTrillMarkOrTurnOrDelayedTurn()
                    .add(OBJECTS.createOrnamentsTremolo(tremolo));
            notations.getTiedOrSlurOrTuplet().add(ornaments);
        }
        Technical technical = new Technical();
        if (chord.signs().contains(Sign.OPEN)) {
            technical
                    .getUpBowOrDownBowOrHarmonic()
                    .add(OBJECTS.createTechnicalOpen(OBJECTS.createEmptyPlacementSmufl()));
        }
        if (chord.signs().contains(Sign.CLOSED)) {
            technical
                    .getUpBowOrDownBowOrHarmonic()
                    .add(OBJECTS.createTechnicalStopped(OBJECTS.createEmptyPlacementSmufl()));
        }
        if (!technical.getUpBowOrDownBowOrHarmonic().isEmpty()) {
            notations.getTiedOrSlurOrTuplet().add(technical);
        }
        if (chord.signs().contains(Sign.ACCENT)) {
            Articulations articulations = new Articulations();
            articulations
                    .getAccentOrStrongAccentOrStaccato()
                    .add(OBJECTS.createArticulationsAccent(new EmptyPlacement()));
            notations.getTiedOrSlurOrTuplet().add(articulations);
        }
    }

    private static Lyric lyric(String text) {
        Lyric lyric = new Lyric();
        lyric.setNumber("1");
        TextElementData words = new TextElementData();
        words.setValue(text);
        lyric.getElisionAndSyllabicAndText().add(Syllabic.SINGLE);
        lyric.getElisionAndSyllabicAndText().add(words);
        return lyric;
    }
}
