package org.kitweft.score.musicxml;

import java.math.BigInteger;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.Swing;
import org.kitweft.score.model.SwingMark;

/** Swing as MusicXML 4.0 has it: words to read, a ratio to play. */
final class SwingDirection {
    private SwingDirection() {}

    static Direction of(SwingMark mark) {
        FormattedTextId words = new FormattedTextId();
        words.setValue(mark.words());
        DirectionType type = new DirectionType();
        type.getWordsOrSymbol().add(words);
        Direction direction = new Direction();
        direction.setPlacement(AboveBelow.ABOVE);
        direction.getDirectionType().add(type);
        // The schema knows swing of eighths and sixteenths alone; other notes have the words.
        if (mark.isStraight() || mark.ofEighths() || mark.ofSixteenths()) {
            Sound sound = new Sound();
            sound.setSwing(swing(mark));
            direction.setSound(sound);
        }
        return direction;
    }

    /** The ratio in the smallest integers, as the schema's documentation of swing asks. */
    private static Swing swing(SwingMark mark) {
        Swing swing = new Swing();
        if (mark.isStraight()) {
            swing.setStraight(new Empty());
            return swing;
        }
        BigInteger first = BigInteger.valueOf(mark.percent());
        BigInteger second = BigInteger.valueOf(100L - mark.percent());
        BigInteger common = first.gcd(second);
        swing.setFirst(first.divide(common));
        swing.setSecond(second.divide(common));
        swing.setSwingType(mark.ofEighths() ? "eighth" : "16th");
        return swing;
    }
}
