package org.kitweft.score.engrave;

import java.util.List;
import java.util.Objects;
import org.kitweft.score.model.Score;

/**
 * A score whose signs are placed, line by line.
 *
 * @param score what was engraved
 * @param systems its lines, at least one
 */
public record EngravedScore(Score score, List<EngravedSystem> systems) {
    public EngravedScore {
        Objects.requireNonNull(score, "score");
        systems = List.copyOf(systems);
    }

    /**
     * Where the playhead stands.
     *
     * @param system index of the line
     * @param x in the line's own coordinates
     */
    public record Playhead(int system, double x) {}

    /** Where a tick of the phrase stands; repeats lead back to where they are written. */
    public Playhead playhead(long tick) {
        Score.At at = score.at(tick);
        int system = systems.size() - 1;
        while (system > 0 && systems.get(system).firstMeasure() > at.measure()) {
            system--;
        }
        return new Playhead(system, systems.get(system).x(at.measure(), at.tick()));
    }

    /** All lines below each other with some space between, as high as this. */
    public double height(double between) {
        return systems.stream().mapToDouble(EngravedSystem::height).sum()
                + between * (systems.size() - 1);
    }
}
