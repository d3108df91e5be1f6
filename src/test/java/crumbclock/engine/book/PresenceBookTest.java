package crumbclock.engine.book;

import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import org.junit.jupiter.api.Test;

/** Ann is in from 100 to 200, Bob from 150 to 300; breaks do not make anybody leave. */
class PresenceBookTest {

    private static final int ANN = 0;
    private static final int BOB = 1;

    private final Journal journal = new Journal();
    private final PresenceBook book = new PresenceBook(CompiledProblem.of(aProblem()
            .person(aPerson("ann").onShift(100, 200).onBreak(110, 120)).person(aPerson("bob").onShift(150, 300)).build(), false),
            journal);

    private int mayLeave(int from, int until, int... people) {
        return book.neededUntil(people, people.length, from, until);
    }

    @Test
    void should_find_somebody_from_the_first_minute_of_a_shift_to_the_last() {
        assertThat(book.nobodyUntil(100, 300)).isEqualTo(-1);
        assertThat(book.nobodyUntil(99, 300)).isEqualTo(100);
        assertThat(book.nobodyUntil(100, 301)).isEqualTo(301);
    }

    @Test
    void should_not_find_who_has_left() {
        // given
        int mark = journal.mark();
        book.leave(BOB, 220, 240);
        book.leave(ANN, 160, 180);

        // then
        assertThat(book.nobodyUntil(200, 220)).isEqualTo(-1);
        assertThat(book.nobodyUntil(200, 221)).isEqualTo(221);
        assertThat(book.nobodyUntil(150, 200)).isEqualTo(-1);
        journal.undoTo(mark);
        assertThat(book.nobodyUntil(100, 300)).isEqualTo(-1);
    }

    @Test
    void should_keep_the_last_one_where_somebody_is_needed() {
        // given
        book.need(140, 160);

        // then
        assertThat(mayLeave(130, 140, ANN)).isEqualTo(-1);
        assertThat(mayLeave(130, 141, ANN)).isEqualTo(141);
        assertThat(mayLeave(150, 160, ANN)).isEqualTo(-1);
        assertThat(mayLeave(149, 160, ANN)).isEqualTo(150);
        assertThat(mayLeave(160, 300, ANN, BOB)).isEqualTo(-1);
    }

    @Test
    void should_not_let_two_leave_together_where_one_is_needed() {
        // given
        book.need(160, 170);

        // then
        assertThat(mayLeave(155, 180, ANN)).isEqualTo(-1);
        assertThat(mayLeave(155, 180, BOB)).isEqualTo(-1);
        assertThat(mayLeave(155, 180, ANN, BOB)).isEqualTo(170);
    }

    @Test
    void should_forget_a_need_that_is_no_longer_there() {
        // given
        book.need(110, 130);
        int mark = journal.mark();
        book.noLongerNeed(110, 130);
        assertThat(mayLeave(110, 130, ANN)).isEqualTo(-1);

        // when
        journal.undoTo(mark);

        // then
        assertThat(mayLeave(110, 130, ANN)).isEqualTo(130);
    }
}
