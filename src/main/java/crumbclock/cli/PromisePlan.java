package crumbclock.cli;

import crumbclock.app.promise.PlanInHand;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.issue.IssueLog;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plan.json given to `promise`: made for the problem with its changes, or for the problem as it stands in its file.
 *
 * @param before  the problem that it was made for
 * @param problem the problem without the new order and with all changes
 */
record PromisePlan(KnownPlan known, Problem before, Problem problem) {

    /** @throws BadInput when it can be read for neither, or is sound for neither */
    static PromisePlan read(Path file, PromiseInputs inputs) {
        Problem base = inputs.base().problem();
        Optional<Problem> plain = inputs.unchanged();
        Optional<KnownPlan> fitting = KnownPlan.read(file, base, new IssueLog());
        List<Finding> broken = fitting.map(plan -> broken(plan, base)).orElse(List.of());
        if (fitting.isPresent() && broken.isEmpty()) {
            return new PromisePlan(fitting.get(), base, base);
        }
        Optional<PromisePlan> older = plain.flatMap(before -> KnownPlan.read(file, before, new IssueLog())
                .filter(plan -> broken(plan, before).isEmpty()).map(plan -> new PromisePlan(plan, before, base)));
        if (older.isPresent()) {
            return older.get();
        }
        if (fitting.isEmpty()) {
            Inputs.known(file, base);
        }
        throw new BadInput("--plan " + file + ": breaks " + broken.size() + (broken.size() == 1 ? " rule" : " rules")
                + " of this problem, the first: " + broken.get(0).message() + "; expected a sound plan of it"
                + (plain.isPresent() ? ", with or without the changes" : "") + ". See `crumbclock audit`.");
    }

    private static List<Finding> broken(KnownPlan plan, Problem base) {
        return PlanInHand.broken(base, plan.plan(), plan.state());
    }

    /** Before this minute nothing can be asked: the plan knows already how the day went. */
    int now() {
        return known.state().now();
    }

    /** Changed as little as it must where it was made without the changes; empty when no sound way was found. */
    Optional<PlanInHand> inHand(int now, SearchLimits limits, SearchListener listener) {
        return isFitting() ? Optional.of(PlanInHand.fitting(problem, known.plan(), known.state()))
                : PlanInHand.changed(before, problem, known.plan(), known.state(), now, limits, listener);
    }

    private boolean isFitting() {
        return before == problem;
    }

    /** What people have to be told of a plan that was changed first; nothing otherwise. */
    Optional<String> news(PlanInHand changed) {
        if (isFitting()) {
            return Optional.empty();
        }
        Map<String, PlacedStep> then = new LinkedHashMap<>();
        known.plan().timetable().steps().forEach(step -> then.put(step.stepId(), step));
        long moved = changed.plan().timetable().steps().stream().filter(step -> then.containsKey(step.stepId())
                && then.get(step.stepId()).start() != step.start()).count();
        return Optional.of("The plan was made without the changes; with them " + (moved == 0 ? "no step of it moves." : moved == 1 ? "one step of it moves."
                : moved + " steps of it move.") + " What the order costs is told against known/plan.html.");
    }
}
