package org.kitweft.score.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageIO;

/**
 * Pictures as they should look, to compare by dots.
 *
 * <p>To renew them: {@code mvn -q test -Dtest=GoldenPageTest -Dgolden=renew}, then look at each
 * that changed before it is committed. A picture that differs is left in {@code target/golden}.
 */
final class GoldenImage {
    /** Font engines of other Java versions shade edges a little differently. */
    private static final int LARGE_DIFFERENCE = 96;

    /** Of all dots: fewer than one accent has on a staff of four bars. */
    private static final double MOST_DIFFERENT = 0.0001;

    private static final Path SOURCES = Path.of("src/test/resources/org/kitweft/score/page");
    private static final Path SEEN = Path.of("target/golden");

    private GoldenImage() {}

    static void check(String name, BufferedImage image) throws IOException {
        String file = name + ".golden.png";
        if ("renew".equals(System.getProperty("golden"))) {
            ImageIO.write(image, "png", SOURCES.resolve(file).toFile());
            return;
        }
        BufferedImage golden;
        try (InputStream in = GoldenImage.class.getResourceAsStream(file)) {
            golden = ImageIO.read(Objects.requireNonNull(in, file));
        }
        double share = differing(image, golden);
        if (share > MOST_DIFFERENT) {
            Files.createDirectories(SEEN);
            ImageIO.write(image, "png", SEEN.resolve(file).toFile());
        }
        assertThat(share)
                .as("share of dots of %s that differ; what was seen is in %s", file, SEEN)
                .isLessThanOrEqualTo(MOST_DIFFERENT);
    }

    /** The share of dots that differ much; all of them if the sizes differ. */
    static double differing(BufferedImage one, BufferedImage other) {
        if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
            return 1;
        }
        int different = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                int green = one.getRGB(x, y) >> 8 & 0xFF;
                int expected = other.getRGB(x, y) >> 8 & 0xFF;
                if (Math.abs(green - expected) > LARGE_DIFFERENCE) {
                    different++;
                }
            }
        }
        return (double) different / (one.getWidth() * one.getHeight());
    }

    /** Whether a picture would pass as another. */
    static boolean passes(BufferedImage one, BufferedImage other) {
        return differing(one, other) <= MOST_DIFFERENT;
    }
}
