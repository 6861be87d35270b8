package org.kitweft.score.musicxml;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.core.ArithmeticUtils;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Backup;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.BarStyle;
import org.audiveris.proxymusic.BarStyleColor;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.Encoding;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Harmony;
import org.audiveris.proxymusic.Identification;
import org.audiveris.proxymusic.Metronome;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.ObjectFactory;
import org.audiveris.proxymusic.PerMinute;
import org.audiveris.proxymusic.Repeat;
import org.audiveris.proxymusic.RightLeftMiddle;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.Work;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Ticks;
import org.kitweft.score.model.Chord;
import org.kitweft.score.model.ChordMark;
import org.kitweft.score.model.Event;
import org.kitweft.score.model.Label;
import org.kitweft.score.model.Measure;
import org.kitweft.score.model.Score;
import org.kitweft.score.model.Voice;

/** Builds the tree of a MusicXML document from a score. Used once. */
final class MusicXml {
    private static final ObjectFactory OBJECTS = new ObjectFactory();

    private final Score score;
    private final MusicXmlSettings settings;
    private final Instruments instruments;
    private final long ticksPerDivision;
    private final NoteWriter notes;

    private MusicXml(Score score, MusicXmlSettings settings) {
        this.score = score;
        this.settings = settings;
        this.instruments = new Instruments(score);
        this.ticksPerDivision = ticksPerDivision(score);
        this.notes = new NoteWriter(instruments, ticksPerDivision);
    }

    static ScorePartwise of(Score score, MusicXmlSettings settings) {
        return new MusicXml(score, settings).document();
    }

    /** The longest unit of time that all events and a quarter consist of. */
    private static long ticksPerDivision(Score score) {
        long unit = Ticks.PER_QUARTER;
        for (Measure measure : score.measures()) {
            unit = ArithmeticUtils.gcd(unit, measure.meter().barTicks());
            for (Voice voice : measure.voices()) {
                for (Event event : voice.events()) {
                    unit = ArithmeticUtils.gcd(unit, event.ticks());
                }
            }
        }
        return unit;
    }

    private ScorePartwise document() {
        ScorePartwise document = new ScorePartwise();
        document.setVersion("4.0");
        if (!settings.title().isBlank()) {
            Work work = new Work();
            work.setWorkTitle(settings.title());
            document.setWork(work);
        }
        Identification identification = new Identification();
        Encoding encoding = new Encoding();
        encoding.getEncodingDateOrEncoderOrSoftware()
                .add(OBJECTS.createEncodingSoftware("Kitweft"));
        identification.setEncoding(encoding);
        document.setIdentification(identification);
        ScorePart scorePart = new ScorePart();
        ScorePartwise.Part part = new ScorePartwise.Part();
        part.setId(scorePart);
        for (int i = 0; i < score.measures().size(); i++) {
            part.getMeasure().add(measure(i));
        }
        document.setPartList(instruments.partList(scorePart));
        document.getPart().add(part);
        return document;
    }

    private ScorePartwise.Part.Measure measure(int index) {
        Measure source = score.measures().get(index);
        ScorePartwise.Part.Measure measure = new ScorePartwise.Part.Measure();
        measure.setNumber(Integer.toString(source.number()));
        List<Object> content = measure.getNoteOrBackupOrForward();
        if (source.opensRepeat()) {
            content.add(repeat(BackwardForward.FORWARD, 0));
        }
        if (index == 0 || source.showsMeter()) {
            content.add(attributes(source.meter(), index == 0));
        }
        if (index == 0) {
            score.tempo().ifPresent(tempo -> content.add(tempo(tempo, source.meter())));
        }
        source.marks().swing().ifPresent(mark -> content.add(SwingDirection.of(mark)));
        source.heading().ifPresent(words -> content.add(heading(words)));
        Deque<ChordMark> chords = new ArrayDeque<>(harmonies(index));
        Set<Long> lettered = new HashSet<>();
        for (int v = 0; v < source.voices().size(); v++) {
            Voice voice = source.voices().get(v);
            if (v > 0) {
                Backup backup = new Backup();
                backup.setDuration(notes.divisions(source.meter().barTicks()));
                content.add(backup);
            }
            for (int i = 0; i < voice.events().size(); i++) {
                Event event = voice.events().get(i);
                List<Note> written = notes(source, voice, i, lettered);
                // Readers lose count where a chord comes before grace notes.
                List<Note> graces = written.stream().filter(n -> n.getGrace() != null).toList();
                content.addAll(graces);
                while (!chords.isEmpty() && chords.peek().tick() < event.end()) {
                    ChordMark mark = chords.remove();
                    content.add(harmony(mark, mark.tick() - event.tick()));
                }
                content.addAll(written.subList(graces.size(), written.size()));
            }
        }
        boolean last = index == score.measures().size() - 1;
        if (source.closesRepeat()) {
            content.add(repeat(BackwardForward.BACKWARD, source.repeatTimes()));
        } else if (last) {
            content.add(barline(RightLeftMiddle.RIGHT, BarStyle.LIGHT_HEAVY));
        }
        return measure;
    }

