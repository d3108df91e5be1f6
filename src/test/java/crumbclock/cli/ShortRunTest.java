package crumbclock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortRunTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "replan problems/p.json --plan plan.json | true",
        "plan problems/p.json --seconds 5 | true",
        "plan problems/p.json --seconds=8 --quiet | true",
        "plan problems/p.json --out replan | false",
        "check replan/p.json | false",
        "compare problems/p.json --seconds 5 | false",
        "plan problems/p.json --seconds 9 | false",
        "plan problems/p.json --seconds 50 | false",
        "plan problems/p.json --steps 5 | false",
        "plan problems/p.json --seconds | false",
        "plan | false"})
    void should_know_a_run_of_a_few_seconds_by_its_command_line(String line, boolean isShort) {
        assertThat(ShortRun.isAskedFor(line.split(" "))).isEqualTo(isShort);
    }
}
