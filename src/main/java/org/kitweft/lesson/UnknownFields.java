package org.kitweft.lesson;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Fields of a lesson file that this program does not know, kept so that a lesson written by another
 * version loses nothing here. A field whose surroundings are gone when the lesson is written again
 * (the letter it belonged to was taken out, say) goes with them.
 *
 * @param byPointer JSON text of each field by its JSON Pointer (RFC 6901) from the object that
 *     keeps it
 */
public record UnknownFields(SortedMap<String, String> byPointer) {
    /** Nothing unknown. */
    public static final UnknownFields NONE = new UnknownFields(Map.of());

    public UnknownFields {
        byPointer = Collections.unmodifiableSortedMap(new TreeMap<>(byPointer));
    }

    UnknownFields(Map<String, String> byPointer) {
        this(new TreeMap<>(byPointer));
    }
}
