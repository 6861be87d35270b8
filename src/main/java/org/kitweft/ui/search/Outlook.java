package org.kitweft.ui.search;

import org.kitweft.explore.search.SearchWatch;
import org.kitweft.ui.task.Tasks;

/**
 * Between a search on its own thread and a panel that shows how far it is. Other than stopping the
 * task, {@link #stop()} lets the search hand over what it has found. All methods may be called on
 * any thread.
 */
public final class Outlook implements SearchWatch {
    private volatile double part;
    private volatile boolean stopped;
    private volatile Tasks.Progress task = Tasks.Progress.NONE;

    /** The task that the search runs in: if nobody waits for it any more, the search stops. */
    public SearchWatch within(Tasks.Progress progress) {
        task = progress;
        return this;
    }

    @Override
    public void progress(int done, int all) {
        part = (double) done / all;
    }

    @Override
    public boolean isCancelled() {
        return stopped || task.stopped();
    }

    /** Asks the search to end with what it has. */
    public void stop() {
        stopped = true;
    }

    /** Whether it has been asked to end. */
    public boolean isStopped() {
        return stopped;
    }

    /** How far it is, from 0 to 1. */
    public double part() {
        return part;
    }
}
