package org.kitweft.sound;

/**
 * An external MIDI device that takes notes.
 *
 * @param id tells it from others
 * @param name for people
 */
public record MidiOutput(String id, String name) {}
