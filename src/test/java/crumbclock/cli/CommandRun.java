package crumbclock.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;

/** One run of the program inside the test: what it said on both streams, and its exit code. */
record CommandRun(int code, String out, String err) {

    static CommandRun of(Object... args) {
        return of(new Interrupt(), args);
    }

    static CommandRun of(Interrupt interrupt, Object... args) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var surroundings = new Surroundings(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), false, false, interrupt);
        int code = Main.run(surroundings, Arrays.stream(args).map(Object::toString).toArray(String[]::new));
        interrupt.finish();
        return new CommandRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Both together, with the folder of the test taken out. */
    String errIn(Path folder) {
        return err.replace(folder.toString() + "/", "").replace(folder.toString(), "FOLDER");
    }
}
