package org.kitweft.sound.wave;

/** Is told how far long work has come, and may stop it. Called on the thread that works. */
@FunctionalInterface
public interface Progress {
    /** Never stops, tells nobody. */
    Progress NONE = part -> true;

    /**
     * Work has come so far.
     *
     * @param part of the whole, 0 to 1
     * @return whether to go on; false stops the work and leaves no file
     */
    boolean reached(double part);
}
