package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;

/** Reads a JSON text (RFC 8259) strictly, within limits of depth and size. */
final class JsonTree {

    private static final int DEEPEST = 12;
    private static final int LONGEST_WORDS = 4_000;
    private static final int LONGEST_NUMBER = 60;
    private static final int MOST_VALUES = 1_000_000;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxStringLength(LONGEST_WORDS)
                    .maxNameLength(LONGEST_WORDS)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final JsonParser parser;
    private int count;

    private JsonTree(JsonParser parser) {
        this.parser = parser;
    }

    /** @throws tools.jackson.core.JacksonException when the text is not JSON or beyond the limits */
    static JsonNode read(String text) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            parser.nextToken();
            JsonNode root = new JsonTree(parser).node();
            if (parser.nextToken() != null) {
                throw new StreamConstraintsException("More follows after the end of the value");
            }
            return root;
        }
    }

    private JsonNode node() {
        if (++count > MOST_VALUES) {
            throw new StreamConstraintsException("The text holds more than " + MOST_VALUES + " values");
        }
        TokenStreamLocation at = parser.currentTokenLocation();
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return object(at);
        }
        return token == JsonToken.START_ARRAY ? array(at) : value(at, token);
    }

    private JsonNode object(TokenStreamLocation at) {
        List<String> keys = new ArrayList<>();
        List<JsonNode> parts = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            keys.add(Spelling.trimmed(parser.currentName()));
            parser.nextToken();
            parts.add(node());
        }
        return new JsonNode(JsonNode.Shape.OBJECT, at.getLineNr(), at.getColumnNr(), "", keys, parts);
    }

    private JsonNode array(TokenStreamLocation at) {
        List<JsonNode> parts = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            parts.add(node());
        }
        return new JsonNode(JsonNode.Shape.ARRAY, at.getLineNr(), at.getColumnNr(), "", List.of(), parts);
    }

    private JsonNode value(TokenStreamLocation at, JsonToken token) {
        String text = switch (token) {
            case VALUE_TRUE -> "yes";
            case VALUE_FALSE -> "no";
            case VALUE_NULL -> "";
            default -> parser.getString();
        };
        return new JsonNode(JsonNode.Shape.VALUE, at.getLineNr(), at.getColumnNr(), text, List.of(), List.of());
    }
}
