package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.kitweft.groove.CountSyllables;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.kit.Kit;
import org.kitweft.kit.Notehead;
import org.kitweft.kit.Sound;
import org.kitweft.kit.StaffPlace;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Ornament;

/** Writes the bars of one groove. */
final class BarWriter {
    /** Where a sound that the kit does not have is written: conflicts are shown, not dropped. */
    private static final StaffPlace UNKNOWN_PLACE = StaffPlace.parse("B4");

    private final Groove groove;
    private final NotationOptions options;
    private final SignFinder signs;
    private final boolean pitched;

    BarWriter(Groove groove, NotationOptions options, SignFinder signs, boolean pitched) {
        this.groove = groove;
        this.options = options;
        this.signs = signs;
        this.pitched = pitched;
    }

    /** The voices of a bar of the groove, counted from 1. */
    List<Voice> voices(int bar) {
        List<Hit> hits = groove.hitsInBar(bar);
        Map<Hit, Set<Sign>> signsOf = new HashMap<>();
        hits.forEach(hit -> signsOf.put(hit, signs.signsOf(hit)));
        List<Voice> voices = new ArrayList<>();
        Map<Integer, List<Hit>> parts = Parts.voices(groove, hits, options.oneVoice() || pitched);
        parts.forEach(
                (number, part) -> {
                    Stems side = number % 2 == 1 ? Stems.UP : Stems.DOWN;
                    Stems stems = pitched && parts.size() == 1 ? Stems.BY_PLACE : side;
                    voices.add(
                            new VoiceWriter(groove.grid())
                                    .write(number, stems, onsets(part, signsOf)));
                });
        return voices.isEmpty() ? List.of(BarRests.emptyBar(groove.grid().meter())) : voices;
    }

    private NavigableMap<Long, VoiceWriter.Onset> onsets(
            List<Hit> hits, Map<Hit, Set<Sign>> signsOf) {
        NavigableMap<Long, List<Hit>> together = new TreeMap<>();
        for (Hit hit : hits) {
            together.computeIfAbsent(inBar(hit), any -> new ArrayList<>()).add(hit);
        }
        Accidentals accidentals = new Accidentals();
        NavigableMap<Long, VoiceWriter.Onset> onsets = new TreeMap<>();
        together.forEach((tick, group) -> onsets.put(tick, onset(group, signsOf, accidentals)));
        return onsets;
    }

    private VoiceWriter.Onset onset(
            List<Hit> hits, Map<Hit, Set<Sign>> signsOf, Accidentals accidentals) {
        List<Head> heads = new ArrayList<>();
        Set<Sign> all = EnumSet.noneOf(Sign.class);
        Ornament ornament = Ornament.NONE;
        Map<Object, Integer> seen = new HashMap<>();
        List<Hit> lowFirst =
                hits.stream()
                        .sorted(Comparator.comparingInt(hit -> placeOf(hit).diatonic()))
                        .toList();
        for (Hit hit : lowFirst) {
            all.addAll(signsOf.get(hit));
            if (hit.ornament().graceNotes() > ornament.graceNotes() || ornament == Ornament.NONE) {
                ornament = hit.ornament();
            }
            // Two hands on one sound are one note on the page.
            if (seen.merge(hit.sound(), 1, Integer::sum) == 1) {
                heads.add(head(hit, accidentals));
            }
        }
        return new VoiceWriter.Onset(heads, all, ornament);
    }

    private Head head(Hit hit, Accidentals accidentals) {
        StaffPlace place = placeOf(hit);
        return new Head(
                place,
                sound(hit).map(Sound::notehead).orElse(Notehead.X),
                hit.dynamic() == Dynamic.GHOST,
                pitched ? accidentals.before(place) : Optional.empty(),
                hit);
    }

    private Optional<Sound> sound(Hit hit) {
        Kit kit = groove.kit();
        return kit.has(hit.sound()) ? Optional.of(kit.sound(hit.sound())) : Optional.empty();
    }

    private StaffPlace placeOf(Hit hit) {
        return sound(hit).map(Sound::place).orElse(UNKNOWN_PLACE);
    }

    private long inBar(Hit hit) {
        return hit.written() % groove.grid().meter().barTicks();
    }

    /** The sticking letters of a bar. */
    List<Label> sticking(int bar) {
        List<Label> labels = new ArrayList<>();
        Set<Long> labelled = new HashSet<>();
        for (Hit hit : groove.hitsInBar(bar)) {
            if (hit.source() == HitSource.STROKE
                    && hit.letter().isPresent()
                    && labelled.add(inBar(hit))) {
                String grace = hit.letter().get().handsSwapped().name().toLowerCase(Locale.ROOT);
                labels.add(
                        new Label(
                                inBar(hit),
                                hit.letter().get().name(),
                                grace.repeat(hit.ornament().graceNotes())));
            }
        }
        return labels;
    }

    /** The counting syllables of any bar. */
    List<Label> counting() {
        List<String> syllables = CountSyllables.ofBar(groove.grid());
        List<Label> labels = new ArrayList<>();
        for (int step = 0; step < syllables.size(); step++) {
            labels.add(new Label(step * groove.grid().stepTicks(), syllables.get(step), ""));
        }
        return labels;
    }

    /** The key names of a bar on a pitched kit: C4, F#3. */
    List<Label> keyNames(int bar) {
        if (!pitched) {
            return List.of();
        }
        NavigableMap<Long, List<StaffPlace>> byTick = new TreeMap<>();
        for (Hit hit : groove.hitsInBar(bar)) {
            List<StaffPlace> places = byTick.computeIfAbsent(inBar(hit), any -> new ArrayList<>());
            if (!places.contains(placeOf(hit))) {
                places.add(placeOf(hit));
            }
        }
        List<Label> labels = new ArrayList<>();
        byTick.forEach(
                (tick, places) ->
                        labels.add(
                                new Label(
                                        tick,
                                        places.stream()
                                                .map(StaffPlace::text)
                                                .collect(Collectors.joining(" ")),
                                        "")));
        return labels;
    }
}
