package org.kitweft.band;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.kitweft.pattern.TextFormatException;

/**
 * Styles as JSON text; those that come with the program stand under {@code shared/styles} and show
 * every field. How figures are written: {@code shared/styles/README.md}.
 */
public final class StyleFile {
    private static final ObjectMapper MAPPER =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private static final List<String> BASS_VOICES =
            List.of("1", "3", "5", "6", "7", "8", ",5", "w", "a");
    private static final List<String> CHORD_VOICES = List.of("x", "b", "i", "o");

    private static final Set<String> STYLE_FIELDS =
            Set.of(
                    "name", "title", "swing", "pulses", "clave", "reasons", "bass", "comping",
                    "punches");
    private static final Set<String> LINE_FIELDS =
            Set.of(
                    "reason",
                    "program",
                    "low",
                    "high",
                    "loudness",
                    "length",
                    "voicing",
                    "figures",
                    "opening",
                    "kick",
                    "between",
                    "strikesChanges",
                    "followsClave",
                    "fill",
                    "punch");
    private static final Set<String> FIGURE_FIELDS = Set.of("steps", "reason", "weight");

    private final String source;

    private StyleFile(String source) {
        this.source = source;
    }

    /**
     * Reads a style file.
     *
     * @throws StyleFormatException naming the fault and its place
     * @throws IOException if the file cannot be read
     */
    public static Style read(Path file) throws IOException {
        try {
            return parse(Files.readString(file), file.toString());
        } catch (MalformedInputException e) {
            throw new StyleFormatException(file.toString(), "", "it is not text in UTF-8");
        }
    }

    /**
     * Reads a style from text.
     *
     * @param json the text
     * @param source what to call it in errors, e.g. the file's path
     * @throws StyleFormatException naming the fault and its place
     */
    public static Style parse(String json, String source) {
        StyleFile file = new StyleFile(source);
        try {
            return file.style(MAPPER.readTree(json));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            throw new StyleFormatException(
                    source,
                    at == null
                            ? ""
                            : "line %d, column %d".formatted(at.getLineNr(), at.getColumnNr()),
                    "it is not whole JSON text");
        }
    }

    private Style style(JsonNode root) {
        checkFields(root, "", STYLE_FIELDS);
        List<Integer> pulses = new ArrayList<>();
        array(root, "pulses", "").forEach(pulse -> pulses.add(pulse.asInt()));
        List<String> reasons = new ArrayList<>();
        array(root, "reasons", "").forEach(reason -> reasons.add(reason.asText()));
        StyleLine bass = line(root, "bass", BASS_VOICES);
        StyleLine comping = line(root, "comping", CHORD_VOICES);
        StyleLine punches = line(root, "punches", CHORD_VOICES);
        reasons.addAll(List.of(bass.reason(), comping.reason(), punches.reason()));
        Optional<ClaveDirection> clave =
                root.has("clave")
                        ? Optional.of(one(root, "clave", "", ClaveDirection::of))
                        : Optional.empty();
        String name = text(root, "name", "");
        String title = text(root, "title", "");
        int swing = whole(root, "swing", "");
        return checked(
                "",
                () ->
                        new Style(
                                name, title, swing, pulses, clave, reasons, bass, comping,
                                punches));
    }

    private StyleLine line(JsonNode root, String place, List<String> voices) {
        JsonNode node = root.path(place);
        checkFields(node, place, LINE_FIELDS);
        List<BandFigure> figures = new ArrayList<>();
        if (node.has("figures")) {
            for (JsonNode figure : array(node, "figures", place)) {
                figures.add(figure(figure, place + ", figure " + (figures.size() + 1), voices));
            }
        }
        Optional<StyleLine.Voices> voicing =
                node.has("voicing")
                        ? Optional.of(voicing(node.path("voicing"), place + ", voicing"))
                        : Optional.empty();
        String reason = text(node, "reason", place);
        int program = whole(node, "program", place);
        int low = whole(node, "low", place);
        int high = whole(node, "high", place);
        int loudness = whole(node, "loudness", place);
        int length = whole(node, "length", place);
        Optional<BandFigure> opening = optional(node, "opening", place, voices);
        Optional<BandFigure> between = optional(node, "between", place, voices);
        Map<MetricPlace, FigureStep> kick = kick(node.path("kick"), place + ", kick", voices);
        boolean strikesChanges = yesOrNo(node, "strikesChanges", place);
        boolean followsClave = yesOrNo(node, "followsClave", place);
        InSection fill = one(node, "fill", place, InSection::of);
        InSection punch = one(node, "punch", place, InSection::of);
        return checked(
                place,
                () ->
                        new StyleLine(
                                reason,
                                program,
                                low,
                                high,
                                loudness,
                                length,
                                voicing,
                                figures,
                                opening,
                                kick,
                                between,
                                strikesChanges,
                                followsClave,
                                fill,
                                punch));
    }

