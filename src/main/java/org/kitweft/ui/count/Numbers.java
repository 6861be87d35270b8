package org.kitweft.ui.count;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Whole numbers as people read them. */
public final class Numbers {
    private static final int MOST_DIGITS = 21;

    private Numbers() {}

    /** All digits, in groups of three: {@code 16,777,216}. */
    public static String exact(BigInteger number) {
        return String.format(Locale.ENGLISH, "%,d", number);
    }

    /**
     * All digits where there are at most {@value #MOST_DIGITS}; else the first three and how many
     * there are: {@code about 3.40 × 10^38}.
     */
    public static String brief(BigInteger number) {
        return brief(number, MOST_DIGITS);
    }

    /** The same with another limit of digits, at least 3. */
    static String brief(BigInteger number, int mostDigits) {
        int digits = number.abs().toString().length();
        if (digits <= mostDigits) {
            return exact(number);
        }
        BigDecimal rounded =
                new BigDecimal(number).round(new MathContext(3, RoundingMode.HALF_EVEN));
        int power = rounded.precision() - rounded.scale() - 1;
        return "about %s × 10%s"
                .formatted(rounded.scaleByPowerOfTen(-power).setScale(2), raised(power));
    }

    /** One number as part of another, 0 to 1; 0 of 0 is 0. */
    public static double ratio(BigInteger part, BigInteger whole) {
        return whole.signum() == 0
                ? 0
                : new BigDecimal(part)
                        .divide(new BigDecimal(whole), MathContext.DECIMAL64)
                        .doubleValue();
    }

    private static String raised(int power) {
        StringBuilder text = new StringBuilder();
        for (char digit : Integer.toString(power).toCharArray()) {
            text.append("⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0'));
        }
        return text.toString();
    }
}
