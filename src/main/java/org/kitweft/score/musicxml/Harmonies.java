package org.kitweft.score.musicxml;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.audiveris.proxymusic.Bass;
import org.audiveris.proxymusic.BassStep;
import org.audiveris.proxymusic.Degree;
import org.audiveris.proxymusic.DegreeAlter;
import org.audiveris.proxymusic.DegreeType;
import org.audiveris.proxymusic.DegreeValue;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.HarmonyAlter;
import org.audiveris.proxymusic.Kind;
import org.audiveris.proxymusic.KindValue;
import org.audiveris.proxymusic.Offset;
import org.audiveris.proxymusic.Root;
import org.audiveris.proxymusic.RootStep;
import org.audiveris.proxymusic.Step;
import org.audiveris.proxymusic.YesNo;
import org.kitweft.band.Chord;
import org.kitweft.band.PitchName;
import org.kitweft.score.model.ChordMark;

/** Chord symbols as MusicXML has them: root, kind, bass, and the tones the kind has not. */
final class Harmonies {
    private Harmonies() {}

    /**
     * A symbol, to stand at the start of its measure.
     *
     * @param offset from there in divisions
     */
    static Harmony of(ChordMark mark, BigDecimal offset) {
        Harmony harmony = new Harmony();
        if (mark.chord().isPresent()) {
            chord(harmony, mark.chord().get());
        } else {
            noChord(harmony, mark.text());
        }
        if (offset.signum() > 0) {
            Offset later = new Offset();
            later.setValue(offset);
            harmony.setOffset(later);
        }
        return harmony;
    }

    private static void chord(Harmony harmony, Chord chord) {
        ChordKind is = ChordKind.of(chord);
        Kind kind = new Kind();
        kind.setValue(is.value());
        kind.setText(chord.suffix());
        harmony.getHarmonyChord().add(root(chord.root()));
        harmony.getHarmonyChord().add(kind);
        chord.slashBass().ifPresent(name -> harmony.getHarmonyChord().add(bass(name)));
        for (ChordKind.Change change : is.changes()) {
            harmony.getHarmonyChord().add(degree(change));
        }
    }

    /** A root is asked for even where no chord is; its text is empty, so that none is shown. */
    private static void noChord(Harmony harmony, String text) {
        Root root = root(new PitchName('C', 0));
        root.getRootStep().setText("");
        Kind kind = new Kind();
        kind.setValue(KindValue.NONE);
        kind.setText(text);
        harmony.getHarmonyChord().add(root);
        harmony.getHarmonyChord().add(kind);
    }

    private static Root root(PitchName name) {
        RootStep step = new RootStep();
        step.setValue(Step.fromValue(String.valueOf(name.letter())));
        Root root = new Root();
        root.setRootStep(step);
        if (name.alteration() != 0) {
            root.setRootAlter(alter(name));
        }
        return root;
    }

    private static Bass bass(PitchName name) {
        BassStep step = new BassStep();
        step.setValue(Step.fromValue(String.valueOf(name.letter())));
        Bass bass = new Bass();
        bass.setBassStep(step);
        if (name.alteration() != 0) {
            bass.setBassAlter(alter(name));
        }
        return bass;
    }

    private static HarmonyAlter alter(PitchName name) {
        HarmonyAlter alter = new HarmonyAlter();
        alter.setValue(BigDecimal.valueOf(name.alteration()));
        return alter;
    }

    /** Not shown: the kind's text has it already. */
    private static Degree degree(ChordKind.Change change) {
        DegreeValue value = new DegreeValue();
        value.setValue(BigInteger.valueOf(change.number()));
        DegreeAlter alter = new DegreeAlter();
        alter.setValue(BigDecimal.valueOf(change.alter()));
        DegreeType type = new DegreeType();
        type.setValue(change.type());
        Degree degree = new Degree();
        degree.setDegreeValue(value);
        degree.setDegreeAlter(alter);
        degree.setDegreeType(type);
        degree.setPrintObject(YesNo.NO);
        return degree;
    }
}
