package org.kitweft.sound.bank;

import org.kitweft.sound.bank.percussion.PercussionSound;
import org.kitweft.sound.bank.pitched.Program;
import org.kitweft.sound.bank.pitched.Rendered;
import org.kitweft.sound.bank.render.Decay;
import org.kitweft.sound.bank.render.Finish;
import org.kitweft.sound.bank.render.Loudness;
import org.kitweft.sound.bank.render.Noise;
import org.kitweft.sound.bank.render.Thrift;
import org.kitweft.sound.bank.render.Wave;
import org.kitweft.sound.bank.soundfont.Sample;

/** How one sample comes about: a name, and the work that makes it, on any thread. */
interface Blueprint {
    /**
     * Loudness of a percussion sample whose level is 0 dB, in LUFS over its first 400 ms. Chosen so
     * that the shortest sounds reach it without bending their peaks much.
     */
    double PERCUSSION_LUFS = -26;

    /** The same for pitched samples: softer, since several sound at once. */
    double PITCHED_LUFS = -30;

    /** The sample's name. */
    String name();

    /** Renders, levels and quantises. */
    Sample make();

    /**
     * One layer of a percussion sound. All layers share their chance, so they are one and the same
     * cymbal.
     */
    record Struck(PercussionSound sound, Layer layer) implements Blueprint {
        @Override
        public String name() {
            return sound.key()
                    + " "
                    + sound.name().substring(0, Math.min(14, sound.name().length()))
                    + " "
                    + layer.letter();
        }

        @Override
        public Sample make() {
            Wave wave = Thrift.fit(sound.voice().render(layer.strength(), new Noise(sound.key())));
            short[] pcm = Finish.ending(wave, PERCUSSION_LUFS + sound.level(), layer.softer());
            return Sample.ending(name(), pcm, wave.rate(), sound.key());
        }
    }

    /** One layer of one root of a pitched program. */
    record Keyed(Program program, int root, Layer layer) implements Blueprint {
        @Override
        public String name() {
            return "%s %d %s".formatted(program.name(), root, layer.letter());
        }

        @Override
        public Sample make() {
            Noise noise = new Noise(1000L * program.name().hashCode() + root);
            Rendered made = program.voice().render(root, layer.strength(), noise);
            double loudness = PITCHED_LUFS + program.level();
            if (!made.loops()) {
                Wave wave = Thrift.fit(made.wave());
                short[] pcm = Finish.ending(wave, loudness, layer.softer());
                return Sample.ending(name(), pcm, wave.rate(), root);
            }
            int rate = made.wave().rate();
            // Measured as it will sound, with the decay that the synthesizer adds.
            double lost = Loudness.of(made.wave()) - Loudness.of(heard(made));
            short[] pcm = Finish.looping(made.wave(), loudness + lost);
            return Sample.looping(name(), pcm, rate, root, made.loopStart(), made.loopEnd());
        }

        private Wave heard(Rendered made) {
            int rate = made.wave().rate();
            int period = made.loopEnd() - made.loopStart();
            double[] heard = new double[(int) Math.ceil(Loudness.WINDOW * rate)];
            double[] samples = made.wave().samples();
            double fall = Decay.perSample(program.decay().applyAsDouble(root), rate);
            double level = 1;
            for (int i = 0; i < heard.length; i++) {
                int from =
                        i < made.loopEnd() ? i : made.loopStart() + (i - made.loopStart()) % period;
                heard[i] = samples[from] * level;
                level *= fall;
            }
            return new Wave(rate, heard);
        }
    }
}
