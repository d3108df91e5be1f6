package crumbclock.cli;

import java.io.IOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the jar. */
final class Version implements IVersionProvider {

    private static final String BUILD = "/META-INF/maven/crumbclock/crumbclock/pom.properties";

    @Override
    public String[] getVersion() throws IOException {
        var build = new Properties();
        try (var in = Version.class.getResourceAsStream(BUILD)) {
            if (in != null) {
                build.load(in);
            }
        }
        return new String[] {"crumbclock " + build.getProperty("version", "(not built into a jar)")};
    }
}
