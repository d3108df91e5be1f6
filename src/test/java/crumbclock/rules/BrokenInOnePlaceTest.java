package crumbclock.rules;

import static crumbclock.fixture.PlanAssert.assertThat;
import static crumbclock.fixture.TimetableBuilder.copyOf;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.fixture.TimetableBuilder;
import crumbclock.fixture.TwoCakeMonday;
import crumbclock.units.Span;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A whole sound plan, then the same plan broken in one place for each rule. */
class BrokenInOnePlaceTest {

    /** One break each, with a few words of the finding. */
    private enum Break {
        R01_COATED_BEFORE_COOL(Rule.R01, "B1/coat starts -5 min after the end of B1/cool",
                plan -> plan.changeStep("B1/coat", step -> moved(step, 685, 725))),
        R02_WAITED_TOO_LONG(Rule.R02, "at most 10",
                plan -> plan.changeStep("B1/chill", step -> moved(step, 745, 830))
                        .changeTouch("B1/chill", TouchEnd.PUT_IN, touch -> at(touch, 745, 747))
                        .changePlacement("B1/chill", place -> during(place, 745, 830))),
        R03_BOXING_ON_THE_ROAD(Rule.R03, "ana works on A/deliver and B1/box at once",
                plan -> plan.changeStep("B1/box", step -> worked(step, "ana"))),
        R04_NOBODY_TAKES_OUT(Rule.R04, "B1/chill needs a taking-out touch",
                plan -> plan.withoutTouch("B1/chill", TouchEnd.TAKE_OUT)),
        R05_OVEN_ON_WITH_NOBODY_THERE(Rule.R05, "nobody is in the kitchen",
                plan -> plan.changeRuns(run -> new OvenRun("deck", 180, 490, 510, 1030))),
        R06_A_SECOND_BOWL(Rule.R06, "piece 1 of bowl",
                plan -> plan.changeStep("B1/mix", step -> holding(step, new UnitUse("bowl", 1, 540, 570)))),
        R07_PAN_OVER_THE_EDGE(Rule.R07, "deck, rack 1",
                plan -> plan.changePans("B1/bake", pan -> new PanPlace("B1/bake", 0, "deck", 0, 381, 20, false))),
        R08_NOT_HOT_YET(Rule.R08, "19 min to heat up",
                plan -> plan.changeRuns(run -> new OvenRun("deck", 180, 491, 510, 640))),
        R09_DOOR_OPENED(Rule.R09, "A1/bake-small goes in or out while the door must stay shut for A1/bake",
                plan -> plan.changeStep("A1/bake-small", step -> moved(step, 517, 567))
                        .changeTouch("A1/bake-small", TouchEnd.PUT_IN, touch -> at(touch, 517, 522))
                        .changeTouch("A1/bake-small", TouchEnd.TAKE_OUT, touch -> at(touch, 562, 567))),
        R10_CAKE_AGAINST_LUNCH(Rule.R10, "lunch and A1/chill are less than 10 mm apart",
                plan -> plan.changePlacement("A1/chill", place -> on(place, "fridge", "low", 220, 220))),
        R11_IN_THE_CUPBOARD(Rule.R11, "cupboard",
                plan -> plan.changePlacement("B1/chill", place -> on(place, "cupboard", "board", 10, 10))),
        R12_OUT_OF_THE_COLD(Rule.R12, "out of the cold for 100 min; 30 are allowed",
                plan -> plan.changePlacement("A1/chill", place -> on(place, "cellar", "board", 10, 10))),
        R13_NUTS_IN_THE_BOWL(Rule.R13, "bowl held [nuts]", TimetableBuilder::withoutCleanings),
        R13_NUTS_ON_THE_SHELF(Rule.R13, "stands open beside A1/chill",
                plan -> plan.changePlacement("B1/chill", place -> on(place, "fridge", "low", 300, 10))),
        R14_BEFORE_OPENING(Rule.R14, "ben works on X/whip while the kitchen is shut",
                plan -> plan.changeStep("X/whip", step -> moved(step, 470, 490))),
        R15_OTHER_THAN_RECORDED(Rule.R15, "B1/cool is not in the timetable as it was recorded",
                plan -> plan.changeStep("B1/cool", step -> moved(step, 625, 689))),
        R16_WRONG_BUFFER_TOLD(Rule.R16, "order B is told as",
                plan -> plan.changeOutcome("B",
                        told -> new Outcome("B", true, 840, 850, 11, 0, List.of(), List.of()))),
        R17_STEP_FORGOTTEN(Rule.R17, "X/whip is not placed", plan -> plan.withoutStep("X/whip")),
        R17_ORDER_DROPPED(Rule.R17, "nothing is told of what becomes of order A", plan -> plan.withoutOutcome("A"));

        private final Rule rule;
        private final String words;
        private final UnaryOperator<TimetableBuilder> change;

        Break(Rule rule, String words, UnaryOperator<TimetableBuilder> change) {
            this.rule = rule;
            this.words = words;
            this.change = change;
        }
    }

    @Test
    void should_find_nothing_in_a_sound_plan() {
        assertThat(TwoCakeMonday.problem(), TwoCakeMonday.timetable()).isSound();
    }

    @ParameterizedTest
    @EnumSource(Break.class)
    void should_find_exactly_the_rule_that_is_broken(Break broken) {
        var timetable = broken.change.apply(copyOf(TwoCakeMonday.timetable())).build();

        assertThat(TwoCakeMonday.problem(), timetable).breaksOnly(broken.rule).saying(broken.words);
    }

    @Test
    void should_break_each_rule_once() {
        assertThat(Arrays.stream(Break.values()).map(broken -> broken.rule)).contains(Rule.values());
    }

    private static PlacedStep moved(PlacedStep step, int start, int end) {
        var work = step.work().stream().map(one -> new PersonWork(one.personId(), List.of(new Span(start, end)))).toList();
        return new PlacedStep(step.stepId(), start, end, work, step.units(), step.surfaceId(), step.cavityId());
    }

    private static PlacedStep worked(PlacedStep step, String personId) {
        return new PlacedStep(step.stepId(), step.start(), step.end(),
                List.of(new PersonWork(personId, List.of(step.span()))), step.units(), step.surfaceId(), step.cavityId());
    }

    private static PlacedStep holding(PlacedStep step, UnitUse use) {
        return new PlacedStep(step.stepId(), step.start(), step.end(), step.work(), List.of(use), step.surfaceId(),
                step.cavityId());
    }

    private static PlacedTouch at(PlacedTouch touch, int from, int until) {
        return new PlacedTouch(touch.stepId(), touch.at(), touch.personId(), new Span(from, until));
    }

    private static Placement during(Placement place, int from, int until) {
        return new Placement(place.stepId(), place.piece(), place.storeId(), place.shelfId(), place.xMm(), place.yMm(),
                place.turned(), new Span(from, until));
    }

    private static Placement on(Placement place, String storeId, String shelfId, int xMm, int yMm) {
        return new Placement(place.stepId(), place.piece(), storeId, shelfId, xMm, yMm, place.turned(), place.when());
    }
}
