package crumbclock.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Makes a run of a few seconds shorter. What is needed only later is loaded beside what is done now; and the Java machine's
 * optimising compiler, which on such a run costs as much time as all the rest and never earns it back, is told to leave the
 * code alone. Nothing of this changes what a run answers.
 */
final class ShortRun {

    private static final String DIRECTIVES = "[{match: \"*.*\", c2: {Exclude: true}}]";

    /** So many seconds of search are over before optimised code pays; measured on two cores. */
    private static final Pattern FEW_SECONDS = Pattern.compile(" --seconds[ =][1-8]( |$)");

    private ShortRun() {
    }

    /**
     * Whether a command line asks for a run that is over in a few seconds: one that plans again, or one plan that is searched for so
     * long. Others that take seconds search many times.
     */
    static boolean isAskedFor(String... args) {
        String line = String.join(" ", args);
        return line.startsWith(ReplanCommand.NAME + " ") || line.startsWith(PlanCommand.NAME + " ") && FEW_SECONDS.matcher(line).find();
    }

    /** Runs one thing after the other on a thread of its own. What fails there will fail, and be told, where it is needed. */
    static void beside(Runnable... loads) {
        var thread = new Thread(() -> {
            for (Runnable load : loads) {
                load.run();
            }
        }, "loads what is needed later");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((one, failure) -> {
        });
        thread.start();
    }

    /** Tells the compiler to do no more than its quick half. A machine that does not know how only takes longer. */
    static void compileQuickly() {
        try {
            Path file = Files.createTempFile("crumbclock", ".json");
            try {
                Files.writeString(file, DIRECTIVES);
                tell("compilerDirectivesAdd", new Object[] {new String[] {file.toString()}}, String[].class.getName());
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException | JMException | RuntimeException unable) {
            // then it compiles as usual
        }
    }

    /** For a run that turns out to be a long one: code that is not compiled yet is optimised again. */
    static void compileWell() {
        try {
            tell("compilerDirectivesClear", new Object[0]);
        } catch (JMException | RuntimeException unable) {
            // then nothing was told before either
        }
    }

    private static void tell(String command, Object[] arguments, String... types) throws JMException {
        ManagementFactory.getPlatformMBeanServer().invoke(new ObjectName("com.sun.management:type=DiagnosticCommand"), command, arguments, types);
    }
}
