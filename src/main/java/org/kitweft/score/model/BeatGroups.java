package org.kitweft.score.model;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.groove.Meter;

/**
 * How the beats of a bar join under beams.
 *
 * <p>A beat of x/4 or of a compound meter stands alone. The eighths of other meters go in twos, the
 * odd one making a three: at the start in 5/8 (3 + 2, as LilyPond 2.24 has it in
 * time-signature-settings.scm), at the end in longer ones (7/8: 2 + 2 + 3; common practice, no
 * source).
 */
final class BeatGroups {
    private BeatGroups() {}

    /** How many beats each group has, in order; their sum is the beats of the bar. */
    static List<Integer> of(Meter meter) {
        List<Integer> groups = new ArrayList<>();
        int beats = meter.beats();
        if (meter.unit() == 4 || meter.isCompound()) {
            for (int beat = 0; beat < beats; beat++) {
                groups.add(1);
            }
        } else if (beats == 5) {
            groups.addAll(List.of(3, 2));
        } else {
            for (int left = beats; left > 0; left -= groups.get(groups.size() - 1)) {
                groups.add(left == 3 ? 3 : Math.min(2, left));
            }
        }
        return groups;
    }
}
