package org.kitweft.sound.bank.voice;

import java.util.ArrayList;
import java.util.List;
import org.kitweft.sound.bank.render.Decay;
import org.kitweft.sound.bank.voice.Grains.Grain;
import org.kitweft.sound.bank.voice.Grains.Pattern;

/**
 * How grains lie in time: shaken, scraped, rattling, clapped. Times are common practice, no source.
 */
public final class Shakes {
    private Shakes() {}

    /**
     * Grains by chance under an energy that swells and dies.
     *
     * @param perSecond grains a second at the top
     * @param swell seconds until the top, at the hardest stroke; softer ones take longer
     * @param decay seconds to fall by 60 dB
     */
    public static Pattern shaken(double perSecond, double swell, double decay) {
        return (strength, noise) -> {
            List<Grain> grains = new ArrayList<>();
            double rise = swell * (1.5 - 0.5 * strength);
            double time = 0;
            while (time < rise + decay) {
                time += -StrictMath.log(noise.between(0.05, 1)) / perSecond;
                double past = time - rise;
                double level =
                        past < 0 ? Math.sqrt(Math.max(0, time / rise)) : Decay.after(past, decay);
                grains.add(new Grain(time, level * noise.between(0.3, 1)));
            }
            return grains;
        };
    }

    /**
     * Teeth passed one after another, quicker towards the end.
     *
     * @param teeth how many
     * @param seconds the whole scrape
     */
    public static Pattern scraped(int teeth, double seconds) {
        return (strength, noise) -> {
            List<Grain> grains = new ArrayList<>();
            for (int i = 0; i < teeth; i++) {
                double way = (double) i / teeth;
                double time = seconds * (1.25 * way - 0.25 * way * way);
                double level = 0.5 + 0.5 * way;
                grains.add(
                        new Grain(time + noise.between(0, 0.001), level * noise.between(0.7, 1)));
            }
            return grains;
        };
    }

    /**
     * A rattle that dies away.
     *
     * @param perSecond knocks a second
     * @param decay seconds to fall by 60 dB
     */
    public static Pattern rattling(double perSecond, double decay) {
        return (strength, noise) -> {
            List<Grain> grains = new ArrayList<>();
            double time = 0.002;
            while (time < decay) {
                grains.add(new Grain(time, Decay.after(time, decay) * noise.between(0.8, 1)));
                time += noise.between(0.92, 1.08) / perSecond;
            }
            return grains;
        };
    }

    /** A few knocks at stated times and levels: pairs of seconds and level. */
    public static Pattern at(double... pairs) {
        return (strength, noise) -> {
            List<Grain> grains = new ArrayList<>();
            for (int i = 0; i < pairs.length; i += 2) {
                grains.add(new Grain(pairs[i], pairs[i + 1]));
            }
            return grains;
        };
    }
}
