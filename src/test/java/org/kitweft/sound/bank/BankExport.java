package org.kitweft.sound.bank;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Builds the bank into a file, for {@code check-bank.sh}; prints the seconds it took, first in this
 * JVM and again.
 */
public final class BankExport {
    private BankExport() {}

    /** {@code args[0]}: the file. */
    public static void main(String[] args) throws Exception {
        for (int i = 0; i < 2; i++) {
            long start = System.nanoTime();
            byte[] bank = BuiltInBank.build();
            System.out.printf(
                    "build %.2f s, %d bytes%n", (System.nanoTime() - start) / 1e9, bank.length);
            Files.write(Path.of(args[0]), bank);
        }
    }
}
