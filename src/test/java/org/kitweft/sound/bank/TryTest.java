package org.kitweft.sound.bank;

import org.junit.jupiter.api.Test;
import org.kitweft.sound.bank.render.*;

class TryTest {
    @Test
    void go() throws Exception {
        var own = TestBank.loaded();
        for (int k = 27; k < 88; k++) {
            StringBuilder sb = new StringBuilder();
            double pl = -99, pc = 0;
            String flag = "";
            for (int v : new int[] {40, 80, 115}) {
                Wave w = new Played().strike(0.01, k, v).mono(own, 0.6);
                double l = Loudness.of(w),
                        c = Spectrum.of(w.samples(), 44100, 400, 4900, 8192).centroid();
                sb.append(String.format("%7.1f %6.0f pk %.3f|", l, c, w.peak()));
                if (l < pl + 3 || c < pc * 1.01) flag += " *" + v;
                pl = l;
                pc = c;
            }
            System.out.println(k + " " + sb + flag);
        }
        int[] pr = {4, 9, 11, 12, 13, 32, 33, 47, 60, 61, 116, 117};
        for (int p : pr)
            for (int key : new int[] {36, 43, 48, 53, 60, 67, 72, 79, 84, 91, 96}) {
                StringBuilder sb = new StringBuilder();
                double pl = -99, pc = 0;
                String flag = "";
                for (int v : new int[] {40, 80, 115}) {
                    Wave w = new Played().program(0, p).note(0.01, .5, 0, key, v).mono(own, 0.6);
                    double l = Loudness.of(w),
                            c = Spectrum.of(w.samples(), 44100, 400, 4900, 8192).centroid();
                    sb.append(String.format("%7.1f %6.0f pk %.3f|", l, c, w.peak()));
                    if (l < pl + 3 || c < pc * 1.01) flag += " *" + v;
                    pl = l;
                    pc = c;
                }
                System.out.println("p" + p + " " + key + " " + sb + flag);
            }
    }
}
