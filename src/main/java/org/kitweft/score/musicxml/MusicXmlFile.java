package org.kitweft.score.musicxml;

import jakarta.xml.bind.JAXBException;
import jakarta.xml.bind.Marshaller;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.util.Marshalling;
import org.kitweft.file.SafeFile;
import org.kitweft.score.model.Score;

/**
 * Writes scores as MusicXML 4.0: plain, or compressed where the file's name ends in {@code .mxl}.
 *
 * <p>Swing is not written out: notes stand where the straight grid has them, and a direction has
 * its words and ratio. The same score gives the same bytes.
 */
public final class MusicXmlFile {
    private static final String ROOT_NAME = "score.musicxml";
    private static final String HEADER =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
            """;
    private static final String CONTAINER =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <container>
              <rootfiles>
                <rootfile full-path="%s" media-type="application/vnd.recordare.musicxml+xml"/>
              </rootfiles>
            </container>
            """
                    .formatted(ROOT_NAME);

    private MusicXmlFile() {}

    /**
     * Writes a score.
     *
     * @throws IOException in one sentence, if it cannot be written
     */
    public static void write(
            Score score, MusicXmlSettings settings, Path file, SafeFile.Existing existing)
            throws IOException {
        byte[] plain = bytes(score, settings);
        boolean compressed = file.toString().toLowerCase(Locale.ROOT).endsWith(".mxl");
        SafeFile.write(
                file,
                existing,
                out -> {
                    if (compressed) {
                        compress(plain, out);
                    } else {
                        out.write(plain);
                    }
                });
    }

    /** The score as the bytes of a plain file. */
    public static byte[] bytes(Score score, MusicXmlSettings settings) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(HEADER.getBytes(StandardCharsets.UTF_8));
        try {
            // Not Marshalling.marshal: it writes its own version, 4.0.3, which no schema knows.
            Marshaller marshaller = Marshalling.getContext(ScorePartwise.class).createMarshaller();
            marshaller.setProperty(Marshaller.JAXB_FRAGMENT, true);
            marshaller.setProperty(Marshaller.JAXB_FORMATTED_OUTPUT, true);
            marshaller.setProperty(Marshaller.JAXB_ENCODING, "UTF-8");
            marshaller.marshal(MusicXml.of(score, settings), out);
        } catch (JAXBException e) {
            throw new IllegalStateException("a score always has a MusicXML form", e);
        }
        out.write('\n');
        return out.toByteArray();
    }

    /** A zip file as MusicXML 4.0 has it: the container first, times fixed. */
    private static void compress(byte[] plain, OutputStream out) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            entry(zip, "META-INF/container.xml", CONTAINER.getBytes(StandardCharsets.UTF_8));
            entry(zip, ROOT_NAME, plain);
        }
    }

    private static void entry(ZipOutputStream zip, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(LocalDateTime.of(2000, 1, 1, 0, 0));
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
