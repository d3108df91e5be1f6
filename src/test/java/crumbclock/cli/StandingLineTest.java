package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class StandingLineTest {

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void aShorterLineLeavesNothingOfTheLongerOneOnATerminal() {
        try (var line = line(true)) {
            line.show("four words or so");
            line.show("two words");
        }

        assertThat(told()).isEqualTo("\rfour words or so\rtwo words       \r         \r");
    }

    @Test
    void aLineThatWouldWrapIsCut() {
        line(true).show("x".repeat(111));

        assertThat(told()).isEqualTo("\r" + "x".repeat(109) + "…");
    }

    @Test
    void elsewhereEachIsALineOfItsOwn() {
        try (var line = line(false)) {
            line.show("x".repeat(111));
            line.show("two words");
        }

        assertThat(told().lines()).containsExactly("x".repeat(111), "two words");
    }

    @Test
    void nothingIsToldBeforeItIsTime() {
        try (var line = line(true)) {
            line.tell(seconds -> "too early");
        }

        assertThat(told()).isEmpty();
    }

    private StandingLine line(boolean terminal) {
        return new StandingLine(new Surroundings(new PrintStream(new ByteArrayOutputStream()), new PrintStream(err, true, StandardCharsets.UTF_8),
                terminal, false, new Interrupt()), false);
    }

    private String told() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
