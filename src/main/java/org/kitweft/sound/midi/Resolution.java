package org.kitweft.sound.midi;

import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.core.ArithmeticUtils;
import org.kitweft.groove.Ticks;
import org.kitweft.sound.Marker;
import org.kitweft.sound.Pace;
import org.kitweft.sound.Timeline;

/**
 * How many ticks a quarter note has in a file.
 *
 * @param perQuarter a multiple of {@value #UNIT}
 */
record Resolution(int perQuarter) {
    /** What programs commonly use; every resolution is a multiple of it. */
    static final int UNIT = 480;

    /** The smallest resolution that holds all of a timeline on whole ticks. */
    static Resolution of(Timeline timeline) {
        long common =
                LongStream.concat(
                                timeline.notes().stream()
                                        .flatMapToLong(n -> LongStream.of(n.tick(), n.end())),
                                Stream.concat(
                                                timeline.markers().stream().map(Marker::tick),
                                                timeline.tempo().paces().stream().map(Pace::tick))
                                        .mapToLong(Long::longValue))
                        .reduce(Ticks.PER_QUARTER / UNIT, ArithmeticUtils::gcd);
        return new Resolution(Math.toIntExact(Ticks.PER_QUARTER / common));
    }

    /** A place of the timeline in the file's ticks. */
    long ticks(long tick) {
        return tick * perQuarter / Ticks.PER_QUARTER;
    }
}
