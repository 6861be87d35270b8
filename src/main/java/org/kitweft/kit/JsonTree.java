package org.kitweft.kit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;

/**
 * Reads JSON text into a tree, as an object mapper would, but without one: making one takes longer
 * than reading all kits, and every command reads a kit.
 */
final class JsonTree {
    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonTree() {}

    /**
     * Reads one value and nothing after it; a missing node where there is no text.
     *
     * @throws com.fasterxml.jackson.core.JsonProcessingException naming the fault and its place
     */
    static JsonNode read(String json) throws IOException {
        try (JsonParser parser = FACTORY.createParser(json)) {
            if (parser.nextToken() == null) {
                return MissingNode.getInstance();
            }
            JsonNode root = value(parser);
            if (parser.nextToken() != null) {
                throw new JsonParseException(parser, "expected the end of the text");
            }
            return root;
        }
    }

    private static JsonNode value(JsonParser parser) throws IOException {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, nodes.objectNode());
            case START_ARRAY -> array(parser, nodes.arrayNode());
            case VALUE_STRING -> nodes.textNode(parser.getText());
            case VALUE_NUMBER_INT -> whole(parser, nodes);
            case VALUE_NUMBER_FLOAT -> nodes.numberNode(parser.getDoubleValue());
            case VALUE_TRUE -> nodes.booleanNode(true);
            case VALUE_FALSE -> nodes.booleanNode(false);
            case VALUE_NULL -> nodes.nullNode();
            case END_ARRAY, END_OBJECT, FIELD_NAME, NOT_AVAILABLE, VALUE_EMBEDDED_OBJECT ->
                    throw new JsonParseException(parser, "expected a value");
        };
    }

    private static JsonNode whole(JsonParser parser, JsonNodeFactory nodes) throws IOException {
        return switch (parser.getNumberType()) {
            case INT -> nodes.numberNode(parser.getIntValue());
            case LONG -> nodes.numberNode(parser.getLongValue());
            default -> nodes.numberNode(parser.getBigIntegerValue());
        };
    }

    private static JsonNode object(JsonParser parser, ObjectNode object) throws IOException {
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            object.set(name, value(parser));
        }
        return object;
    }

    private static JsonNode array(JsonParser parser, ArrayNode array) throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(parser));
        }
        return array;
    }
}
