package org.kitweft.cli;

import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest names. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {
            "Kitweft " + Objects.requireNonNullElse(version, "(not packaged)"),
            "Java " + Runtime.version()
        };
    }
}
