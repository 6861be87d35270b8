package org.kitweft.pattern;

/**
 * One of the 40 international rudiments.
 *
 * @param number 1 to 40, as on the printed sheet
 * @param name its name
 * @param family single stroke, multiple bounce, double stroke, diddle, flam or drag
 * @param sticking its strokes, right hand first
 * @param evenSteps whether every stroke lasts the same in the printed rhythm; if not, the letters
 *     alone hold
 * @param rhythm the printed rhythm in words
 */
public record Rudiment(
        int number,
        String name,
        String family,
        Sticking sticking,
        boolean evenSteps,
        String rhythm) {}
