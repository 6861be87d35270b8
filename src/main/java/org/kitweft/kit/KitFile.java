package org.kitweft.kit;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * Kits as JSON text, the form of design section 5:
 *
 * <pre>{@code
 * {"name":"…","surfaces":[{"id":"…","name":"…","x":0,"y":0,"z":0,"diameter":1,"limbs":["right-hand"],
 *   "sounds":[{"id":"…","channel":10,"key":38,"place":"C5","notehead":"normal"}]}]}
 * }</pre>
 *
 * <p>A sound may add {@code program} (0 to 127, pitched sounds), {@code limbs} (where not all that
 * reach the surface can strike it so: only the foot plays {@code hi-hat.foot}) and {@code stops}
 * (ids of sounds that it silences). The kit may add {@code "leftHanded":true}.
 */
public final class KitFile {
    private final String source;

    private KitFile(String source) {
        this.source = source;
    }

    /**
     * Reads a kit file.
     *
     * @throws KitFormatException naming the fault and its place
     * @throws IOException if the file cannot be read
     */
    public static Kit read(Path file) throws IOException {
        try {
            return parse(Files.readString(file), file.toString());
        } catch (MalformedInputException e) {
            throw new KitFormatException(file.toString(), "", "it is not text in UTF-8");
        }
    }

    /**
     * Reads a kit from text.
     *
     * @param json the text
     * @param source what to call it in errors, e.g. the file's path
     * @throws KitFormatException naming the fault and its place
     */
    public static Kit parse(String json, String source) {
        return new KitFile(source).kit(json);
    }

    /** The kit as text that reads back to an equal kit. */
    public static String write(Kit kit) {
        try {
            return writer().writeValueAsString(tree(kit)) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a kit always has a JSON form", e);
        }
    }

    /** Made when a kit is written and not before: it takes longer than reading all kits. */
    private static ObjectWriter writer() {
        return new ObjectMapper().writer(SerializationFeature.INDENT_OUTPUT);
    }

