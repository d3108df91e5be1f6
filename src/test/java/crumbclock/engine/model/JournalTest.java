package crumbclock.engine.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JournalTest {

    private final List<List<Integer>> undone = new ArrayList<>();
    private final Journal journal = new Journal();

    private void note(int number) {
        journal.add((code, a, b, c) -> undone.add(List.of(code, a, b, c)), number, number + 1, number + 2, number + 3);
    }

    @Test
    void should_undo_in_the_opposite_order_down_to_the_mark() {
        // given
        note(1);
        int mark = journal.mark();
        note(5);
        note(9);

        // when
        journal.undoTo(mark);

        // then
        assertThat(undone).containsExactly(List.of(9, 10, 11, 12), List.of(5, 6, 7, 8));
        assertThat(journal.mark()).isEqualTo(mark);
    }

    @Test
    void should_undo_nothing_twice_and_nothing_after_a_reset() {
        // given
        note(1);
        journal.undoTo(0);
        note(2);
        journal.reset();

        // when
        journal.undoTo(0);

        // then
        assertThat(undone).containsExactly(List.of(1, 2, 3, 4));
    }

    @Test
    void should_keep_all_entries_when_it_outgrows_its_first_size() {
        // given
        for (int number = 0; number < 1000; number++) {
            note(number);
        }

        // when
        journal.undoTo(0);

        // then
        assertThat(undone).hasSize(1000).startsWith(List.of(999, 1000, 1001, 1002)).endsWith(List.of(0, 1, 2, 3));
    }
}
