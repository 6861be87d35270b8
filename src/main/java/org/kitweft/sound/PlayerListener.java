package org.kitweft.sound;

import java.util.List;
import java.util.Optional;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Place;
import org.kitweft.groove.Practice;

/**
 * Is told what a {@link Player} does. Called on the sound thread: return at once, and cross over to
 * other threads in one place.
 */
public interface PlayerListener {

    /**
     * A step is reached, as the ear hears it: the time that sound takes through the output buffer
     * is allowed for.
     *
     * @param hits that sound now, muted limbs left out; empty where the step is silent
     * @param place the step; its bar counts through the phrase
     * @param tick from the start of the loop
     */
    default void struck(List<Hit> hits, Place place, long tick) {}

    /**
     * Another loop is reached, or what this one is like has changed; before its first step.
     *
     * @param number from 1, counted from where the course of the settings began
     * @param loop its tempo, and whether it sounds
     */
    default void loop(int number, Practice.Loop loop) {}

    /** Playing starts or has stopped; the last strokes may ring on after that. */
    default void state(boolean playing) {}

    /** Nothing sounds any more; the last strokes have rung out. */
    default void silent() {}

    /** Something went wrong, in one line for people. If it kept from playing, it has stopped. */
    default void fault(String message) {}

    /** What {@link Player#notice()} says may be another now, and is this. */
    default void notice(Optional<String> why) {}
}
