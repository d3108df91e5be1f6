package crumbclock.report.compare;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.compare.Cell;
import crumbclock.domain.compare.Mark;
import java.util.Collections;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonTableTest {

    private static List<Cell> cells(long... values) {
        return LongStream.of(values).mapToObj(value -> Cell.of(value, "")).toList();
    }

    private static List<Boolean> all(int count) {
        return Collections.nCopies(count, true);
    }

    /** Just within the spread of chance, and just beyond it. */
    @ParameterizedTest
    @CsvSource({"10, NONE", "9, BEST"})
    void best_and_worst_lie_further_apart_than_chance(long spread, Mark expected) {
        var marked = ComparisonTable.marked(cells(20, 10, 15), all(3), true, spread);

        assertThat(marked.get(1).mark()).isEqualTo(expected);
        assertThat(marked.get(0).mark()).isEqualTo(expected == Mark.NONE ? Mark.NONE : Mark.WORST);
        assertThat(marked.get(2).mark()).isEqualTo(Mark.NONE);
    }

    @Test
    void where_more_is_better_the_most_is_best() {
        assertThat(ComparisonTable.marked(cells(20, 10, 15), all(3), false, 0)).extracting(Cell::mark)
                .containsExactly(Mark.BEST, Mark.WORST, Mark.NONE);
    }

    @Test
    void what_most_plans_have_is_neither() {
        assertThat(ComparisonTable.marked(cells(5, 5, 5, 9), all(4), true, 0)).extracting(Cell::mark)
                .containsExactly(Mark.NONE, Mark.NONE, Mark.NONE, Mark.WORST);
        assertThat(ComparisonTable.marked(cells(5, 5, 9, 9), all(4), true, 0)).extracting(Cell::mark)
                .containsExactly(Mark.BEST, Mark.BEST, Mark.WORST, Mark.WORST);
    }

    /** A difference of nothing is no difference; one at the border is within chance. */
    @Test
    void a_value_is_within_chance_of_the_base_up_to_the_spread() {
        assertThat(ComparisonTable.marked(cells(100, 100, 110, 111, 90), all(5), true, 10)).extracting(Cell::withinChance)
                .containsExactly(false, false, true, false, true);
        assertThat(ComparisonTable.marked(cells(100, 101), all(2), true, 0)).extracting(Cell::withinChance).containsExactly(false, false);
    }

    @Test
    void plans_that_leave_something_out_are_not_judged() {
        assertThat(ComparisonTable.marked(cells(20, 1, 30), List.of(true, false, true), true, 0)).extracting(Cell::mark)
                .containsExactly(Mark.BEST, Mark.NONE, Mark.WORST);
    }

    @Test
    void missing_values_stay_missing() {
        var marked = ComparisonTable.marked(List.of(Cell.none(), Cell.of(3, ""), Cell.of(4, "")), all(3), true, 0);

        assertThat(marked).extracting(Cell::mark).containsExactly(Mark.NONE, Mark.BEST, Mark.WORST);
        assertThat(marked).extracting(Cell::withinChance).containsExactly(false, false, false);
        assertThat(marked.get(0)).isEqualTo(Cell.none());
    }
}
