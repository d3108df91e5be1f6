package crumbclock.domain;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Touch;
import crumbclock.domain.work.Wait;
import crumbclock.fixture.TwoCakeMonday;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A copy differs in what its name says, and in nothing else. */
class CopiesTest {

    private static final Problem PROBLEM = TwoCakeMonday.problem();
    private static final Step REST = new Step("A/chill", "chill", "A", "tier", StepKind.UNATTENDED, Optional.empty(), 30, 90,
            Optional.of(new Touch(1, "")), Optional.of(new Touch(2, "")), true, List.of(new EquipmentNeed("tray", 1, 0, "A/chill")),
            Optional.empty(), Optional.empty(), Set.of("egg"), Set.of("nut"), 15);
    private static final Step WORK = new Step("A/coat", "coat", "A", "", StepKind.HANDS_ON,
            Optional.of(new HandsOn(20, 1, "", "coating", false, false, true)), 0, 0, Optional.empty(), Optional.empty(), false, List.of(),
            Optional.empty(), Optional.empty(), Set.of(), Set.of(), 0);

    @Test
    void ofAProblem() throws ReflectiveOperationException {
        var kitchen = new Kitchen("another", List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

        differs(PROBLEM, PROBLEM.withKitchen(kitchen), Map.of("kitchen", kitchen));
        differs(PROBLEM, PROBLEM.withOrders(List.of()), Map.of("orders", List.of()));
        differs(PROBLEM, PROBLEM.withSteps(List.of(WORK)), Map.of("steps", List.of(WORK)));
        differs(PROBLEM, PROBLEM.withEachStep(step -> WORK), Map.of("steps", PROBLEM.steps().stream().map(step -> WORK).toList()));
        var wait = new Wait("A/coat", "A/chill", 3, 4);
        differs(PROBLEM, PROBLEM.withWaits(List.of(wait)), Map.of("waits", List.of(wait)));
        var cold = new ColdLimit("cold", "cream", "A", "A/coat", "A/chill", List.of(), 60);
        var life = new LifeLimit("life", "cream", "A", "A/coat", "A/chill", List.of(),
                Arrays.stream(PlaceKind.values()).collect(Collectors.toMap(kind -> kind, kind -> 90)));
        differs(PROBLEM, PROBLEM.withLimits(List.of(cold), List.of(life)), Map.of("coldLimits", List.of(cold), "lifeLimits", List.of(life)));
    }

    @Test
    void ofAStep() throws ReflectiveOperationException {
        differs(REST, REST.called("B/chill", "B"), Map.of("id", "B/chill", "ownerId", "B"));
        differs(WORK, WORK.withHandsOn(HandsOn.NOTHING), Map.of("handsOn", Optional.of(HandsOn.NOTHING)));
        differs(REST, REST.withRest(5, 7), Map.of("leastMinutes", 5, "mostMinutes", 7));
        differs(REST, REST.withEquipment(List.of()), Map.of("equipment", List.of()));
        differs(REST, REST.withContains(Set.of("milk")), Map.of("contains", Set.of("milk")));
        differs(REST, REST.withFreeFrom(Set.of("milk")), Map.of("freeFrom", Set.of("milk")));
        differs(REST, REST.withEarliest(16), Map.of("earliest", 16));
    }

    @Test
    void ofAnOutcome() throws ReflectiveOperationException {
        var late = new Outcome("A", true, 10, 20, 5, 3, List.of(), List.of());
        var why = List.of(new Outcome.Reason(Rule.R16, "nobody is there"));

        differs(late, late.explained(why, List.of("A/coat")), Map.of("reasons", why, "waitsFor", List.of("A/coat")));
    }

    private static void differs(Record original, Record copy, Map<String, Object> expected) throws ReflectiveOperationException {
        for (var part : Arrays.asList(original.getClass().getRecordComponents())) {
            Object own = part.getAccessor().invoke(original);
            assertThat(part.getAccessor().invoke(copy)).as(part.getName()).isEqualTo(expected.getOrDefault(part.getName(), own));
        }
        assertThat(copy).isNotEqualTo(original);
    }
}
