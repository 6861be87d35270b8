package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Meter;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Section;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Sound;

/**
 * Writes a phrase as measures.
 *
 * <p>Places and noteheads are the kit's. Swing is not written out: notes stand where the straight
 * grid has them, as the trade writes them, and a mark says that they swing.
 */
public final class Notation {
    /** Middle C in steps of the scale above C0: below it on average, the bass clef reads easier. */
    private static final int MIDDLE_C = 28;

    private Notation() {}

    /** A phrase with what is wanted of it on paper, without tempo and chords. */
    public static Score of(Phrase phrase, NotationOptions options) {
        return of(phrase, options, PlayedWith.NOTHING);
    }

    /** A phrase with what it is played with; under chords every bar is written out. */
    public static Score of(Phrase phrase, NotationOptions options, PlayedWith with) {
        Kit kit = phrase.sections().get(0).groove().kit();
        boolean pitched =
                kit.surfaces().stream().flatMap(s -> s.sounds().stream()).allMatch(Sound::isPitched)
                        && kit.surfaces().stream()
                                .flatMap(s -> s.sounds().stream())
                                .allMatch(Notation::standsAtItsKey);
        SignFinder signs = new SignFinder(kit);
        List<Measure> measures = new ArrayList<>();
        long start = 0;
        Optional<Meter> running = Optional.empty();
        boolean folds = options.foldRepeats() && with.chart().isEmpty();
        Optional<SwingMark> swing = Optional.empty();
        int number = 1;
        for (int s = 0; s < phrase.sections().size(); s++) {
            Section section = phrase.sections().get(s);
            Groove groove = section.groove();
            Meter meter = groove.grid().meter();
            BarWriter writer = new BarWriter(groove, options, signs, pitched);
            int times = folds ? timesPlayed(groove) : 1;
            int written = groove.bars() / times;
            Optional<SwingMark> change = change(swing, SwingMark.of(groove.grid()));
            swing = change.isPresent() ? change : swing;
            for (int bar = 1; bar <= written; bar++) {
                Optional<String> heading =
                        options.headings() && bar == 1 && phrase.sections().size() > 1
                                ? Optional.of(words(section))
                                : Optional.empty();
                measures.add(
                        new Measure(
                                number + bar - 1,
                                s,
                                start + (bar - 1) * meter.barTicks(),
                                meter,
                                !running.equals(Optional.of(meter)),
                                new BarMarks(
                                        bar == 1 ? change : Optional.empty(),
                                        with.chords(number + bar - 2, meter)),
                                heading,
                                writer.voices(bar),
                                options.sticking() ? writer.sticking(bar) : List.of(),
                                options.counting() ? writer.counting() : List.of(),
                                writer.keyNames(bar),
                                times > 1 && bar == 1,
                                times > 1 && bar == written ? times : 0));
                running = Optional.of(meter);
            }
            start += groove.ticks();
            number += groove.bars();
        }
        return new Score(
                kit,
                clef(phrase, kit, pitched),
                with.tempo(),
                measures,
                pitched ? List.of() : Legend.of(phrase));
    }

    /** What has to be said of swing where sections meet; straight is so without being said. */
    private static Optional<SwingMark> change(
            Optional<SwingMark> before, Optional<SwingMark> section) {
        boolean swung = before.filter(mark -> !mark.isStraight()).isPresent();
        return section.filter(
                mark -> mark.isStraight() ? swung : !before.equals(Optional.of(mark)));
    }

    /** A single groove. */
    public static Score of(Groove groove, NotationOptions options) {
        return of(Phrase.of(groove), options);
    }

    /** How often a groove comes round within its bars; 1 if not evenly. */
    private static int timesPlayed(Groove groove) {
        return groove.comesRound() ? Math.toIntExact(groove.bars() / groove.cycleBars()) : 1;
    }

    private static String words(Section section) {
        String id = section.role().id();
        return id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
    }

    /** Whether a pitched sound is written where its key is, and not where its surface stands. */
    private static boolean standsAtItsKey(Sound sound) {
        int[] semitones = {0, 2, 4, 5, 7, 9, 11};
        int written =
                12 * (sound.place().octave() + 1)
                        + semitones[sound.place().step()]
                        + (sound.place().sharp() ? 1 : 0);
        return written == sound.key();
    }

    private static Clef clef(Phrase phrase, Kit kit, boolean pitched) {
        if (!pitched) {
            return Clef.PERCUSSION;
        }
        double mean =
                phrase.sections().stream()
                        .flatMap(s -> s.groove().hits().stream())
                        .filter(hit -> kit.has(hit.sound()))
                        .mapToInt(hit -> kit.sound(hit.sound()).place().diatonic())
                        .average()
                        .orElse(MIDDLE_C);
        return mean < MIDDLE_C ? Clef.BASS : Clef.TREBLE;
    }
}
