package org.kitweft.sound.bank.pitched;

/**
 * A whole number of periods in a whole number of samples, so that a steady tone can go on without a
 * seam.
 *
 * @param frames length of the loop in samples
 * @param cycles periods in it
 * @param rate samples a second
 */
record Loop(int frames, int cycles, int rate) {
    /**
     * The loop nearest to {@code hertz} of about {@code seconds}: within 20 %, the truest pitch
     * wins.
     */
    static Loop near(double hertz, int rate, double seconds) {
        Loop best = new Loop((int) Math.round(rate / hertz), 1, rate);
        int from = Math.max(1, (int) (seconds * 0.8 * hertz));
        int to = Math.max(from + 1, (int) (seconds * 1.2 * hertz));
        for (int cycles = from; cycles <= to; cycles++) {
            Loop loop = new Loop((int) Math.round(cycles * rate / hertz), cycles, rate);
            if (Math.abs(loop.hertz() - hertz) < Math.abs(best.hertz() - hertz)) {
                best = loop;
            }
        }
        return best;
    }

    /** The frequency it really holds. */
    double hertz() {
        return (double) cycles * rate / frames;
    }
}
