package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.kitweft.groove.Feel;
import org.kitweft.groove.Grid;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Section;
import org.kitweft.sound.PlaySettings;

/** The cues of a phrase: every step of the grid, and hits between the steps. */
final class Cues {
    private final PlaySettings settings;
    private final Feel feel;
    private final Map<Long, Cue> byTick = new TreeMap<>();

    private Cues(PlaySettings settings) {
        this.settings = settings;
        this.feel = settings.stretch().feel();
    }

    /**
     * The cues of one loop, in time: where the drums play their bars twice, each place comes twice.
     *
     * @param phrase the bars that are played
     * @param barsBefore how many bars of the whole phrase lie before them
     */
    static List<Cue> of(Phrase phrase, PlaySettings settings, int barsBefore) {
        Cues cues = new Cues(settings);
        long at = 0;
        for (int turn = 0; turn < cues.feel.turns(); turn++) {
            int bars = barsBefore;
            for (Section section : phrase.sections()) {
                cues.add(section.groove(), at, bars);
                at += cues.feel.scaled(section.groove().ticks());
                bars += section.groove().bars();
            }
        }
        return List.copyOf(cues.byTick.values());
    }

    private void add(Groove groove, long at, int bars) {
        Grid grid = groove.grid();
        for (int step = 0; step < groove.bars() * grid.stepsPerBar(); step++) {
            long written = step * grid.stepTicks();
            long tick = at + feel.scaled(grid.sounding(written, grid.stepsPerBeat()));
            Place place =
                    new Place(bars + step / grid.stepsPerBar() + 1, step % grid.stepsPerBar() + 1);
            byTick.put(tick, new Cue(tick, at + feel.scaled(written), place, List.of()));
        }
        for (Hit hit : groove.hits()) {
            if (settings.hears(hit.limb())) {
                add(hit, at, bars);
            }
        }
    }

    private void add(Hit hit, long at, int bars) {
        long tick = at + feel.scaled(hit.start());
        Place place = new Place(bars + hit.place().bar(), hit.place().step());
        Cue cue =
                byTick.getOrDefault(
                        tick, new Cue(tick, at + feel.scaled(hit.written()), place, List.of()));
        List<Hit> hits = new ArrayList<>(cue.hits());
        hits.add(hit);
        byTick.put(tick, new Cue(tick, cue.written(), cue.place(), hits));
    }
}
