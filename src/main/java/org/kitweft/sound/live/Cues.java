package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Section;
import org.kitweft.sound.PlaySettings;

/** The cues of a phrase: every step of the grid, and hits between the steps. */
final class Cues {
    private final Map<Long, Cue> byTick = new TreeMap<>();

    private Cues() {}

    /** The cues of the phrase played once, in time. */
    static List<Cue> of(Phrase phrase, PlaySettings settings) {
        Cues cues = new Cues();
        long at = 0;
        int bars = 0;
        for (Section section : phrase.sections()) {
            cues.addSteps(section.groove(), at, bars);
            for (Hit hit : section.groove().hits()) {
                if (settings.hears(hit.limb())) {
                    cues.add(hit, at, bars);
                }
            }
            at += section.groove().ticks();
            bars += section.groove().bars();
        }
        return List.copyOf(cues.byTick.values());
    }

    private void addSteps(Groove groove, long at, int bars) {
        Grid grid = groove.grid();
        for (int step = 0; step < groove.bars() * grid.stepsPerBar(); step++) {
            long written = step * grid.stepTicks();
            long tick = at + grid.sounding(written, grid.stepsPerBeat());
            Place place =
                    new Place(bars + step / grid.stepsPerBar() + 1, step % grid.stepsPerBar() + 1);
            byTick.put(tick, new Cue(tick, at + written, place, List.of()));
        }
    }

    private void add(Hit hit, long at, int bars) {
        long tick = at + hit.start();
        Place place = new Place(bars + hit.place().bar(), hit.place().step());
        Cue cue = byTick.getOrDefault(tick, new Cue(tick, at + hit.written(), place, List.of()));
        List<Hit> hits = new ArrayList<>(cue.hits());
        hits.add(hit);
        byTick.put(tick, new Cue(tick, cue.written(), cue.place(), hits));
    }
}
