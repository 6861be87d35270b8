package org.kitweft.cli;

import java.util.Optional;
import org.kitweft.pattern.Letter;

/**
 * {@code LETTER=VALUE}, as many options have it.
 *
 * @param letter the letter
 * @param value what stands after the equals sign, not blank
 */
record Assignment(Letter letter, String value) {

    static Assignment parse(String option, String text, String expected) {
        int equals = text.indexOf('=');
        if (equals < 0 || text.substring(equals + 1).isBlank()) {
            throw new InputException("%s: expected %s".formatted(option, expected));
        }
        return new Assignment(
                letter(option, text.substring(0, equals).strip(), expected),
                text.substring(equals + 1).strip());
    }

    static Letter letter(String option, String text, String expected) {
        Optional<Letter> letter = text.length() == 1 ? Letter.of(text.charAt(0)) : Optional.empty();
        return letter.orElseThrow(
                () ->
                        new InputException(
                                "%s: found \"%s\", expected R, L, K, H or B: %s"
                                        .formatted(option, text, expected)));
    }
}
