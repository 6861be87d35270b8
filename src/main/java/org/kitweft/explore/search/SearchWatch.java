package org.kitweft.explore.search;

/** Looks on while a search runs. Both methods are called on the thread that searches. */
public interface SearchWatch {
    /** Neither shows progress nor ever stops the search. */
    SearchWatch NONE =
            new SearchWatch() {
                @Override
                public void progress(int done, int all) {
                    // Nobody looks on.
                }

                @Override
                public boolean isCancelled() {
                    return false;
                }
            };

    /** So many tries of all are done. */
    void progress(int done, int all);

    /** Whether to stop; the search then ends with the best it has found so far. */
    boolean isCancelled();
}
