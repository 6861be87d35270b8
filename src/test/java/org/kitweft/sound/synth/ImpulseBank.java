package org.kitweft.sound.synth;

import com.sun.media.sound.ModelPatch;
import com.sun.media.sound.SF2Instrument;
import com.sun.media.sound.SF2InstrumentRegion;
import com.sun.media.sound.SF2Layer;
import com.sun.media.sound.SF2LayerRegion;
import com.sun.media.sound.SF2Region;
import com.sun.media.sound.SF2Sample;
import com.sun.media.sound.SF2Soundbank;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A bank whose every percussion key is a single sample at full scale: where it lands is where the
 * onset is.
 */
public final class ImpulseBank {
    private static final int ROOT_KEY = 60;

    private ImpulseBank() {}

    /** Writes the bank as an SF2 file. */
    public static void write(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            ((SF2Soundbank) bank().soundbank()).save(out);
        }
    }

    /** The bank. */
    public static Bank bank() {
        SF2Soundbank bank = new SF2Soundbank();
        SF2Sample sample = new SF2Sample(bank);
        sample.setName("impulse");
        byte[] samples = new byte[Short.BYTES * 2000];
        samples[0] = (byte) 0xFF;
        samples[1] = 0x7F;
        sample.setData(samples);
        sample.setSampleRate(NoteStream.RATE);
        sample.setOriginalPitch(ROOT_KEY);
        bank.addResource(sample);

        SF2LayerRegion zone = new SF2LayerRegion();
        zone.putInteger(SF2Region.GENERATOR_OVERRIDINGROOTKEY, ROOT_KEY);
        zone.putInteger(SF2Region.GENERATOR_SCALETUNING, 0);
        zone.setSample(sample);
        SF2Layer layer = new SF2Layer(bank);
        layer.setName("impulse");
        layer.getRegions().add(zone);
        bank.addResource(layer);

        SF2InstrumentRegion region = new SF2InstrumentRegion();
        region.setLayer(layer);
        SF2Instrument instrument = new SF2Instrument(bank);
        instrument.setName("impulse");
        instrument.setPatch(new ModelPatch(0, 0, true));
        instrument.getRegions().add(region);
        bank.addInstrument(instrument);
        return new Bank("impulse", bank);
    }
}
