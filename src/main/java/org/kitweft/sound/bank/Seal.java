package org.kitweft.sound.bank;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * A checksum inside the bank's own comment, so that a damaged copy is known before a synthesizer
 * reads it: the CRC-32 of the whole file, taken while the eight digits themselves are zeros.
 */
final class Seal {
    private static final String MARK = "CRC-32 ";
    private static final String BLANK = "00000000";

    /** The seal stands in the INFO list, at the head of the file. */
    private static final int HEAD = 1024;

    private Seal() {}

    /** A bank's comment with room for the checksum. */
    static String comment(String text) {
        return text + " " + MARK + BLANK;
    }

    /** Fills the checksum in, in place. */
    static byte[] close(byte[] bank) {
        write(bank, digits(bank), checksum(bank));
        return bank;
    }

    /**
     * What is wrong with {@code bank}, in one line; empty if it is as it was built, with {@code
     * comment}.
     */
    static Optional<String> fault(byte[] bank, String comment) {
        if (bank.length < HEAD
                || !letters(bank, 0, 4).equals("RIFF")
                || !letters(bank, 8, 4).equals("sfbk")) {
            return Optional.of("not a SoundFont file: does not start with RIFF and sfbk");
        }
        int stated = ByteBuffer.wrap(bank).order(ByteOrder.LITTLE_ENDIAN).getInt(4) + 8;
        if (stated != bank.length) {
            return Optional.of("%d bytes long, its header says %d".formatted(bank.length, stated));
        }
        int digits = letters(bank, 0, HEAD).indexOf(comment(comment).replace(BLANK, ""));
        if (digits < 0) {
            return Optional.of("not made as \"%s\"".formatted(comment));
        }
        int at = digits(bank);
        String found = letters(bank, at, 8);
        byte[] blank = bank.clone();
        write(blank, at, BLANK);
        String actual = checksum(blank);
        return found.equals(actual)
                ? Optional.empty()
                : Optional.of("CRC-32 is %s, its comment says %s".formatted(actual, found));
    }

    private static int digits(byte[] bank) {
        return letters(bank, 0, HEAD).indexOf(MARK) + MARK.length();
    }

    private static String checksum(byte[] bank) {
        CRC32 crc = new CRC32();
        crc.update(bank);
        return "%08x".formatted(crc.getValue());
    }

    private static String letters(byte[] bank, int from, int count) {
        return new String(
                Arrays.copyOfRange(bank, from, from + count), StandardCharsets.ISO_8859_1);
    }

    private static void write(byte[] bank, int at, String text) {
        System.arraycopy(text.getBytes(StandardCharsets.US_ASCII), 0, bank, at, text.length());
    }
}
