package org.kitweft.sound.bank.voice;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.sound.bank.render.Biquad;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Wave;

/**
 * Many small knocks in a body that colours them: seeds in a gourd, jingles, teeth of a scraper,
 * claps. Each grain is a knock at its time; the body is a few resonances. Put together by its
 * methods, then only rendered.
 *
 * <p>Source of the idea: Cook, "Physically informed sonic modeling", <i>Computer Music Journal</i>
 * 21 no. 3 (1997).
 */
public final class Grains implements Voice {
    /**
     * A knock.
     *
     * @param time seconds after the start
     * @param level linear
     */
    public record Grain(double time, double level) {}

    /** Lays grains out in time. */
    @FunctionalInterface
    public interface Pattern {
        /** The grains of a stroke of {@code strength}. */
        List<Grain> lay(double strength, Noise noise);
    }

    private record Resonance(double hertz, double q, double level) {}

    private final Pattern pattern;
    private final double seconds;
    private final double knock;
    private final List<Resonance> resonances = new ArrayList<>();

    private Grains(Pattern pattern, double seconds, double knock) {
        this.pattern = pattern;
        this.seconds = seconds;
        this.knock = knock;
    }

    /**
     * Grains laid out by {@code pattern}.
     *
     * @param knock seconds of noise that one grain makes
     */
    public static Grains of(Pattern pattern, double seconds, double knock) {
        return new Grains(pattern, seconds, knock);
    }

    /** Adds a resonance of the body. */
    public Grains body(double hertz, double q, double level) {
        resonances.add(new Resonance(hertz, q, level));
        return this;
    }

    @Override
    public Wave render(double strength, Noise noise) {
        Wave knocks = new Wave(RATE, seconds);
        for (Grain grain : pattern.lay(strength, noise)) {
            add(knocks.samples(), grain, noise);
        }
        Wave wave = new Wave(RATE, seconds);
        double brighter = 0.85 + 0.15 * strength;
        for (Resonance r : resonances) {
            Wave coloured = new Wave(RATE, knocks.samples().clone());
            coloured.filter(Biquad.bandPass(RATE, r.hertz() * brighter, r.q()));
            // Hard strokes stir the high resonances more.
            double lift = StrictMath.pow(strength, r.hertz() / 9000);
            wave.add(coloured, r.level() * lift, 0);
        }
        return wave;
    }

    private void add(double[] samples, Grain grain, Noise noise) {
        int start = (int) (grain.time() * RATE);
        int count = Math.max(1, (int) (knock * RATE));
        for (int i = 0; i < count && start + i < samples.length; i++) {
            double left = 1 - (double) i / count;
            samples[start + i] += grain.level() * noise.next() * left * left;
        }
    }
}
