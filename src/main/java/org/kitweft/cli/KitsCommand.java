package org.kitweft.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.kitweft.kit.BuiltInKits;
import org.kitweft.kit.Kit;
import org.kitweft.kit.KitFile;
import org.kitweft.kit.Limb;
import org.kitweft.kit.Sound;
import org.kitweft.kit.Surface;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the kits, or shows one. */
@Command(
        name = "kits",
        header = "List the kits, or show the surfaces and sounds of one.",
        abbreviateSynopsis = true,
        sortOptions = false,
        description = {
            "List the built-in kits, or show the surfaces and sounds of one. A kit file is checked"
                    + " and shown as well."
        },
        footer = {
            "",
            "x is to the player's right, y away from the player, both in cm from the player's seat.",
            "",
            "Examples:",
            "  kitweft kits",
            "  kitweft kits five-piece",
            "  kitweft kits hand-drums --json > my-kit.json",
            "  kitweft kits my-kit.json --left-handed",
            "",
            "--json answers with the kit's file; without a name with a list of names."
        })
final class KitsCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME|FILE", description = "One kit.")
    private @Nullable String wanted;

    @Option(names = "--left-handed", description = "Show it mirrored, where it has no bars.")
    private boolean leftHanded;

    @Option(names = "--json", description = "Answer with JSON instead of text.")
    private boolean json;

    KitsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (wanted == null) {
            terminal.out().print(json ? names() : list());
            return Cli.DONE;
        }
        Kit loaded = KitOptions.load(wanted);
        Kit kit = leftHanded ? KitOptions.mirrored(loaded) : loaded;
        terminal.out().print(json ? KitFile.write(kit) : text(kit));
        return Cli.DONE;
    }

    private static String names() {
        return JsonText.of(
                out -> {
                    out.writeStartArray();
                    for (String name : BuiltInKits.names()) {
                        out.writeString(name);
                    }
                    out.writeEndArray();
                });
    }

    private static String list() {
        return BuiltInKits.names().stream()
                .map(
                        name ->
                                "%-12s %d surfaces, %d sounds\n"
                                        .formatted(
                                                name,
                                                BuiltInKits.load(name).surfaces().size(),
                                                BuiltInKits.load(name).soundNames().size()))
                .collect(Collectors.joining());
    }

    private static String text(Kit kit) {
        StringBuilder text = new StringBuilder(kit + "\n");
        for (Surface surface : kit.surfaces()) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "\n%s (%s), x %.0f cm, y %.0f cm\n",
                            surface.name(),
                            surface.id(),
                            surface.x(),
                            surface.y()));
            for (Sound sound : surface.sounds()) {
                text.append(
                        String.format(
                                Locale.ROOT,
                                "  %-22s channel %d, key %3d, %s\n",
                                surface.nameOf(sound),
                                sound.channel(),
                                sound.key(),
                                sound.limbs().stream()
                                        .map(Limb::words)
                                        .collect(Collectors.joining(", "))));
            }
        }
        return text.toString();
    }
}
