package org.kitweft.ui.explore;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.AbstractListModel;
import org.kitweft.explore.rank.Ranked;
import org.kitweft.explore.rank.Standing;
import org.kitweft.explore.role.RoleWeights;
import org.kitweft.explore.trellis.Cost;
import org.kitweft.explore.trellis.Possibilities;
import org.kitweft.explore.trellis.Variation;
import org.kitweft.groove.Role;
import org.kitweft.ui.task.Tasks;

/**
 * Variations for a list that shows only what is in sight: in their order each is made when asked
 * for, so that millions can be scrolled through; with the least travel first they are fetched in
 * portions as one comes near the end; the best for a role come from a search that can be watched.
 */
final class VariationList extends AbstractListModel<Variation> {
    private static final long serialVersionUID = 1;

    /** More rows than any hand scrolls through, and few enough for a component's height. */
    private static final int MOST_ROWS = 10_000_000;

    private static final int PORTION = 200;

    /** The first rows are wanted at once. */
    private static final int FIRST_PORTION = 40;

    private final transient Tasks tasks;
    private final transient RankedSearch search;
    private transient Optional<Possibilities> possibilities = Optional.empty();
    private transient Iterator<Variation> best = List.<Variation>of().iterator();
    private final transient List<Variation> fetched = new ArrayList<>();
    private transient Tasks.Running running = () -> {};

    /** Whether nobody waits for more of {@link #best}, whichever portion is being fetched. */
    private transient AtomicBoolean ended = new AtomicBoolean();

    private transient Runnable changed = () -> {};
    private Order order = Order.LEAST_TRAVEL;
    private boolean fetching;
    private int rows;

    VariationList(Tasks tasks) {
        this.tasks = tasks;
        this.search = new RankedSearch(tasks, this::found);
    }

    /** Is called when rows have changed, after all listeners, or the search has. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    /** Shows other variations, or in another order; empty: none. */
    void show(Optional<Possibilities> other, Order by, RoleWeights weights) {
        running.stop();
        ended.set(true);
        ended = new AtomicBoolean();
        search.end();
        fetching = false;
        possibilities = other.filter(p -> p.total().signum() > 0);
        order = by;
        fetched.clear();
        int before = rows;
        rows = 0;
        if (before > 0) {
            fireIntervalRemoved(this, 0, before - 1);
        }
        possibilities.ifPresent(shown -> begin(shown, weights));
        changed.run();
    }

    private void begin(Possibilities shown, RoleWeights weights) {
        Optional<Role> role = order.role();
        if (role.isPresent()) {
            search.begin(shown, role.get(), weights);
        } else if (order == Order.LEAST_TRAVEL) {
            // The search is set up with the first portion, off the event thread.
            best = List.<Variation>of().iterator();
            fetch(Optional.of(shown));
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

    /** The search has come further: rows move. */
    private void found() {
        int before = rows;
        rows = search.standing().best().size();
        if (before > 0) {
            fireContentsChanged(this, 0, before - 1);
        }
        if (rows > before) {
            fireIntervalAdded(this, before, rows - 1);
        }
        changed.run();
    }

    private record Portion(Iterator<Variation> from, List<Variation> variations) {}

    private void fetch(Optional<Possibilities> anew) {
        if (fetching) {
            return;
        }
        fetching = true;
        Iterator<Variation> before = best;
        AtomicBoolean enough = ended;
        int wanted = anew.isPresent() ? FIRST_PORTION : PORTION;
        running =
                tasks.run(
                        "",
                        progress -> {
                            Iterator<Variation> from =
                                    anew.map(p -> p.best(Cost.TRAVEL, enough::get).iterator())
                                            .orElse(before);
                            List<Variation> portion = new ArrayList<>();
                            while (portion.size() < wanted
                                    && !progress.stopped()
                                    && !enough.get()
                                    && from.hasNext()) {
                                portion.add(from.next());
                            }
                            return new Portion(from, portion);
                        },
                        portion -> {
                            fetching = false;
                            best = portion.from();
                            fetched.addAll(portion.variations());
                            grow(fetched.size());
                            changed.run();
                        },
                        failure -> {
                            fetching = false;
                            throw new IllegalStateException("no variations by travel", failure);
                        });
    }

    /** A row is in sight: more may be needed soon. */
    void seen(int row) {
        if (order == Order.LEAST_TRAVEL
                && row > rows - PORTION / 2
                && rows > 0
                && possibilities.isPresent()
                && BigInteger.valueOf(rows).compareTo(possibilities.get().total()) < 0
                && rows < MOST_ROWS) {
            fetch(Optional.empty());
        }
    }

    /** The search for the best, which stands still in other orders. */
    RankedSearch search() {
        return search;
    }

    /** What is shown now. */
    Order order() {
        return order;
    }

    @Override
    public int getSize() {
        return rows;
    }

    @Override
    public Variation getElementAt(int row) {
        if (order.role().isPresent()) {
            return search.standing().best().get(row).variation();
        }
        return order == Order.LEAST_TRAVEL
                ? fetched.get(row)
                : possibilities.orElseThrow().get(BigInteger.valueOf(row));
    }

    /** How well a row serves the role that is ranked by, 0 to 1. */
    OptionalDouble score(int row) {
        List<Ranked> best = search.standing().best();
        return order.role().isPresent() && row < best.size()
                ? OptionalDouble.of(best.get(row).score())
                : OptionalDouble.empty();
    }

    /** The row of a variation, -1 if it is none of those that are here now. */
    int rowOf(Variation variation) {
        if (order == Order.NUMBER) {
            return variation.index().compareTo(BigInteger.valueOf(rows)) < 0
                    ? variation.index().intValueExact()
                    : -1;
        }
        if (order == Order.LEAST_TRAVEL) {
            return fetched.indexOf(variation);
        }
        List<Ranked> best = search.standing().best();
        for (int row = 0; row < best.size(); row++) {
            if (best.get(row).variation().equals(variation)) {
                return row;
            }
        }
        return -1;
    }

    /** How the search stands. */
    Standing standing() {
        return search.standing();
    }
}
