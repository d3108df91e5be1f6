package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangeOptionTest {

    private static final String FEWER = "edit A1 pieces=12";

    @TempDir
    private Path folder;

    @Test
    void aPlanWithChangesIsAuditedWithTheSameChanges() throws IOException {
        Path problem = SmallProblem.in(folder);
        Path plan = folder.resolve("out/plan.json");

        var planned = CommandRun.of("plan", problem, "--change", FEWER, "--change", "more mixer", "--steps", 20, "--out", folder.resolve("out"));
        var audited = CommandRun.of("audit", problem, plan, "--change", FEWER, "--change", "more mixer");
        var without = CommandRun.of("audit", problem, plan);

        assertThat(planned.code()).isZero();
        assertThat(planned.out()).startsWith("Two dozen, with: " + FEWER + "; more mixer, Test kitchen\n");
        assertThat(audited.code()).isZero();
        assertThat(audited.out()).contains(": sound, ");
        assertThat(without.code()).isEqualTo(2);
        assertThat(without.err()).contains("expected \"Two dozen\", the title of the problem it is read for. ", "and its changes.");
    }

    @Test
    void changesAreCheckedWithoutAPlan() throws IOException {
        Path problem = SmallProblem.in(folder);

        assertThat(CommandRun.of("check", problem, "--change", "copy A1 as B2").out()).contains(": all well. 2 orders, 2 cakes");
        var wrong = CommandRun.of("check", problem, "--change", "drop A2");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err()).isEqualTo("change \"drop A2\", drop: read \"A2\"; expected the id of an order of this problem. "
                + "Did you mean \"A1\"?\n1 fault; nothing was written.\n");
    }

    @Test
    void aPlanWithChangesLeavesTheOneWithoutAlone() throws IOException {
        assertThat(PlanFiles.usual(Path.of("problems/two-dozen.json"), "away-lew")).isEqualTo(Path.of("reports/two-dozen-away-lew"));
        var run = CommandRun.of("plan", SmallProblem.in(folder), "--change", "away ovn", "--out", folder.resolve("out"));

        assertThat(run.code()).isEqualTo(2);
        assertThat(Files.exists(folder.resolve("out"))).isFalse();
    }
}
