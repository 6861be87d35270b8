package org.kitweft.band;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.kitweft.groove.Grid;

/**
 * How a band plays: data with its reasons, read from a style file. Immutable.
 *
 * <p>Start from {@link BuiltInStyles} or {@link StyleFile}.
 */
public final class Style {
    private final String name;
    private final String title;
    private final int swing;
    private final List<Integer> pulses;
    private final Optional<ClaveDirection> clave;
    private final List<String> reasons;
    private final StyleLine bass;
    private final StyleLine comping;
    private final StyleLine punches;

    /**
     * @param swing where the second eighth falls in percent, for drums that do not say
     * @param pulses steps per beat that the figures can be read in, ascending
     * @param clave the direction the figures are written in
     */
    Style(
            String name,
            String title,
            int swing,
            List<Integer> pulses,
            Optional<ClaveDirection> clave,
            List<String> reasons,
            StyleLine bass,
            StyleLine comping,
            StyleLine punches) {
        this.name = Objects.requireNonNull(name, "name");
        this.title = Objects.requireNonNull(title, "title");
        this.swing = swing;
        this.pulses = List.copyOf(pulses);
        this.clave = Objects.requireNonNull(clave, "clave");
        this.reasons = List.copyOf(reasons);
        this.bass = Objects.requireNonNull(bass, "bass");
        this.comping = Objects.requireNonNull(comping, "comping");
        this.punches = Objects.requireNonNull(punches, "punches");
        if (name.isBlank() || title.isBlank() || reasons.isEmpty()) {
            throw new IllegalArgumentException("a style needs a name, a title and its reasons");
        }
        if (swing < Grid.STRAIGHT || swing > Grid.MOST_SWING) {
            throw new IllegalArgumentException(
                    "swing %d: expected %d to %d percent"
                            .formatted(swing, Grid.STRAIGHT, Grid.MOST_SWING));
        }
        if (pulses.isEmpty() || !List.of(2, 4).containsAll(pulses)) {
            throw new IllegalArgumentException("pulses: expected 2, 4 or both steps per beat");
        }
        if (bass.voices().isPresent()) {
            throw new IllegalArgumentException("bass: it plays single notes, not voices");
        }
        if (comping.voices().isEmpty() || punches.voices().isEmpty()) {
            throw new IllegalArgumentException("comping and punches: expected voices");
        }
        if (bass.figures().isEmpty() || comping.figures().isEmpty()) {
            throw new IllegalArgumentException("bass and comping: expected figures");
        }
    }

    /** The name in commands and files. */
    public String name() {
        return name;
    }

    /** The name for people. */
    public String title() {
        return title;
    }

    /** Where the second eighth of a pair falls, in percent: what to set the grid to. */
    public int swing() {
        return swing;
    }

    /** Whether it has a clave, whose direction can be chosen. */
    public boolean hasClave() {
        return clave.isPresent();
    }

    /** Why the style is played so: general reasons, then those of bass, comping and punches. */
    public List<String> reasons() {
        return reasons;
    }

    /** After how many bars of 4/4 its longest figure comes round beside a grid. */
    public int figureBars(Grid grid) {
        int barOfFigure = 4 * pulsesBeside(grid);
        int longest =
                Stream.of(bass, comping, punches)
                        .flatMap(line -> line.figures().stream())
                        .mapToInt(figure -> figure.steps().size())
                        .max()
                        .orElse(barOfFigure);
        return Math.max(1, (longest + barOfFigure - 1) / barOfFigure);
    }

    /** The steps per beat its figures are read in beside a grid: the finest that the grid has. */
    int pulsesBeside(Grid grid) {
        return pulses.stream()
                .filter(pulse -> grid.stepsPerBeat() % pulse == 0)
                .reduce((one, other) -> other)
                .orElse(pulses.get(0));
    }

    /** Whether figures begin with their second half. */
    boolean turned(ClaveDirection direction) {
        return clave.isPresent() && clave.get() != direction;
    }

    StyleLine bass() {
        return bass;
    }

    StyleLine comping() {
        return comping;
    }

    StyleLine punches() {
        return punches;
    }

    @Override
    public String toString() {
        return name;
    }
}
