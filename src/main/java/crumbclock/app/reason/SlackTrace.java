package crumbclock.app.reason;

import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Wait;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What an order's time hangs on: from its hand-over back to the step before that it could not begin without, be it by a
 * wait, a person, a piece of equipment or an oven, and so on until there is slack.
 */
public final class SlackTrace {

    private static final int MOST_STEPS = 6;

    private final Problem problem;
    private final Timetable timetable;
    private final Map<String, Step> steps = new HashMap<>();
    private final Map<String, PlacedStep> placed = new HashMap<>();
    private final Map<String, List<Wait>> waitsTo = new HashMap<>();

    public SlackTrace(Problem problem, Timetable timetable) {
        this.problem = problem;
        this.timetable = timetable;
        problem.steps().forEach(step -> steps.put(step.id(), step));
        timetable.steps().forEach(step -> placed.put(step.stepId(), step));
        problem.waits().forEach(wait -> waitsTo.computeIfAbsent(wait.toStepId(), id -> new ArrayList<>()).add(wait));
    }

    /**
     * Ids of the last few steps without slack, from first to last; they may belong to other orders. Empty when the
     * order is not in the timetable.
     */
    public List<String> stepsWithoutSlack(String orderId) {
        Order order = problem.orders().stream().filter(one -> one.id().equals(orderId)).findFirst().orElseThrow();
        Set<String> chain = new LinkedHashSet<>();
        Optional<PlacedStep> at = last(order);
        while (at.isPresent() && chain.size() < MOST_STEPS && chain.add(at.get().stepId())) {
            at = heldUpBy(at.get());
        }
        List<String> ids = new ArrayList<>(chain);
        Collections.reverse(ids);
        return List.copyOf(ids);
    }

    private Optional<PlacedStep> last(Order order) {
        Stream<String> ids = order.handOver().stepId().isEmpty() ? order.cakes().stream().map(Cake::finishStepId)
                : Stream.of(order.handOver().stepId());
        return ids.filter(placed::containsKey).map(placed::get).max(Comparator.comparingInt(PlacedStep::end));
    }

    private Optional<PlacedStep> heldUpBy(PlacedStep step) {
        return byWait(step).or(() -> byPerson(step)).or(() -> byPiece(step)).or(() -> byOven(step));
    }

    /** The step before whose end and least wait leave no minute; one that was only kept for longer has slack itself. */
    private Optional<PlacedStep> byWait(PlacedStep step) {
        return waitsTo.getOrDefault(step.stepId(), List.of()).stream()
                .filter(wait -> placed.containsKey(wait.fromStepId()))
                .filter(wait -> placed.get(wait.fromStepId()).end() + wait.leastMinutes() == step.start())
                .map(wait -> placed.get(wait.fromStepId())).filter(before -> !isElastic(before))
                .max(Comparator.comparingInt(PlacedStep::start).thenComparing(PlacedStep::stepId));
    }

    private boolean isElastic(PlacedStep before) {
        Step step = steps.get(before.stepId());
        return step.kind() == StepKind.UNATTENDED && before.span().minutes()
                > step.putInMinutes() + step.leastMinutes() + step.takeOutMinutes();
    }

    /** What the step's people did right up to its start. */
    private Optional<PlacedStep> byPerson(PlacedStep step) {
        Stream<String> people = Stream.concat(step.work().stream().map(PersonWork::personId),
                timetable.touches().stream().filter(touch -> touch.stepId().equals(step.stepId())
                        && touch.when().start() == step.start()).map(PlacedTouch::personId));
        Set<String> ids = new LinkedHashSet<>(people.toList());
        return before(step).filter(other -> other.work().stream().anyMatch(work -> ids.contains(work.personId())
                && work.spans().stream().anyMatch(span -> span.end() == step.start()))).findFirst();
    }

    private Optional<PlacedStep> byPiece(PlacedStep step) {
        return before(step).filter(other -> other.units().stream()
                .anyMatch(use -> step.units().stream().anyMatch(own -> follows(use, own)))).findFirst();
    }

    private boolean follows(UnitUse use, UnitUse own) {
        int cleaning = problem.kitchen().pools().stream().filter(pool -> pool.id().equals(own.poolId()))
                .mapToInt(pool -> pool.cleanMinutes()).findFirst().orElse(0);
        return use.poolId().equals(own.poolId()) && use.unit() == own.unit()
                && use.until() <= own.from() && use.until() + cleaning >= own.from();
    }

    private Optional<PlacedStep> byOven(PlacedStep step) {
        return step.cavityId().isEmpty() ? Optional.empty() : before(step)
                .filter(other -> other.cavityId().equals(step.cavityId()) && other.end() == step.start()).findFirst();
    }

    /** Steps that end no later than this one starts, the latest first. */
    private Stream<PlacedStep> before(PlacedStep step) {
        return timetable.steps().stream().filter(other -> other.end() <= step.start() && other != step)
                .sorted(Comparator.comparingInt(PlacedStep::end).reversed().thenComparing(PlacedStep::stepId));
    }
}
