package crumbclock.app.promise;

import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.PersonEffect;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.Toll;
import crumbclock.fixture.PersonBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TollsTest {

    private static final Problem ASKED = OneMore.asked(200, 300).person(PersonBuilder.aPerson("bo").onShift(0, 600)).build();
    private static final Timetable HAVE = OneMore.have(200).timetable();

    private static Timetable with(int start, String person, int buffer, int late) {
        return aTimetable().work("A/work", start, start + 60, person).work("B/work", 300, 360, "ada")
                .made("oA", start + 60, start + 60, buffer, late).made("oB", 360, 360, -60, 60).build();
    }

    /** Just as good, a minute less of buffer, a minute late. */
    @ParameterizedTest
    @CsvSource({"0, 140, 0, NOBODY_WORSE", "1, 139, 0, ALL_ON_TIME", "141, -1, 1, ANY_PRICE"})
    void should_tell_the_price(int start, int buffer, int late, Price price) {
        assertThat(Tolls.of(ASKED, HAVE, with(start, "ada", buffer, late)).price()).isEqualTo(price);
    }

    @Test
    void should_tell_of_the_others_alone() {
        assertThat(Tolls.of(ASKED, HAVE, with(0, "ada", 140, 0)).orders()).extracting(OrderEffect::orderId).containsExactly("oA");
    }

    @Test
    void should_count_moves_and_work_by_person() {
        Toll toll = Tolls.of(ASKED, HAVE, with(30, "bo", 110, 0));

        assertThat(toll.people()).containsExactly(new PersonEffect("ada", 0, 0), new PersonEffect("bo", 1, 60));
        assertThat(toll.moved()).isEqualTo(1);
        assertThat(toll.orders().get(0).mostMoved()).isEqualTo(30);
    }

    @Test
    void should_see_an_order_that_is_given_up() {
        Timetable without = aTimetable().work("B/work", 300, 360, "ada").notPossible("oA", "no hands").made("oB", 360, 360, -60, 60).build();

        Toll toll = Tolls.of(ASKED, HAVE, without);

        assertThat(toll.dropsAny()).isTrue();
        assertThat(toll.price()).isEqualTo(Price.ANY_PRICE);
    }
}
