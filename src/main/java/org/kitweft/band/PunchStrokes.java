package org.kitweft.band;

import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import org.kitweft.groove.Groove;
import org.kitweft.groove.Hit;
import org.kitweft.groove.HitSource;
import org.kitweft.groove.LetterVoicing;
import org.kitweft.pattern.Dynamic;
import org.kitweft.pattern.Letter;

/**
 * Which of the drummer's strokes the band joins in a punch: all of the hand that still sounds where
 * the other is tacet, else the accents, else all strokes of the hands.
 */
final class PunchStrokes {
    private PunchStrokes() {}

    /** One hit an instant, the loudest, in time. */
    static Collection<Hit> of(Groove groove) {
        List<Hit> hands =
                groove.hits().stream()
                        .filter(hit -> hit.source() == HitSource.STROKE)
                        .filter(
                                hit ->
                                        hit.letter()
                                                .filter(l -> l != Letter.K && l != Letter.H)
                                                .isPresent())
                        .toList();
        boolean oneHand =
                List.of(Letter.R, Letter.L).stream()
                        .anyMatch(
                                letter ->
                                        groove.voicing()
                                                .letter(letter)
                                                .filter(LetterVoicing::tacet)
                                                .isPresent());
        boolean accents =
                !oneHand && hands.stream().anyMatch(hit -> hit.dynamic() == Dynamic.ACCENT);
        TreeMap<Long, Hit> strokes = new TreeMap<>();
        hands.stream()
                .filter(hit -> !accents || hit.dynamic() == Dynamic.ACCENT)
                .forEach(
                        hit ->
                                strokes.merge(
                                        hit.start(),
                                        hit,
                                        (a, b) -> a.dynamic().compareTo(b.dynamic()) < 0 ? b : a));
        return strokes.values();
    }
}
