package org.kitweft.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A place in a lesson file: a JSON value, perhaps missing, with its path in words for errors.
 *
 * @param source what the file is called in errors
 * @param node the value; a missing node where there is none
 * @param name the field's own name
 * @param place its path, e.g. {@code item 3, voicing, letters, R}; empty for the whole file
 */
record Field(String source, JsonNode node, String name, String place) {

    /** A whole file. */
    static Field root(String source, JsonNode node) {
        return new Field(source, node, "", "");
    }

    /** A field of this object. */
    Field at(String field) {
        return new Field(source, node.path(field), field, inside(field));
    }

    private String inside(String part) {
        return place.isEmpty() ? part : place + ", " + part;
    }

    boolean isPresent() {
        return !node.isMissingNode() && !node.isNull();
    }

    /** This field, if it is an object. */
    Field object() {
        if (!node.isObject()) {
            throw expected("an object");
        }
        return this;
    }

    /** The fields of this object. */
    List<Field> fields() {
        object();
        return node.properties().stream().map(entry -> at(entry.getKey())).toList();
    }

    /** The elements of this list; {@code each} says what one is. */
    List<Field> list(String each) {
        if (!node.isArray()) {
            throw expected("a list");
        }
        List<Field> elements = new ArrayList<>();
        for (JsonNode element : node) {
            String number = each + " " + (elements.size() + 1);
            String around = place.contains(", ") ? place.replaceFirst(", [^,]*$", "") + ", " : "";
            elements.add(new Field(source, element, name, around + number));
        }
        return elements;
    }

    String text() {
        if (!node.isTextual()) {
            throw expected("a text");
        }
        return node.asText();
    }

    String text(String otherwise) {
        return isPresent() ? text() : otherwise;
    }

    int whole() {
        if (!node.isIntegralNumber() || !node.canConvertToInt()) {
            throw expected("a whole number");
        }
        return node.asInt();
    }

    int whole(int otherwise) {
        return isPresent() ? whole() : otherwise;
    }

    long wholeLong(long otherwise) {
        if (isPresent() && !(node.isIntegralNumber() && node.canConvertToLong())) {
            throw expected("a whole number");
        }
        return node.asLong(otherwise);
    }

    /** True or false; false where it is missing. */
    boolean bool() {
        if (isPresent() && !node.isBoolean()) {
            throw expected("true or false");
        }
        return node.asBoolean(false);
    }

    /** What the model makes of this place; its refusals are faults of this place. */
    <T> T checked(Supplier<T> make) {
        try {
            return make.get();
        } catch (LessonFormatException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new LessonFormatException(source, place, String.valueOf(e.getMessage()), e);
        }
    }

    LessonFormatException expected(String what) {
        int most = 40;
        String found = node.toString();
        return fault(
                isPresent()
                        ? "found %s, expected %s"
                                .formatted(
                                        found.length() <= most
                                                ? found
                                                : found.substring(0, most) + "…",
                                        what)
                        : "it is missing, expected " + what);
    }

    LessonFormatException fault(String fault) {
        return new LessonFormatException(source, place, fault);
    }
}
