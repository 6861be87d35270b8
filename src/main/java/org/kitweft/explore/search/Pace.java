package org.kitweft.explore.search;

import java.util.concurrent.CancellationException;

/** Counts the steps of a search, shows them to whoever looks on, and ends it when they ask. */
final class Pace {
    /** Nobody looks on. */
    static final Pace UNWATCHED = new Pace(SearchWatch.NONE, 0);

    private final SearchWatch watch;
    private final int all;
    private int done;

    /**
     * @param all the most steps; 0: they are not shown, only stopping is asked for
     */
    Pace(SearchWatch watch, int all) {
        this.watch = watch;
        this.all = all;
    }

    /**
     * One more step.
     *
     * @throws CancellationException if the search is to stop; whoever began it catches this
     */
    void step() {
        if (watch.isCancelled()) {
            throw new CancellationException("the search was stopped");
        }
        if (done < all) {
            done++;
            watch.progress(done, all);
        }
    }
}
