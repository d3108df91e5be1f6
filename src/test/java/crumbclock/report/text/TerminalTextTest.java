package crumbclock.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TerminalTextTest {

    @Test
    void aTextStaysOneLineAndMovesNoCursor() {
        assertThat(TerminalText.line("Ann's\r\ncake \u001b[31m \t")).isEqualTo("Ann's cake  [31m");
    }

    @Test
    void aCellLeavesABlankBeforeTheNext() {
        assertThat(TerminalText.padded("1234", 6)).isEqualTo("1234  ");
        assertThat(TerminalText.padded("12345", 6)).isEqualTo("12345 ");
        assertThat(TerminalText.padded("123456", 6)).isEqualTo("1234… ");
    }
}
