package org.kitweft.ui.explore;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractListModel;
import org.kitweft.explore.trellis.Cost;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.ui.task.Tasks;

/**
 * Variations for a list that shows only what is in sight: in their order each is made when asked
 * for, so that millions can be scrolled through; with the least travel first they are fetched in
 * portions as one comes near the end.
 */
final class VariationList extends AbstractListModel<Variation> {
    private static final long serialVersionUID = 1;

    /** More rows than any hand scrolls through, and few enough for a component's height. */
    private static final int MOST_ROWS = 10_000_000;

    private static final int PORTION = 200;

    /** How the variations are ranked. */
    enum Order {
        /** The least travel of all limbs first. */
        LEAST_TRAVEL("least travel first"),
        /** In the order of their numbers. */
        NUMBER("by number");

        private final String words;

        Order(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private final transient Tasks tasks;
    private transient Optional<Possibilities> possibilities = Optional.empty();
    private transient Iterator<Variation> best = List.<Variation>of().iterator();
    private final transient List<Variation> fetched = new ArrayList<>();
    private transient Tasks.Running running = () -> {};
    private Order order = Order.LEAST_TRAVEL;
    private boolean fetching;
    private int rows;

    VariationList(Tasks tasks) {
        this.tasks = tasks;
    }

    /** Shows other variations; empty: none. */
    void show(Optional<Possibilities> other, Order by) {
        running.stop();
        fetching = false;
        possibilities = other.filter(p -> p.total().signum() > 0);
        order = by;
        fetched.clear();
        int before = rows;
        rows = 0;
        if (before > 0) {
            fireIntervalRemoved(this, 0, before - 1);
        }
        possibilities.ifPresent(this::begin);
    }

    private void begin(Possibilities shown) {
        if (order == Order.LEAST_TRAVEL) {
            // The search is set up with the first portion, off the event thread.
            best = shown.best(Cost.TRAVEL).iterator();
            fetch();
        } else {
            grow(shown.total().min(BigInteger.valueOf(MOST_ROWS)).intValueExact());
        }
    }

    private void grow(int to) {
        int before = rows;
        rows = to;
        if (to > before) {
            fireIntervalAdded(this, before, to - 1);
        }
    }

    private void fetch() {
        if (fetching) {
            return;
        }
        fetching = true;
        Iterator<Variation> from = best;
        running =
                tasks.run(
                        "",
                        progress -> {
                            List<Variation> portion = new ArrayList<>();
                            while (portion.size() < PORTION
                                    && !progress.stopped()
                                    && from.hasNext()) {
                                portion.add(from.next());
                            }
                            return portion;
                        },
                        portion -> {
                            fetching = false;
                            fetched.addAll(portion);
                            grow(fetched.size());
                        },
                        failure -> fetching = false);
    }

    /** A row is in sight: more may be needed soon. */
    void seen(int row) {
        if (order == Order.LEAST_TRAVEL
                && row > rows - PORTION / 2
                && rows > 0
                && possibilities.isPresent()
                && BigInteger.valueOf(rows).compareTo(possibilities.get().total()) < 0
                && rows < MOST_ROWS) {
            fetch();
        }
    }

    @Override
    public int getSize() {
        return rows;
    }

    @Override
    public Variation getElementAt(int row) {
        return order == Order.LEAST_TRAVEL
                ? fetched.get(row)
                : possibilities.orElseThrow().get(BigInteger.valueOf(row));
    }
}
