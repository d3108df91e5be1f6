package crumbclock.cli;

import crumbclock.app.replan.Replan;
import crumbclock.report.html.PlanPage;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.List;
import java.util.Objects;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;

/** Starts the program. */
public final class Main {

    private static final String TRACE = "CRUMBCLOCK_TRACE";

    /** Held, because a logger that nobody holds forgets its level; libraries have nothing to say to a baker. */
    private static final Logger LIBRARIES = Logger.getLogger("");

    private Main() {
    }

    public static void main(String[] args) {
        LIBRARIES.setLevel(Level.OFF);
        if (ShortRun.isAskedFor(args)) {
            ShortRun.beside(ShortRun::compileQuickly, Replan::prepare, PlanPage::prepare);
        }
        var interrupt = new Interrupt();
        var surroundings = new Surroundings(stream(FileDescriptor.out, "stdout"), stream(FileDescriptor.err, "stderr"),
                isTerminal(), System.getenv(TRACE) != null, interrupt);
        int code = run(surroundings, args);
        interrupt.finish();
        System.exit(code);
    }

    /** Runs one command; never throws and never ends the Java machine. */
    static int run(Surroundings surroundings, String... args) {
        PrintStream err = surroundings.err();
        try {
            return commandLine(surroundings).execute(args);
        } catch (StackOverflowError | OutOfMemoryError tooMuch) {
            return fault(surroundings, tooMuch);
        } finally {
            surroundings.out().flush();
            err.flush();
        }
    }

    private static CommandLine commandLine(Surroundings surroundings) {
        var line = new CommandLine(new CrumbclockCommand());
        line.addSubcommand(new PlanCommand(surroundings));
        line.addSubcommand(new ReplanCommand(surroundings));
        line.addSubcommand(new CompareCommand(surroundings));
        line.addSubcommand(new PromiseCommand(surroundings));
        line.addSubcommand(new PacesCommand(surroundings));
        line.addSubcommand(new CheckCommand(surroundings));
        line.addSubcommand(new AuditCommand(surroundings));
        line.setOut(new java.io.PrintWriter(surroundings.out(), true));
        line.setErr(new java.io.PrintWriter(surroundings.err(), true));
        line.setColorScheme(Help.defaultColorScheme(surroundings.terminal() ? Help.Ansi.AUTO : Help.Ansi.OFF));
        line.setParameterExceptionHandler((wrong, args) -> badOption(surroundings, wrong));
        line.setExecutionExceptionHandler((failure, command, parsed) -> failed(surroundings, failure));
        return line;
    }

    private static int badOption(Surroundings surroundings, ParameterException wrong) {
        surroundings.err().println(wrong.getMessage());
        surroundings.err().println("Try '" + wrong.getCommandLine().getCommandSpec().qualifiedName() + " --help'.");
        return Exit.BAD_INPUT.code();
    }

    private static int failed(Surroundings surroundings, Exception failure) {
        if (failure instanceof BadInput bad) {
            bad.lines().forEach(surroundings.err()::println);
            return Exit.BAD_INPUT.code();
        }
        return fault(surroundings, failure);
    }

    private static int fault(Surroundings surroundings, Throwable failure) {
        String what = Objects.requireNonNullElse(failure.getMessage(), failure.getClass().getSimpleName());
        surroundings.err().println("Fault in the program, nothing was written: " + what.lines().findFirst().orElse("")
                + (surroundings.traces() ? "" : " (set " + TRACE + "=1 to see where)"));
        if (surroundings.traces()) {
            failure.printStackTrace(surroundings.err());
        }
        return Exit.FAULT.code();
    }

    private static boolean isTerminal() {
        String kind = System.getenv("TERM");
        return System.console() != null && kind != null && !kind.equals("dumb");
    }

    /** The terminal's own encoding; where that is plain ASCII (a bare locale), dashes and names still go out as UTF-8. */
    private static PrintStream stream(FileDescriptor descriptor, String name) {
        List<String> names = Stream.of(name + ".encoding", "sun." + name + ".encoding", "native.encoding")
                .map(System::getProperty).filter(Objects::nonNull).toList();
        Charset charset = StandardCharsets.UTF_8;
        try {
            charset = names.isEmpty() ? charset : Charset.forName(names.get(0));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
            charset = StandardCharsets.UTF_8;
        }
        return new PrintStream(new FileOutputStream(descriptor), true,
                charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset);
    }
}
