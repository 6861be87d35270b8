package org.kitweft.sound;

/**
 * A way out for sound that the system offers.
 *
 * @param id tells it from others
 * @param name for people
 */
public record AudioLine(String id, String name) {}