    /** The chords that begin in a measure, in time. */
    private List<ChordMark> harmonies(int index) {
        Optional<ChordMark> before = Optional.empty();
        if (index > 0) {
            List<ChordMark> last = score.measures().get(index - 1).marks().chords();
            before = last.isEmpty() ? before : Optional.of(last.get(last.size() - 1));
        }
        List<ChordMark> begin = new ArrayList<>();
        for (ChordMark mark : score.measures().get(index).marks().chords()) {
            if (!before.map(ChordMark::chord).equals(Optional.of(mark.chord()))) {
                begin.add(mark);
            }
            before = Optional.of(mark);
        }
        return begin;
    }

    /**
     * A chord, written before the event during which it begins: readers find its place by the notes
     * around it, and not all can move it over a tuplet.
     *
     * @param ticks from that event
     */
    private Harmony harmony(ChordMark mark, long ticks) {
        BigDecimal offset =
                BigDecimal.valueOf(ticks)
                        .divide(BigDecimal.valueOf(ticksPerDivision), MathContext.DECIMAL32)
                        .stripTrailingZeros();
        return Harmonies.of(mark, new BigDecimal(offset.toPlainString()));
    }

    /** The notes of an event, with its sticking letter under the first voice that plays then. */
    private List<Note> notes(Measure measure, Voice voice, int index, Set<Long> lettered) {
        Event event = voice.events().get(index);
        Optional<Label> label =
                event instanceof Chord chord && !chord.tiedBack() && lettered.add(event.tick())
                        ? measure.sticking().stream()
                                .filter(l -> l.tick() == event.tick())
                                .findFirst()
                        : Optional.empty();
        return notes.notes(voice, index, label.map(l -> l.grace() + l.text()));
    }

    private Attributes attributes(Meter meter, boolean first) {
        Attributes attributes = new Attributes();
        if (first) {
            attributes.setDivisions(BigDecimal.valueOf(Ticks.PER_QUARTER / ticksPerDivision));
        }
        Time time = new Time();
        time.getTimeSignature()
                .addAll(
                        new ArrayList<>(
                                List.of(
                                        OBJECTS.createTimeBeats(Integer.toString(meter.count())),
                                        OBJECTS.createTimeBeatType(
                                                Integer.toString(meter.unit())))));
        attributes.getTime().add(time);
        if (first) {
            var clef = new org.audiveris.proxymusic.Clef();
            switch (score.clef()) {
                case PERCUSSION -> clef.setSign(ClefSign.PERCUSSION);
                case TREBLE -> {
                    clef.setSign(ClefSign.G);
                    clef.setLine(BigInteger.TWO);
                }
                case BASS -> {
                    clef.setSign(ClefSign.F);
                    clef.setLine(BigInteger.valueOf(4));
                }
            }
            attributes.getClef().add(clef);
        }
        return attributes;
    }

    private static Direction tempo(Tempo tempo, Meter meter) {
        Metronome metronome = new Metronome();
        boolean eighth = meter.unit() == 8 && !meter.isCompound();
        metronome.setBeatUnit(eighth ? "eighth" : "quarter");
        if (meter.isCompound()) {
            metronome.getBeatUnitDot().add(new Empty());
        }
        PerMinute perMinute = new PerMinute();
        perMinute.setValue(Integer.toString(tempo.beatsPerMinute()));
        metronome.setPerMinute(perMinute);
        DirectionType type = new DirectionType();
        type.setMetronome(metronome);
        Direction direction = new Direction();
        direction.setPlacement(AboveBelow.ABOVE);
        direction.getDirectionType().add(type);
        Sound sound = new Sound();
        sound.setTempo(
                BigDecimal.valueOf(tempo.beatsPerMinute() * meter.beatTicks())
                        .divide(BigDecimal.valueOf(Ticks.PER_QUARTER), MathContext.DECIMAL32)
                        .stripTrailingZeros());
        direction.setSound(sound);
        return direction;
    }

    private static Direction heading(String words) {
        FormattedTextId text = new FormattedTextId();
        text.setValue(words);
        DirectionType type = new DirectionType();
        type.getRehearsal().add(text);
        Direction direction = new Direction();
        direction.setPlacement(AboveBelow.ABOVE);
        direction.getDirectionType().add(type);
        return direction;
    }

    private static Barline repeat(BackwardForward way, int times) {
        boolean forward = way == BackwardForward.FORWARD;
        Barline barline =
                barline(
                        forward ? RightLeftMiddle.LEFT : RightLeftMiddle.RIGHT,
                        forward ? BarStyle.HEAVY_LIGHT : BarStyle.LIGHT_HEAVY);
        Repeat repeat = new Repeat();
        repeat.setDirection(way);
        if (!forward) {
            repeat.setTimes(BigInteger.valueOf(times));
        }
        barline.setRepeat(repeat);
        return barline;
    }

    private static Barline barline(RightLeftMiddle location, BarStyle style) {
        Barline barline = new Barline();
        barline.setLocation(location);
        BarStyleColor bar = new BarStyleColor();
        bar.setValue(style);
        barline.setBarStyle(bar);
        return barline;
    }
}
