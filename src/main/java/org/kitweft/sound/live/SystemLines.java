package org.kitweft.sound.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import org.kitweft.sound.AudioLine;
import org.kitweft.sound.synth.NoteStream;

/** The lines of the JDK's sound system. */
final class SystemLines implements OutputLines {
    static final AudioFormat FORMAT =
            new AudioFormat(NoteStream.RATE, Short.SIZE, NoteStream.CHANNELS, true, false);

    private static final AudioLine DEFAULT = new AudioLine("", "System default");

    @Override
    public List<AudioLine> list() {
        List<AudioLine> lines = new ArrayList<>();
        for (Mixer.Info info : AudioSystem.getMixerInfo()) {
            if (AudioSystem.getMixer(info).isLineSupported(request())) {
                lines.add(new AudioLine(info.getName(), info.getName()));
            }
        }
        if (!lines.isEmpty()) {
            lines.add(0, DEFAULT);
        }
        return lines;
    }

    private static DataLine.Info request() {
        return new DataLine.Info(SourceDataLine.class, FORMAT);
    }

    @Override
    public OutputLine open(Optional<AudioLine> line, int bufferFrames) throws LineLostException {
        try {
            SourceDataLine opened = find(line.orElse(DEFAULT));
            opened.open(FORMAT, bufferFrames * FORMAT.getFrameSize());
            return new SystemLine(opened);
        } catch (LineUnavailableException | IllegalArgumentException e) {
            // The JDK says "no line matching …" by an IllegalArgumentException.
            throw new LineLostException(
                    "no audio device: %s is not to be had; all but live sound works"
                            .formatted(
                                    line.map(AudioLine::name).orElse("a line for 44.1 kHz stereo")),
                    e);
        }
    }

    private static SourceDataLine find(AudioLine line)
            throws LineUnavailableException, LineLostException {
        if (line.equals(DEFAULT)) {
            return AudioSystem.getSourceDataLine(FORMAT);
        }
        for (Mixer.Info info : AudioSystem.getMixerInfo()) {
            if (info.getName().equals(line.id())) {
                return AudioSystem.getSourceDataLine(FORMAT, info);
            }
        }
        throw new LineLostException("no audio device: %s is gone".formatted(line.name()));
    }
}
