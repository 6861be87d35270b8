package org.kitweft.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import picocli.CommandLine.Option;

/** Which kit is played. */
final class KitOptions {
    @Option(
            names = "--kit",
            paramLabel = "NAME|FILE",
            defaultValue = BuiltInKits.DEFAULT,
            description =
                    "The kit: a built-in one (see the command kits) or a kit file. Default:"
                            + " ${DEFAULT-VALUE}.")
    private String kit = BuiltInKits.DEFAULT;

    @Option(
            names = "--left-handed",
            description =
                    "Set the kit up mirrored, where it has no bars; R and L stay the hands you type.")
    private boolean leftHanded;

    Kit kit() throws IOException {
        Kit loaded = load(kit);
        return leftHanded ? mirrored(loaded) : loaded;
    }

    /**
     * The kit mirrored, for the option {@code --left-handed}.
     *
     * @throws InputException if it has bars
     */
    static Kit mirrored(Kit kit) {
        if (!kit.canBeMirrored()) {
            throw new InputException(
                    "--left-handed: kit \"%s\" cannot be mirrored, since bars lie from low at the left to high at the right for every player; leave it out, and type R and L as this player strikes"
                            .formatted(kit.name()));
        }
        return kit.forOtherHand();
    }

    /** A built-in kit, or else the kit of a file. */
    static Kit load(String nameOrFile) throws IOException {
        if (BuiltInKits.names().contains(nameOrFile)) {
            return BuiltInKits.load(nameOrFile);
        }
        Path file = Path.of(nameOrFile);
        boolean looksLikeAFile =
                nameOrFile.endsWith(".json") || file.getNameCount() > 1 || Files.exists(file);
        if (!looksLikeAFile) {
            return BuiltInKits.load(nameOrFile);
        }
        if (Files.isDirectory(file)) {
            throw new InputException("kit file %s: it is a folder".formatted(file));
        }
        try {
            return KitFile.read(file);
        } catch (NoSuchFileException e) {
            throw new InputException("kit file %s: there is no such file".formatted(file), e);
        }
    }
}
