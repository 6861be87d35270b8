package org.kitweft.sound.live;

import org.kitweft.sound.synth.NoteStream;

/**
 * Makes 16-bit samples for a line. Changes of level glide over one part, so that they do not click.
 *
 * <p>Nothing leaves louder than full scale: up to {@value #KNEE} of it samples pass as they are,
 * what is above is bent towards full scale and never reaches it.
 */
final class Samples {
    /** From where on samples are bent. */
    static final double KNEE = 0.8;

    private double gain;

    /**
     * @param samples left and right in turn
     * @param to the gain at the end of the part
     */
    byte[] bytes(float[] samples, int frames, double to) {
        byte[] bytes = new byte[frames * NoteStream.CHANNELS * Short.BYTES];
        double from = gain;
        int out = 0;
        for (int frame = 0; frame < frames; frame++) {
            double now = from + (to - from) * (frame + 1) / frames;
            for (int channel = 0; channel < NoteStream.CHANNELS; channel++) {
                double bent = bent(samples[frame * NoteStream.CHANNELS + channel] * now);
                short sample = (short) Math.round(bent * Short.MAX_VALUE);
                bytes[out++] = (byte) sample;
                bytes[out++] = (byte) (sample >> Byte.SIZE);
            }
        }
        gain = to;
        return bytes;
    }

    static double bent(double sample) {
        double size = Math.abs(sample);
        if (size <= KNEE) {
            return sample;
        }
        double room = 1 - KNEE;
        return Math.copySign(KNEE + room * Math.tanh((size - KNEE) / room), sample);
    }
}