    /** The kit as a JSON tree. */
    public static ObjectNode tree(Kit kit) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("name", kit.name());
        if (kit.leftHanded()) {
            root.put("leftHanded", true);
        }
        ArrayNode surfaces = root.putArray("surfaces");
        for (Surface surface : kit.surfaces()) {
            ObjectNode node = surfaces.addObject();
            node.put("id", surface.id()).put("name", surface.name());
            node.put("x", surface.x()).put("y", surface.y()).put("z", surface.z());
            node.put("diameter", surface.diameter());
            putLimbs(node, surface.limbs());
            ArrayNode sounds = node.putArray("sounds");
            surface.sounds().forEach(sound -> putSound(sounds.addObject(), sound, surface));
        }
        return root;
    }

    private static void putSound(ObjectNode node, Sound sound, Surface surface) {
        node.put("id", sound.id()).put("channel", sound.channel());
        sound.program().ifPresent(program -> node.put("program", program));
        node.put("key", sound.key());
        node.put("place", sound.place().text()).put("notehead", sound.notehead().id());
        if (!sound.limbs().equals(surface.limbs())) {
            putLimbs(node, sound.limbs());
        }
        if (!sound.stops().isEmpty()) {
            new TreeSet<>(sound.stops()).forEach(node.putArray("stops")::add);
        }
    }

    private static void putLimbs(ObjectNode node, Set<Limb> limbs) {
        ArrayNode array = node.putArray("limbs");
        limbs.forEach(limb -> array.add(limb.id()));
    }

    private Kit kit(String json) {
        JsonNode root;
        try {
            root = JsonTree.read(json);
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            throw new KitFormatException(
                    source,
                    at == null
                            ? ""
                            : "line %d, column %d".formatted(at.getLineNr(), at.getColumnNr()),
                    e instanceof StreamConstraintsException
                            ? "nested too deep, or a text or number too long for a kit"
                            : "it is not whole JSON text (%s)"
                                    .formatted(
                                            e.getOriginalMessage().lines().findFirst().orElse("")));
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory can always be read", e);
        }
        if (!root.isObject()) {
            throw new KitFormatException(source, "", "expected an object {\"name\", \"surfaces\"}");
        }
        String name = text(root, "name", "");
        List<Surface> surfaces = new ArrayList<>();
        for (JsonNode node : array(root, "surfaces", "")) {
            surfaces.add(surface(node, "surface %d".formatted(surfaces.size() + 1)));
        }
        if (surfaces.isEmpty()) {
            throw new KitFormatException(source, "surfaces", "the kit has no surface");
        }
        boolean leftHanded = leftHanded(root);
        try {
            return new Kit(name, leftHanded, surfaces);
        } catch (IllegalArgumentException e) {
            throw new KitFormatException(source, "surfaces", e);
        }
    }

    private boolean leftHanded(JsonNode root) {
        JsonNode leftHanded = root.path("leftHanded");
        if (!leftHanded.isMissingNode() && !leftHanded.isBoolean()) {
            throw new KitFormatException(source, "", "expected true or false \"leftHanded\"");
        }
        return leftHanded.asBoolean(false);
    }

    private Surface surface(JsonNode node, String number) {
        String id = text(node, "id", number);
        String place = "%s (\"%s\")".formatted(number, id);
        Set<Limb> limbs = limbs(node, place);
        List<Sound> sounds = new ArrayList<>();
        for (JsonNode sound : array(node, "sounds", place)) {
            sounds.add(sound(sound, place + ", sound %d".formatted(sounds.size() + 1), limbs));
        }
        try {
            return new Surface(
                    id,
                    text(node, "name", place),
                    number(node, "x", place),
                    number(node, "y", place),
                    number(node, "z", place),
                    number(node, "diameter", place),
                    limbs,
                    sounds);
        } catch (KitFormatException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new KitFormatException(source, place, e);
        }
    }

    private Sound sound(JsonNode node, String place, Set<Limb> surfaceLimbs) {
        String id = text(node, "id", place);
        String named = "%s (\"%s\")".formatted(place, id);
        Set<String> stops = new TreeSet<>();
        if (node.has("stops")) {
            array(node, "stops", named).forEach(stopped -> stops.add(stopped.asText()));
        }
        OptionalInt program =
                node.has("program")
                        ? OptionalInt.of(whole(node, "program", named))
                        : OptionalInt.empty();
        String head = text(node, "notehead", named);
        Notehead notehead =
                Notehead.of(head)
                        .orElseThrow(
                                () ->
                                        new KitFormatException(
                                                source,
                                                named,
                                                "unknown notehead \"%s\"".formatted(head)));
        try {
            return new Sound(
                    id,
                    whole(node, "channel", named),
                    program,
                    whole(node, "key", named),
                    StaffPlace.parse(text(node, "place", named)),
                    notehead,
                    node.has("limbs") ? limbs(node, named) : surfaceLimbs,
                    stops);
        } catch (KitFormatException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new KitFormatException(source, named, e);
        }
    }

    private Set<Limb> limbs(JsonNode node, String place) {
        Set<Limb> limbs = EnumSet.noneOf(Limb.class);
        for (JsonNode limb : array(node, "limbs", place)) {
            limbs.add(
                    Limb.of(limb.asText())
                            .orElseThrow(
                                    () ->
                                            new KitFormatException(
                                                    source,
                                                    place,
                                                    "unknown limb \"%s\", expected right-hand, left-hand, right-foot or left-foot"
                                                            .formatted(limb.asText()))));
        }
        return limbs;
    }

    private JsonNode array(JsonNode node, String field, String place) {
        JsonNode array = node.path(field);
        if (!array.isArray()) {
            throw new KitFormatException(source, place, "expected a list \"%s\"".formatted(field));
        }
        return array;
    }

    private String text(JsonNode node, String field, String place) {
        JsonNode text = node.path(field);
        if (!text.isTextual()) {
            throw new KitFormatException(source, place, "expected a text \"%s\"".formatted(field));
        }
        return text.asText();
    }

    private double number(JsonNode node, String field, String place) {
        JsonNode number = node.path(field);
        if (!number.isNumber()) {
            throw new KitFormatException(
                    source, place, "expected a number of centimetres \"%s\"".formatted(field));
        }
        return number.asDouble();
    }

    private int whole(JsonNode node, String field, String place) {
        JsonNode number = node.path(field);
        if (!number.isIntegralNumber() || !number.canConvertToInt()) {
            throw new KitFormatException(
                    source, place, "expected a whole number \"%s\"".formatted(field));
        }
        return number.asInt();
    }
}
