package org.kitweft.sound.bank.render;

/**
 * Noise in a band that swells and dies away: what many unresolved modes or grains sound like.
 *
 * @param hertz middle of the band
 * @param q its sharpness: middle over width
 * @param amplitude RMS at the top of its swell, if it did not die away
 * @param attack seconds of swell to 63 %, 0 for at once
 * @param decay seconds to fall by 60 dB
 */
public record NoiseBand(double hertz, double q, double amplitude, double attack, double decay) {
    /** RMS of white noise spread evenly from &minus;1 to 1. */
    private static final double WHITE_RMS = 1 / Math.sqrt(3);

    /** Adds this band's noise to {@code out}, from {@code seconds} on. */
    public void addTo(Wave out, Noise noise, double seconds) {
        int rate = out.rate();
        double left = (double) out.length() / rate - seconds;
        double lasting = Math.min(left, attack * 3 + decay * 1.5);
        if (hertz > 0.48 * rate || lasting <= 0) {
            return;
        }
        Wave band = noise.white(rate, lasting).filter(Biquad.bandPass(rate, hertz, q));
        // Steeper above than below: a soft body holds no highs.
        band.filter(Biquad.lowPass(rate, hertz * 2.2, 0.7));
        shape(band);
        // A band-pass of width f/q keeps (pi/2 f/q) / (rate/2) of white noise's power.
        double kept = Math.sqrt(Math.PI * hertz / q / rate);
        out.add(band, amplitude / (WHITE_RMS * Math.min(1, kept)), seconds);
    }

    private void shape(Wave band) {
        double[] samples = band.samples();
        double fall = Decay.perSample(decay, band.rate());
        double rise = attack > 0 ? StrictMath.exp(-1 / (attack * band.rate())) : 0;
        double level = 1;
        double missing = attack > 0 ? 1 : 0;
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= level * (1 - missing);
            level *= fall;
            missing *= rise;
        }
    }
}
