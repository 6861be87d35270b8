package org.kitweft.sound.bank.physics;

/**
 * Two heads joined by the air between them, in their lowest mode: they swing together (low) or
 * against each other (high).
 *
 * <p>Two masses on springs with a spring between. Source: Rossing, Bork, Zhao and Fystrom,
 * "Acoustics of snare drums", <i>J. Acoust. Soc. Am.</i> 92 (1992) 84.
 *
 * @param together frequency of the mode in which both move the same way, Hz
 * @param against frequency of the mode in which they move against each other, Hz
 */
public record TwoHeads(double together, double against) {
    /**
     * Joins two heads.
     *
     * @param batter frequency of the struck head alone, Hz
     * @param resonant frequency of the other head alone, Hz
     * @param air strength of the air spring, as the frequency it would give a head without tension,
     *     Hz
     */
    public static TwoHeads joined(double batter, double resonant, double air) {
        double mean = (batter * batter + resonant * resonant) / 2 + air * air;
        double half = (batter * batter - resonant * resonant) / 2;
        double split = Math.sqrt(half * half + air * air * air * air);
        return new TwoHeads(Math.sqrt(mean - split), Math.sqrt(mean + split));
    }
}
