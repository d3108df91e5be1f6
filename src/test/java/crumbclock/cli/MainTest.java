package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

    @TempDir
    private Path folder;

    @Test
    void helpListsTheExitCodes() {
        var run = CommandRun.of("--help");

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("Usage: crumbclock").contains("plan", "check", "audit").containsSubsequence(
                "Exit codes:", "0     sound, and all orders on time", "1     planned, but an order is late or not possible",
                "2     bad input or options; nothing was written", "3     fault");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "audit"})
    void eachCommandHasHelpWithItsExitCodes(String command) {
        var run = CommandRun.of(command, "--help");

        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("Usage: crumbclock " + command).contains("PROBLEM", "Exit codes:");
    }

    @Test
    void versionNamesTheProgram() {
        assertThat(CommandRun.of("--version").out()).startsWith("crumbclock ");
    }

    @Test
    void noCommandIsBadInput() {
        assertThat(CommandRun.of()).isEqualTo(new CommandRun(2, "",
                "Say what to do: plan, replan, compare, promise, paces, check or audit.\nTry 'crumbclock --help'.\n"));
    }

    @Test
    void unknownOptionIsBadInput() {
        var run = CommandRun.of("plan", "x.json", "--fast");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("Unknown option: '--fast'\nTry 'crumbclock plan --help'.\n");
    }

    @Test
    void checkCountsWhatItRead() throws IOException {
        Path problem = SmallProblem.in(folder);

        var run = CommandRun.of("check", problem);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith(problem + ": all well. 1 order, 1 cake, 0 batches, ")
                .endsWith("; 1 person, 1 oven, 1 store.\n");
    }

    @Test
    void checkTellsAllFaults() throws IOException {
        var run = CommandRun.of("check", SmallProblem.withMistakesIn(folder));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("tomorrow", "25:10", "by owl");
    }

    @Test
    void auditOfAnUntouchedPlanIsSound() throws IOException {
        Path plan = plan();

        var run = CommandRun.of("audit", folder.resolve("two-dozen.json"), plan);

        assertThat(run.code()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).startsWith(plan + ": sound, 0 points for lateness and ");
    }

    @Test
    void auditOfAPlanThatClaimsOtherCostsIsAFault() throws IOException {
        Path plan = plan();
        Files.writeString(plan, Files.readString(plan).replaceFirst("\"softCost\" ?: ?\\d+", "\"softCost\":1"));

        var run = CommandRun.of("audit", folder.resolve("two-dozen.json"), plan);

        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(3);
        assertThat(run.out()).startsWith("The plan says that it costs 0 points for lateness and 1 for wishes; the audit adds up ");
    }

    @Test
    void auditOfAPlanWithAnOrderDroppedInSilenceNamesTheRule() throws IOException {
        // given
        Path plan = plan();
        String text = Files.readString(plan);
        int outcomes = text.indexOf("\"outcomes\"");
        String dropped = text.substring(0, outcomes)
                + text.substring(outcomes).replaceFirst("\"possible\" ?: ?true", "\"possible\":false");
        assertThat(dropped).isNotEqualTo(text);
        Files.writeString(plan, dropped);

        // when
        var run = CommandRun.of("audit", folder.resolve("two-dozen.json"), plan);

        // then
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(3);
        assertThat(run.out()).contains("R17 complete: ", "order A1 is not possible, and no reason is given", "NOT SOUND, ");
    }

    @Test
    void auditOfSomethingElseIsBadInput() throws IOException {
        Path problem = SmallProblem.in(folder);

        var run = CommandRun.of("audit", problem, problem);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("two-dozen.json");
    }

    private Path plan() throws IOException {
        var run = CommandRun.of("plan", SmallProblem.in(folder), "--steps", 5, "--quiet", "--out", folder.resolve("out"));
        assertThat(run.code()).as(run.err()).isZero();
        return folder.resolve("out/plan.json");
    }
}