    private StyleLine.Voices voicing(JsonNode node, String place) {
        VoicingKind kind = one(node, "kind", place, VoicingKind::of);
        int count = whole(node, "voices", place);
        return checked(place, () -> new StyleLine.Voices(kind, count));
    }

    private Optional<BandFigure> optional(
            JsonNode node, String field, String place, List<String> voices) {
        return node.has(field)
                ? Optional.of(figure(node.path(field), place + ", " + field, voices))
                : Optional.empty();
    }

    private BandFigure figure(JsonNode node, String place, List<String> voices) {
        checkFields(node, place, FIGURE_FIELDS);
        String text = text(node, "steps", place);
        String reason = text(node, "reason", place);
        int weight = node.has("weight") ? whole(node, "weight", place) : 1;
        return checked(place, () -> BandFigure.parse(text, voices, reason, weight));
    }

    private Map<MetricPlace, FigureStep> kick(JsonNode node, String place, List<String> voices) {
        Map<MetricPlace, FigureStep> kick = new EnumMap<>(MetricPlace.class);
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            MetricPlace metric =
                    MetricPlace.of(name)
                            .orElseThrow(
                                    () ->
                                            new StyleFormatException(
                                                    source,
                                                    place,
                                                    "unknown place \"%s\"".formatted(name)));
            String word = text(node, name, place);
            kick.put(metric, checked(place, () -> BandFigure.step(word, 0, word.length(), voices)));
        }
        return kick;
    }

    private <T> T checked(String place, Supplier<T> made) {
        try {
            return made.get();
        } catch (TextFormatException e) {
            throw new StyleFormatException(
                    source, place, e.getMessage() + ", in \"" + e.text() + "\"");
        } catch (IllegalArgumentException e) {
            throw new StyleFormatException(source, place, String.valueOf(e.getMessage()));
        }
    }

    private <T> T one(
            JsonNode node, String field, String place, Function<String, Optional<T>> named) {
        String name = text(node, field, place);
        return named.apply(name)
                .orElseThrow(
                        () ->
                                new StyleFormatException(
                                        source, place, "unknown %s \"%s\"".formatted(field, name)));
    }

    /** A misspelt field would be lost silently, so it is refused. */
    private void checkFields(JsonNode node, String place, Set<String> known) {
        if (!node.isObject()) {
            throw new StyleFormatException(source, place, "expected an object {…}");
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                throw new StyleFormatException(
                        source, place, "unknown field \"%s\"".formatted(name));
            }
        }
    }

    private boolean yesOrNo(JsonNode node, String field, String place) {
        JsonNode value = node.path(field);
        if (!value.isMissingNode() && !value.isBoolean()) {
            throw new StyleFormatException(
                    source, place, "expected true or false \"" + field + "\"");
        }
        return value.asBoolean(false);
    }

    private JsonNode array(JsonNode node, String field, String place) {
        if (!node.path(field).isArray()) {
            throw new StyleFormatException(source, place, "expected a list \"" + field + "\"");
        }
        return node.path(field);
    }

    private String text(JsonNode node, String field, String place) {
        if (!node.path(field).isTextual()) {
            throw new StyleFormatException(source, place, "expected a text \"" + field + "\"");
        }
        return node.path(field).asText();
    }

    private int whole(JsonNode node, String field, String place) {
        if (!node.path(field).isInt()) {
            throw new StyleFormatException(
                    source, place, "expected a whole number \"" + field + "\"");
        }
        return node.path(field).asInt();
    }
}
