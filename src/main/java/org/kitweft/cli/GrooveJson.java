package org.kitweft.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.kitweft.groove.Conflict;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.Phrase;
import org.kitweft.groove.Place;
import org.kitweft.groove.Section;
import org.kitweft.groove.Tempo;
import org.kitweft.groove.Ticks;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Sound;
import org.kitweft.kit.SoundName;
import org.kitweft.pattern.Letter;

/**
 * A groove as the command {@code groove --json} answers; the fields are a contract.
 *
 * <p>{@code sound} is the sound's id on its surface; {@code letter} is null for a layer. {@code
 * channel} counts from 1. {@code channel} and {@code key} are null for a sound that the kit lacks.
 * A conflict has {@code kind}, {@code limb} (or null), {@code sounds} by their full names, {@code
 * places} with {@code bar} and {@code step}, and {@code reason}.
 */
final class GrooveJson {
    private GrooveJson() {}

    static String of(Groove groove, Tempo tempo) {
        return JsonText.of(json -> write(groove, tempo, json));
    }

    /** The same of a phrase, whose sections are named too; bars count through it. */
    static String of(Phrase phrase, Tempo tempo) {
        return JsonText.of(
                json -> {
                    json.writeStartObject();
                    write(phrase, tempo, json);
                    json.writeArrayFieldStart("sections");
                    int bar = 1;
                    for (Section section : phrase.sections()) {
                        json.writeStartObject();
                        json.writeStringField("role", section.role().id());
                        json.writeNumberField("bar", bar);
                        json.writeNumberField("bars", section.groove().bars());
                        json.writeEndObject();
                        bar += section.groove().bars();
                    }
                    json.writeEndArray();
                    json.writeEndObject();
                });
    }

    private static void write(Groove groove, Tempo tempo, JsonGenerator json) throws IOException {
        json.writeStartObject();
        write(Phrase.of(groove), tempo, json);
        json.writeEndObject();
    }

    private static void write(Phrase phrase, Tempo tempo, JsonGenerator json) throws IOException {
        Groove first = phrase.sections().get(0).groove();
        json.writeStringField("sticking", first.sticking().text());
        json.writeStringField("meter", first.grid().meter().text());
        json.writeNumberField("tempo", tempo.beatsPerMinute());
        json.writeNumberField("steps", first.grid().stepsPerBeat());
        json.writeNumberField("bars", phrase.bars());
        json.writeStringField("kit", first.kit().name());
        json.writeArrayFieldStart("hits");
        int bars = 0;
        long ticks = 0;
        for (Section section : phrase.sections()) {
            for (Hit hit : section.groove().hits()) {
                write(hit, section.groove(), bars, ticks, json);
            }
            bars += section.groove().bars();
            ticks += section.groove().ticks();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("conflicts");
        bars = 0;
        for (Section section : phrase.sections()) {
            for (Conflict conflict : section.groove().conflicts()) {
                write(conflict, bars, json);
            }
            bars += section.groove().bars();
        }
        json.writeEndArray();
    }

    /**
     * @param bars before the hit's section
     * @param ticks before it
     */
    private static void write(Hit hit, Groove groove, int bars, long ticks, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        writePlace(hit.place(), bars, json);
        json.writeStringField("start", Ticks.text(ticks + hit.start()));
        json.writeStringField("limb", hit.limb().id());
        json.writeStringField("letter", hit.letter().map(Letter::name).orElse(null));
        json.writeStringField("surface", hit.sound().surface());
        json.writeStringField("sound", hit.sound().sound());
        if (groove.kit().has(hit.sound())) {
            Sound sound = groove.kit().sound(hit.sound());
            json.writeNumberField("channel", sound.channel());
            json.writeNumberField("key", sound.key());
        } else {
            json.writeNullField("channel");
            json.writeNullField("key");
        }
        json.writeNumberField("velocity", hit.velocity());
        json.writeStringField("dynamic", hit.dynamic().name().toLowerCase(Locale.ROOT));
        json.writeEndObject();
    }

    private static void write(Conflict conflict, int bars, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", conflict.kind());
        json.writeStringField("limb", conflict.limb().map(Limb::id).orElse(null));
        json.writeArrayFieldStart("sounds");
        for (SoundName sound : conflict.sounds()) {
            json.writeString(sound.text());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("places");
        for (Place place : conflict.places()) {
            json.writeStartObject();
            writePlace(place, bars, json);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("reason", conflict.reason());
        json.writeEndObject();
    }

    private static void writePlace(Place place, int bars, JsonGenerator json) throws IOException {
        json.writeNumberField("bar", bars + place.bar());
        json.writeNumberField("step", place.step());
    }
}
