package crumbclock.outside;

import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A whole plan over the night in which British clocks go on an hour: 29 March 2026, 01:00 GMT (IANA time zone data). */
class ClockChangeTest {

    private static final int EIGHT_HOURS = 8 * 60;

    private final ProblemClock clock =
            new ProblemClock(LocalDateTime.parse("2026-03-28T12:00").atZone(ZoneId.of("Europe/London")), 24 * 60);

    @Test
    void should_chill_eight_hours_while_the_wall_clock_goes_on_nine() {
        var plan = Searched.of(overnight(EIGHT_HOURS), 1, 200).assertSound();
        var chilled = plan.step("cake/chill");

        assertThat(chilled.end() - chilled.start()).isEqualTo(EIGHT_HOURS);
        assertThat(clock.at(chilled.start()).toLocalDateTime()).isEqualTo("2026-03-28T22:00");
        assertThat(clock.at(chilled.end()).toLocalDateTime()).isEqualTo("2026-03-29T07:00");
        assertThat(Duration.between(clock.at(chilled.start()).toLocalDateTime(), clock.at(chilled.end()).toLocalDateTime()))
                .isEqualTo(Duration.ofHours(9));
        assertThat(clock.at(plan.start("cake/coat")).toLocalDateTime()).isEqualTo("2026-03-29T07:00");
    }

    /** With nine hours by the wall the coating would begin at 07:00 just the same; with nine elapsed it must not. */
    @Test
    void should_not_take_nine_hours_by_the_wall_for_nine_hours() {
        var plan = Searched.of(overnight(9 * 60), 1, 200).assertSound();

        assertThat(clock.at(plan.start("cake/coat")).toLocalDateTime()).isEqualTo("2026-03-29T08:00");
    }

    /** Filled from 21:30 to 22:00, chilled, coated as soon as somebody is there from 07:00 on. */
    private Problem overnight(int chillMinutes) {
        Span evening = new Span(minute("2026-03-28T21:30"), minute("2026-03-28T22:00"));
        Span morning = new Span(minute("2026-03-29T07:00"), minute("2026-03-29T11:00"));
        var baker = new Person("baker", "baker", List.of(evening, morning), List.of(), Set.of(), Map.of(), 1440);
        var kitchen = new Kitchen("kitchen", List.of(baker), List.of(), List.of(), List.of(), List.of(),
                List.of(new Span(0, clock.horizonMinutes())));
        var cake = new Cake("cake", "order", "cake", 10, "", Set.of(), Set.of(), "cake/coat", List.of());
        var order = new Order("order", "order", List.of(cake),
                new HandOver(HandOverWay.SET_ASIDE, "", 0, 0, minute("2026-03-29T10:00")), 1, 0);
        var doneEarly = new Weights(100, 0, Weights.DEFAULT.notPossible(), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 0, 1440, 0, 0);
        return new Problem("clock change", clock, kitchen, List.of(order), List.of(),
                List.of(handsOn("cake/fill", 30).build(), resting("cake/chill", chillMinutes, chillMinutes).build(),
                        handsOn("cake/coat", 60).build()),
                List.of(new Wait("cake/fill", "cake/chill", 0, 0), new Wait("cake/chill", "cake/coat", 0, Wait.NO_MOST)),
                List.of(), List.of(), List.of(), List.of(), doneEarly);
    }

    private int minute(String local) {
        return clock.minuteOf(LocalDateTime.parse(local).atZone(clock.zone()));
    }
}
