package crumbclock.engine.book;

import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.fixture.Dice;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ann works from 60 to 200 with a break from 100 to 110, Bob from 100 to 160, and again on the next day; Cleo works
 * 30 minutes a day at the most, from 23:50 to 00:40.
 */
class PeopleBookTest {

    private static final int ANN = 0;
    private static final int BOB = 1;
    private static final int CLEO = 2;
    private static final int HORIZON = 2880;

    private final CompiledProblem compiled = CompiledProblem.of(aProblem()
            .person(aPerson("ann").onShift(60, 200).onBreak(100, 110))
            .person(aPerson("bob").onShift(100, 160).onShift(1500, 1600))
            .person(aPerson("cleo").onShift(1430, 1480).atMostADay(30)).build(), false);
    private final Journal journal = new Journal();
    private final PeopleBook book = new PeopleBook(compiled, journal);
    private final IntList spans = new IntList();

    @BeforeEach
    void start() {
        book.reset();
    }

    private List<Integer> loose(int person, int from, int minutes) {
        assertThat(book.findLoose(person, from, minutes, HORIZON, spans)).isTrue();
        List<Integer> list = new ArrayList<>();
        for (int index = 0; index < spans.size(); index++) {
            list.add(spans.get(index));
        }
        return list;
    }

    @Test
    void should_fit_solid_work_between_shift_and_break_to_the_minute() {
        assertThat(book.findSolid(ANN, 0, 40, HORIZON)).isEqualTo(60);
        assertThat(book.findSolid(ANN, 0, 41, HORIZON)).isEqualTo(110);
        assertThat(book.findSolid(ANN, 0, 90, HORIZON)).isEqualTo(110);
        assertThat(book.findSolid(ANN, 0, 91, HORIZON)).isEqualTo(-1);
        assertThat(book.findSolid(ANN, 0, 40, 100)).isEqualTo(60);
        assertThat(book.findSolid(ANN, 0, 40, 99)).isEqualTo(-1);
    }

    @Test
    void should_carry_loose_work_over_breaks_and_nights() {
        assertThat(loose(ANN, 0, 41)).containsExactly(60, 100, 110, 111);
        assertThat(loose(BOB, 0, 61)).containsExactly(100, 160, 1500, 1501);
        assertThat(book.findLoose(ANN, 0, 131, HORIZON, spans)).isFalse();
    }

    @Test
    void should_find_the_minutes_that_two_share() {
        assertThat(book.findTogether(new int[] {ANN, BOB}, 2, 0, 50, HORIZON)).isEqualTo(110);
        assertThat(book.findTogether(new int[] {ANN, BOB}, 2, 0, 51, HORIZON)).isEqualTo(-1);
    }

    @Test
    void should_let_touches_fall_into_loose_work_alone() {
        // given
        book.bookWork(ANN, 60, 80, true);
        book.bookWork(ANN, 80, 100, false);

        // then
        assertThat(book.findTouch(ANN, 0, 2, HORIZON)).isEqualTo(80);
        assertThat(book.canTouch(ANN, 79, 2)).isFalse();
        assertThat(book.canTouch(ANN, 98, 2)).isTrue();
        assertThat(book.canTouch(ANN, 99, 2)).isFalse();
        assertThat(book.findLastTouch(ANN, 0, 2, 109)).isEqualTo(98);
        assertThat(book.findLastTouch(ANN, 0, 2, 110)).isEqualTo(110);
    }

    @Test
    void should_never_touch_twice_at_once_and_keep_touches_clear_of_solid_work() {
        // given
        book.bookTouch(ANN, 70, 72);

        // then
        assertThat(book.canTouch(ANN, 68, 2)).isTrue();
        assertThat(book.canTouch(ANN, 69, 2)).isFalse();
        assertThat(book.canTouch(ANN, 71, 2)).isFalse();
        assertThat(book.findSolid(ANN, 60, 11, HORIZON)).isEqualTo(72);
        assertThat(loose(ANN, 60, 20)).containsExactly(60, 80);
    }

    @Test
    void should_count_the_most_minutes_day_by_day() {
        // Cleo's shift is [1430, 1480), and the next day begins at 1440
        assertThat(book.findSolid(CLEO, 0, 40, HORIZON)).isEqualTo(1430);
        assertThat(book.findSolid(CLEO, 0, 41, HORIZON)).isEqualTo(-1);
        assertThat(loose(CLEO, 0, 40)).containsExactly(1430, 1470);

        book.bookWork(CLEO, 1450, 1451, true);
        assertThat(book.findSolid(CLEO, 1440, 29, HORIZON)).isEqualTo(1451);
        assertThat(book.findSolid(CLEO, 1440, 30, HORIZON)).isEqualTo(-1);
        book.bookTouch(CLEO, 1452, 1480);
        assertThat(book.canTouch(CLEO, 1451, 1)).isTrue();
        book.bookTouch(CLEO, 1451, 1452);
        assertThat(book.findTouch(CLEO, 1440, 1, HORIZON)).isEqualTo(-1);
        assertThat(book.findTouch(CLEO, 1430, 1, HORIZON)).isEqualTo(1430);
    }

    /** Everything that was booked later is gone without a trace: the answers are those of a book that never had it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void should_be_as_before_when_bookings_are_taken_back(long seed) {
        // given the same bookings in two books, and some more in one of them
        PeopleBook fresh = new PeopleBook(compiled, new Journal());
        fresh.reset();
        Dice dice = new Dice(seed);
        bookSome(dice, List.of(book, fresh));
        int mark = journal.mark();
        bookSome(dice, List.of(book));

        // when
        journal.undoTo(mark);

        // then
        for (int person = 0; person < 3; person++) {
            for (int minute = 0; minute < 1700; minute++) {
                String at = "seed " + seed + ", person " + person + ", minute " + minute;
                assertThat(book.findSolid(person, minute, 7, HORIZON)).as(at).isEqualTo(fresh.findSolid(person, minute, 7, HORIZON));
                assertThat(book.findSolid(person, minute, 1, HORIZON)).as(at).isEqualTo(fresh.findSolid(person, minute, 1, HORIZON));
                assertThat(book.findTouch(person, minute, 1, HORIZON)).as(at).isEqualTo(fresh.findTouch(person, minute, 1, HORIZON));
                assertThat(book.findLoose(person, minute, 9, HORIZON, spans)).as(at)
                        .isEqualTo(fresh.findLoose(person, minute, 9, HORIZON, new IntList()));
            }
        }
    }

    private void bookSome(Dice dice, List<PeopleBook> books) {
        PeopleBook first = books.get(0);
        for (int booking = 0; booking < 12; booking++) {
            int person = dice.upTo(3);
            int from = dice.oneOf(List.of(0, 60, 120, 1430, 1500));
            int minutes = dice.between(1, 9);
            int kind = dice.upTo(3);
            if (kind == 0) {
                int start = first.findSolid(person, from, minutes, HORIZON);
                books.forEach(each -> bookIf(start >= 0, () -> each.bookWork(person, start, start + minutes, true)));
            } else if (kind == 1) {
                int start = first.findTouch(person, from, minutes, HORIZON);
                books.forEach(each -> bookIf(start >= 0, () -> each.bookTouch(person, start, start + minutes)));
            } else if (first.findLoose(person, from, minutes, HORIZON, spans)) {
                for (PeopleBook each : books) {
                    for (int span = 0; span < spans.size(); span += 2) {
                        each.bookWork(person, spans.get(span), spans.get(span + 1), false);
                    }
                }
            }
        }
    }

    private static void bookIf(boolean found, Runnable booking) {
        if (found) {
            booking.run();
        }
    }
}
