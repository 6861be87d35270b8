package org.kitweft.ui.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.kitweft.explore.difficulty.Burden;
import org.kitweft.explore.difficulty.Difficulty;
import org.kitweft.groove.OpeningGroove;
import org.kitweft.ui.session.Notices;
import org.kitweft.ui.task.Tasks;

class FindingRowsTest {

    static FindingRows rows(List<String> faults) {
        List<FindingRows.Heading> headings =
                List.of(
                        new FindingRows.Heading(FindingRows.Column.LEAD, "No.", "", 10),
                        new FindingRows.Heading(FindingRows.Column.DIFFICULTY, "Hard", "", 10),
                        new FindingRows.Heading(FindingRows.Column.STICKING, "Sticking", "", 10),
                        new FindingRows.Heading(FindingRows.Column.VOICING, "Voicing", "", 10),
                        new FindingRows.Heading(FindingRows.Column.WORDS, "Why", "", 10));
        return new FindingRows(
                headings,
                Tasks.DIRECT,
                new Notices() {
                    @Override
                    public void note(String line) {
                        throw new AssertionError("nothing to note: " + line);
                    }

                    @Override
                    public void fault(String line) {
                        faults.add(line);
                    }
                });
    }

    private static Finding finding(int number) {
        return new Finding(
                OpeningGroove.recipe(),
                new Difficulty(Map.of(Burden.TRAVEL, 1000L * number)),
                String.valueOf(number),
                "why");
    }

    @Test
    void aColumnShowsWhatItsHeadingSays() {
        FindingRows rows = rows(new ArrayList<>());
        rows.show(List.of(finding(3)));
        List<Object> row = IntStream.range(0, 5).mapToObj(c -> rows.getValueAt(0, c)).toList();
        assertThat(row)
                .containsExactly(
                        "3",
                        3000L,
                        ">R (L) R R >L R (L) (L)",
                        "R: hi-hat, accents with bass-drum; L: snare",
                        "why");
        assertThat(DifficultyCell.text(3000)).isEqualTo("3");
    }

    @Test
    void theHardestIsTheMeasureOfAllBars() {
        FindingRows rows = rows(new ArrayList<>());
        rows.show(List.of(finding(3), finding(8), finding(5)));
        assertThat(rows.hardest()).isEqualTo(8000);
        rows.show(List.of());
        assertThat(rows.hardest()).isZero();
        assertThat(rows.getRowCount()).isZero();
    }

    @Test
    void aRowThatCannotBeMadeIsToldAndEndsTheList() {
        List<String> faults = new ArrayList<>();
        FindingRows rows = rows(faults);
        Iterator<Finding> broken =
                new Iterator<>() {
                    @Override
                    public boolean hasNext() {
                        return true;
                    }

                    @Override
                    public Finding next() {
                        throw new IllegalArgumentException("bar 1 step 2: no such thing");
                    }
                };
        rows.show(watch -> broken);
        rows.seen(0);
        assertThat(faults).containsExactly("bar 1 step 2: no such thing");
        assertThat(rows.getRowCount()).isZero();
    }

    @Test
    void showingOthersStopsTheFormer() {
        FindingRows rows = rows(new ArrayList<>());
        List<Outlook> watches = new ArrayList<>();
        rows.show(
                watch -> {
                    watches.add(watch);
                    return List.of(finding(1)).iterator();
                });
        assertThat(watches.get(0).isCancelled()).isFalse();
        rows.show(List.of());
        assertThat(watches.get(0).isCancelled()).isTrue();
    }
}
