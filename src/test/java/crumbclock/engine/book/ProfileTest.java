package crumbclock.engine.book;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.engine.model.Journal;
import org.junit.jupiter.api.Test;

class ProfileTest {

    private final Journal journal = new Journal();
    /** Ten of something for 100 minutes, of which four are gone in [40, 50). */
    private final Profile profile = new Profile(journal, 10, gone(100, 4, 40, 50));

    private static int[] gone(int minutes, int amount, int from, int until) {
        int[] gone = Profile.none(minutes);
        java.util.Arrays.fill(gone, from, until, amount);
        return gone;
    }

    @Test
    void should_give_all_that_there_is_and_no_more() {
        profile.book(10, 20, 7);

        assertThat(profile.blockedUntil(10, 20, 3)).isEqualTo(-1);
        assertThat(profile.blockedUntil(10, 20, 4)).isEqualTo(20);
    }

    @Test
    void should_touch_uses_that_end_or_begin_there() {
        profile.book(10, 20, 10);

        assertThat(profile.blockedUntil(0, 10, 10)).isEqualTo(-1);
        assertThat(profile.blockedUntil(0, 11, 1)).isEqualTo(11);
        assertThat(profile.blockedUntil(20, 30, 10)).isEqualTo(-1);
        assertThat(profile.blockedUntil(19, 30, 1)).isEqualTo(20);
    }

    @Test
    void should_count_what_is_gone() {
        assertThat(profile.blockedUntil(30, 60, 6)).isEqualTo(-1);
        assertThat(profile.blockedUntil(30, 60, 7)).isEqualTo(50);
        assertThat(profile.nextFree(40, 7)).isEqualTo(50);
        assertThat(profile.nextFree(0, 11)).isEqualTo(100);
    }

    @Test
    void should_give_back_what_an_open_ended_use_did_not_need_and_take_it_back() {
        // given
        profile.book(10, 100, 10);
        int mark = journal.mark();
        profile.release(30, 100, 10);
        assertThat(profile.blockedUntil(30, 40, 10)).isEqualTo(-1);

        // when
        journal.undoTo(mark);

        // then
        assertThat(profile.blockedUntil(30, 40, 1)).isEqualTo(40);
    }
}
