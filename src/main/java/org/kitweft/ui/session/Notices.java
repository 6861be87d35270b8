package org.kitweft.ui.session;

/** Where panels tell people what happened, in one line. */
public interface Notices {
    /** Something was done or is worth knowing. */
    void note(String line);

    /** Something went wrong. */
    void fault(String line);
}
