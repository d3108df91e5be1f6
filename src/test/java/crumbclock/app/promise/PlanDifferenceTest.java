package crumbclock.app.promise;

import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.fixture.TimetableBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanDifferenceTest {

    private static final int NONE = 999;

    private static TimetableBuilder known() {
        return aTimetable().work("A/mix", 10, 30, "ada").with("mixer", 0).step("A/chill", 30, 90).onShelf("fridge", "1", 0, 0)
                .putIn("ada", 1).takeOut("ada", 1).work("A/coat", 90, 120, "ada");
    }

    private static int first(TimetableBuilder other) {
        return PlanDifference.first(known().build(), other.build(), NONE);
    }

    @Test
    void should_find_none_between_plans_that_people_see_alike() {
        Timetable otherBowl = known().changeStep("A/mix", step -> new PlacedStep(step.stepId(), step.start(), step.end(), step.work(),
                List.of(new UnitUse("mixer", 1, 10, 30)), "", "")).build();

        assertThat(first(known())).isEqualTo(NONE);
        assertThat(PlanDifference.first(known().build(), otherBowl, NONE)).isEqualTo(NONE);
    }

    @Test
    void should_begin_where_a_step_is_new_or_gone() {
        assertThat(first(known().work("B/mix", 40, 60, "ada"))).isEqualTo(40);
        assertThat(first(known().withoutStep("A/coat"))).isEqualTo(90);
    }

    @Test
    void should_begin_at_the_earlier_of_two_times() {
        assertThat(first(known().changeStep("A/coat", step -> at(step, 95, 125)))).isEqualTo(90);
        assertThat(first(known().changeStep("A/coat", step -> at(step, 70, 100)))).isEqualTo(70);
    }

    @Test
    void should_begin_at_the_start_when_somebody_else_or_another_place_takes_it() {
        assertThat(first(known().changeStep("A/coat", step -> new PlacedStep(step.stepId(), step.start(), step.end(),
                List.of(new PersonWork("bo", step.work().get(0).spans())), step.units(), "", "")))).isEqualTo(90);
        assertThat(first(known().changePlacement("A/chill", one -> new Placement(one.stepId(), one.piece(), "fridge", "2", 0, 0, false,
                one.when())))).isEqualTo(30);
    }

    @Test
    void should_begin_at_the_end_when_a_stay_only_ends_otherwise() {
        assertThat(first(known().changeStep("A/chill", step -> at(step, 30, 80)))).isEqualTo(80);
        assertThat(first(known().changeTouch("A/chill", TouchEnd.TAKE_OUT,
                touch -> new PlacedTouch(touch.stepId(), touch.at(), "bo", touch.when())))).isEqualTo(90);
    }

    private static PlacedStep at(PlacedStep step, int start, int end) {
        return new PlacedStep(step.stepId(), start, end, step.work(), step.units(), step.surfaceId(), step.cavityId());
    }
}
