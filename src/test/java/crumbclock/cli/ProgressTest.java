package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.engine.cost.Cost;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void onATerminalABarTellsTheBestSoFar() {
        try (var progress = Progress.of(surroundings(true), false, -1)) {
            progress.improved(7, new Cost(0, 120));
        }

        assertThat(told()).contains("planning", "wishes 120 points").contains("\r");
    }

    @Test
    void elsewhereNothingIsWrittenOver() {
        try (var progress = Progress.of(surroundings(false), false, -1)) {
            progress.improved(7, new Cost(0, 120));
        }

        assertThat(told()).doesNotContain("\r");
    }

    @Test
    void quietSaysNothingOnATerminalEither() {
        try (var progress = Progress.of(surroundings(true), true, -1)) {
            progress.improved(7, new Cost(0, 120));
        }

        assertThat(told()).isEmpty();
    }

    private Surroundings surroundings(boolean terminal) {
        return new Surroundings(new PrintStream(new ByteArrayOutputStream()), new PrintStream(err, true, StandardCharsets.UTF_8), terminal, false,
                new Interrupt());
    }

    private String told() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
