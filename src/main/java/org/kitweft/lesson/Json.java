package org.kitweft.lesson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;

/** The JSON side of lesson files: text, trees, and what one tree has beyond another. */
final class Json {
    /** Numbers keep every digit, so that fields that are only passed on stay as they were. */
    static final ObjectMapper MAPPER =
            new ObjectMapper()
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
                    .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false);

    private Json() {}

    /** Indented text, with the same line ends on every system. */
    static String text(JsonNode tree) {
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter()
                        .withSeparators(
                                Separators.createDefaultInstance()
                                        .withObjectFieldValueSpacing(Spacing.AFTER))
                        .withObjectIndenter(new DefaultIndenter("  ", "\n"));
        try {
            return MAPPER.writer(printer).writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree always has a text", e);
        }
    }

    /** The fields that {@code whole} has beyond {@code known}, at any depth. */
    static UnknownFields beyond(JsonNode whole, JsonNode known) {
        Map<String, String> fields = new TreeMap<>();
        collect(whole, known, JsonPointer.empty(), fields);
        return new UnknownFields(fields);
    }

    private static void collect(
            JsonNode whole, JsonNode known, JsonPointer at, Map<String, String> fields) {
        if (whole.isObject() && known.isObject()) {
            whole.properties()
                    .forEach(
                            field -> {
                                JsonPointer there = at.appendProperty(field.getKey());
                                JsonNode same = known.get(field.getKey());
                                if (same == null) {
                                    fields.put(there.toString(), field.getValue().toString());
                                } else {
                                    collect(field.getValue(), same, there, fields);
                                }
                            });
        } else if (whole.isArray() && known.isArray()) {
            for (int i = 0; i < Math.min(whole.size(), known.size()); i++) {
                collect(whole.get(i), known.get(i), at.appendIndex(i), fields);
            }
        }
    }

    /** Puts unknown fields back where the objects they stood in are still there. */
    static void restore(UnknownFields unknown, ObjectNode tree) {
        unknown.byPointer()
                .forEach(
                        (text, json) -> {
                            JsonPointer pointer = JsonPointer.compile(text);
                            String name = pointer.last().getMatchingProperty();
                            if (tree.at(pointer.head()) instanceof ObjectNode parent
                                    && !parent.has(name)) {
                                parent.set(name, parsed(json));
                            }
                        });
    }

    private static JsonNode parsed(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an unknown field was kept as JSON text", e);
        }
    }
}
