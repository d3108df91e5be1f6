package crumbclock.engine.book;

import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.engine.model.Need;
import crumbclock.fixture.PoolBuilder;
import crumbclock.fixture.ProblemBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bowls: pieces, the minutes of cleaning between two uses (R06), and full cleans (R13); in real time, both ways. */
class PoolBookTest {

    private static final int NUTS = 0;
    private static final int FREE = 1;
    private static final int PLAIN = 2;
    private static final int TWO_BOWLS = 3;

    private final Journal journal = new Journal();
    private CompiledProblem compiled;
    private PoolBook book;

    private void given(PoolBuilder pool, boolean allergens, boolean mirrored) {
        ProblemBuilder problem = aProblem().pool(pool)
                .step(handsOn("c/nuts", 10).takes("bowl", 1).contains("nuts"))
                .step(allergens ? handsOn("c/free", 10).takes("bowl", 1).freeFrom("nuts") : handsOn("c/free", 10).takes("bowl", 1))
                .step(handsOn("c/plain", 10).takes("bowl", 1))
                .step(handsOn("c/two", 10).takes("bowl", 2));
        compiled = CompiledProblem.of(problem.build(), mirrored);
        book = new PoolBook(compiled, 0, journal);
        book.reset();
    }

    private boolean isFree(int need, int from, int until) {
        int start = compiled.realStart(from, until);
        int answer = book.blockedUntil(compiled.needs[need], start, start + until - from);
        assertThat(answer).as("either free, or a later minute").matches(minute -> minute == -1 || minute > start);
        return answer < 0;
    }

    private void use(int need, int from, int until) {
        assertThat(isFree(need, from, until)).isTrue();
        int start = compiled.realStart(from, until);
        book.book(compiled.needs[need], start, start + until - from);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_keep_exactly_the_minutes_of_cleaning_between_uses(boolean mirrored) {
        given(aPool("bowl", 1).cleanedIn(5), false, mirrored);
        use(PLAIN, 100, 130);

        assertThat(isFree(NUTS, 135, 150)).isTrue();
        assertThat(isFree(NUTS, 134, 150)).isFalse();
        assertThat(isFree(NUTS, 60, 95)).isTrue();
        assertThat(isFree(NUTS, 60, 96)).isFalse();
        assertThat(book.followsPieces()).isFalse();
    }

    @Test
    void should_give_no_more_pieces_than_there_are() {
        given(aPool("bowl", 2), false, false);
        use(PLAIN, 100, 130);

        assertThat(isFree(PLAIN, 110, 120)).isTrue();
        assertThat(isFree(TWO_BOWLS, 110, 120)).isFalse();
        assertThat(isFree(TWO_BOWLS, 130, 140)).isTrue();
        Need two = compiled.needs[TWO_BOWLS];
        given(aPool("bowl", 1), false, false);
        assertThat(book.blockedUntil(two, 0, 10)).isGreaterThan(compiled.horizon);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_leave_time_for_a_full_clean_before_what_must_be_free(boolean mirrored) {
        given(aPool("bowl", 1).cleanedIn(5).fullyCleanedIn(20).fullyCleanedOf("nuts", 40), true, mirrored);
        use(NUTS, 100, 130);

        assertThat(isFree(FREE, 170, 180)).isTrue();
        assertThat(isFree(FREE, 169, 180)).isFalse();
        // the other way round the common clean is enough
        assertThat(isFree(FREE, 80, 95)).isTrue();
        assertThat(isFree(FREE, 80, 96)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_not_fill_the_gap_that_a_full_clean_needs(boolean mirrored) {
        given(aPool("bowl", 1).fullyCleanedIn(40), true, mirrored);
        use(NUTS, 100, 130);
        use(FREE, 180, 190);

        assertThat(isFree(PLAIN, 130, 140)).isTrue();
        assertThat(isFree(PLAIN, 130, 141)).isFalse();
        assertThat(isFree(PLAIN, 170, 180)).isFalse();
        assertThat(isFree(NUTS, 150, 155)).isFalse();
        assertThat(isFree(NUTS, 190, 200)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_use_another_piece_while_one_is_away(boolean mirrored) {
        given(aPool("bowl", 2).away(0, 200, 300), false, mirrored);
        use(PLAIN, 190, 310);

        assertThat(isFree(PLAIN, 150, 200)).isTrue();
        assertThat(isFree(PLAIN, 150, 201)).isFalse();
        assertThat(isFree(PLAIN, 299, 305)).isFalse();
        assertThat(isFree(PLAIN, 300, 305)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_take_back_uses_and_their_new_ends(boolean followed) {
        // given an open-ended use that turns out to end at 150
        given(followed ? aPool("bowl", 1).cleanedIn(5).away(0, 2000, 2010) : aPool("bowl", 1).cleanedIn(5), false, false);
        Need need = compiled.needs[PLAIN];
        assertThat(book.blockedUntil(need, 100, 1000)).isEqualTo(-1);
        int mark = journal.mark();
        int[] taken = book.book(need, 100, 1000);
        int shortened = journal.mark();
        book.shorten(need, taken, 100, 1000, 150);
        assertThat(isFree(PLAIN, 155, 160)).isTrue();
        assertThat(isFree(PLAIN, 154, 160)).isFalse();

        // when
        journal.undoTo(shortened);

        // then
        assertThat(isFree(PLAIN, 155, 160)).isFalse();
        journal.undoTo(mark);
        assertThat(isFree(PLAIN, 100, 1000)).isTrue();
    }
}
