package org.kitweft.lesson;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.kitweft.file.SafeFile;
import org.kitweft.file.SafeFile.Existing;

/**
 * Lessons as JSON text, version {@value #VERSION}:
 *
 * <pre>{@code
 * {"format":"kitweft-lesson","version":1,"title":"…","remarks":"…","items":[
 *   {"title":"…","role":"time","sticking":"RLRR LRLL","kit":"five-piece","leftHanded":false,
 *    "grid":{"meter":"4/4","steps":4,"swing":50,"overTheBar":false},"bars":2,
 *    "tempo":90,"tempoSteps":[70,80,90],"remarks":"…",
 *    "voicing":{
 *      "letters":{"R":{"limb":"right-hand","path":["ride.bow"],"accents":["crash.edge"],
 *                      "ghosts":[],"doublings":[{"limb":"right-foot","sound":"bass-drum.head",
 *                      "accentsOnly":true}],"tacet":false}},
 *      "strokes":{"5":"crash.edge"},
 *      "layers":[{"limb":"left-foot","sound":"hi-hat.foot","steps":2,"figure":"- x - x"}]}}],
 *  "phrases":[
 *   {"title":"…","remarks":"…","tempo":90,"tempoSteps":[70,80,90],
 *    "band":{"on":true,"chords":"Dm7 G7 | Cmaj7 %","style":"swing","clave":"3-2","seed":0},
 *    "sections":[{"role":"time","bars":6,"sticking":"RLRR LRLL","kit":"five-piece",
 *      "leftHanded":false,"grid":{…},"voicing":{…}}]}]}
 * }</pre>
 *
 * <p>{@code kit} is the name of a built-in kit or, for any other, the whole kit in the form of a
 * kit file. Strokes count from 1. Required: format, version, items; of an item the sticking and the
 * voicing's letters, of a phrase its sections, of a section the same and its bars, of a band the
 * chords; the rest has the defaults of the program. Without {@code bars} a groove has as many as it
 * takes until everything comes round.
 *
 * <p>Fields that are not known are kept and written again; a newer version is refused. Phrases came
 * later within version 1: a program that does not know them keeps them so.
 */
public final class LessonFile {
    /** What the field {@code format} says. */
    public static final String FORMAT = "kitweft-lesson";

    /** The newest version that this program reads, and the one it writes. */
    public static final int VERSION = 1;

    private LessonFile() {}

    /**
     * Reads a lesson file.
     *
     * @throws LessonFormatException naming the fault and its place
     * @throws IOException if the file cannot be read
     */
    public static Lesson read(Path file) throws IOException {
        try {
            return parse(Files.readString(file), file.toString());
        } catch (CharacterCodingException e) {
            throw new LessonFormatException(file.toString(), "", "it is not text in UTF-8", e);
        }
    }

    /**
     * Reads a lesson from text.
     *
     * @param json the text
     * @param source what to call it in errors, e.g. the file's path
     * @throws LessonFormatException naming the fault and its place
     */
    public static Lesson parse(String json, String source) {
        JsonNode root;
        try {
            root = Json.MAPPER.readTree(json);
        } catch (JsonProcessingException e) {
            throw new LessonFormatException(
                    source,
                    place(e.getLocation()),
                    e instanceof StreamConstraintsException
                            ? "nested too deep, or a text or number too long for a lesson"
                            : "it is not whole JSON text (%s)"
                                    .formatted(
                                            e.getOriginalMessage().lines().findFirst().orElse("")),
                    e);
        }
        return new LessonReader(source).lesson(root);
    }

    private static String place(JsonLocation at) {
        return at == null ? "" : "line %d, column %d".formatted(at.getLineNr(), at.getColumnNr());
    }

    /** The lesson as text that reads back to an equal lesson. */
    public static String text(Lesson lesson) {
        return Json.text(LessonWriter.tree(lesson));
    }

    /**
     * Writes a lesson beside its target and moves it into place. A file that is replaced is kept
     * beside the new one, with {@code ~} appended to its name.
     *
     * @param replace whether an existing file may be replaced
     * @throws java.nio.file.FileAlreadyExistsException if it exists and may not
     * @throws IOException if it cannot be written; the message is a sentence that names the file
     */
    public static void write(Lesson lesson, Path file, boolean replace) throws IOException {
        byte[] bytes = text(lesson).getBytes(StandardCharsets.UTF_8);
        SafeFile.write(
                file,
                replace ? Existing.REPLACE_WITH_BACKUP : Existing.KEEP,
                out -> out.write(bytes));
    }
}
