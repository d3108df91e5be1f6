package crumbclock.app.replan;

import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Deals racks and benches of one kind anew where too much would stand on one. The search lets what stands there already go on
 * wherever there is room; it stays where it is, so that something that comes later may have to go elsewhere.
 */
final class Surfaces {

    private record Use(String stepId, String surfaceId, Span when, long areaMm2, boolean known) {

        Use on(String other) {
            return new Use(stepId, other, when, areaMm2, known);
        }
    }

    private final Map<String, Surface> surfaces = new LinkedHashMap<>();
    private final List<Use> given = new ArrayList<>();

    private Surfaces(Problem problem) {
        problem.kitchen().surfaces().forEach(surface -> surfaces.put(surface.id(), surface));
    }

    /** @param known steps whose surfaces are facts */
    static List<PlacedStep> dealt(List<PlacedStep> steps, Problem problem, Set<String> known) {
        return new Surfaces(problem).dealt(uses(steps, problem, known), steps);
    }

    private static List<Use> uses(List<PlacedStep> placed, Problem problem, Set<String> known) {
        Map<String, Step> steps = new LinkedHashMap<>();
        problem.steps().forEach(step -> steps.put(step.id(), step));
        List<Use> uses = new ArrayList<>();
        for (PlacedStep step : placed) {
            if (!step.surfaceId().isEmpty() && step.end() > step.start()) {
                steps.get(step.stepId()).place().ifPresent(need -> uses.add(new Use(step.stepId(), step.surfaceId(), step.span(),
                        area(need.form()), known.contains(step.stepId()))));
            }
        }
        uses.sort(Comparator.comparing((Use use) -> !use.known()).thenComparingInt(use -> use.when().start()));
        return uses;
    }

    private static long area(Form form) {
        return (long) form.pieces() * form.footprint().boxAreaMm2();
    }

    private List<PlacedStep> dealt(List<Use> uses, List<PlacedStep> steps) {
        Map<String, String> moved = new LinkedHashMap<>();
        for (Use use : uses) {
            Use own = use.known() ? use : use.on(free(use));
            given.add(own);
            if (!own.surfaceId().equals(use.surfaceId())) {
                moved.put(use.stepId(), own.surfaceId());
            }
        }
        return steps.stream().map(step -> moved.containsKey(step.stepId()) ? new PlacedStep(step.stepId(), step.start(), step.end(),
                step.work(), step.units(), moved.get(step.stepId()), step.cavityId()) : step).toList();
    }

    /** Its own if there is room, else the first of the same kind with room; its own when none has, which the audit will tell. */
    private String free(Use use) {
        Surface own = surfaces.get(use.surfaceId());
        if (own == null || hasRoom(own, use)) {
            return use.surfaceId();
        }
        return surfaces.values().stream().filter(other -> other.kind() == own.kind() && hasRoom(other, use)).map(Surface::id).findFirst()
                .orElse(use.surfaceId());
    }

    private boolean hasRoom(Surface surface, Use use) {
        if (surface.away().stream().anyMatch(use.when()::overlaps)) {
            return false;
        }
        List<Use> there = given.stream().filter(other -> other.surfaceId().equals(surface.id()) && other.when().overlaps(use.when())).toList();
        List<Integer> moments = new ArrayList<>(List.of(use.when().start()));
        there.stream().map(other -> other.when().start()).filter(use.when()::contains).forEach(moments::add);
        return moments.stream().allMatch(minute -> use.areaMm2() + there.stream().filter(other -> other.when().contains(minute))
                .mapToLong(Use::areaMm2).sum() <= surface.areaMm2());
    }
}
