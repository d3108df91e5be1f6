package crumbclock.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * What was measured, and on what.
 *
 * @param commit  short hash, with a + behind it where files differ from it; - outside a repository
 * @param cores   of the machine
 * @param java    version of the virtual machine
 * @param mostHeapMib the most memory Java may take for objects
 */
public record Setting(String commit, int cores, String java, long mostHeapMib) {

    public static Setting read() {
        String dirty = git("status", "--porcelain", "--untracked-files=no");
        String commit = git("rev-parse", "--short=10", "HEAD");
        return new Setting(commit.isEmpty() ? "-" : dirty.isEmpty() ? commit : commit + "+",
                Runtime.getRuntime().availableProcessors(), System.getProperty("java.version"),
                Runtime.getRuntime().maxMemory() >> 20);
    }

    private static String git(String... arguments) {
        String[] command = new String[arguments.length + 1];
        command[0] = "git";
        System.arraycopy(arguments, 0, command, 1, arguments.length);
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(false).start();
            String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return process.waitFor() == 0 ? answer : "";
        } catch (IOException notThere) {
            return "";
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}
