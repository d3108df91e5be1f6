package crumbclock.app.replan;

import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tells what was broken by what happened from what a plan breaks. */
final class Facts {

    /** Rules that may be broken by an oven that is on, and not by a single step. */
    private static final Set<Rule> OVEN_RULES = EnumSet.of(Rule.R05, Rule.R07, Rule.R08);

    private final int now;
    private final Map<String, Happened> happened;
    private final List<Wait> broken;
    private final Timetable timetable;
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Set<Wait> mended;
    private final Set<String> mendedRests;

    Facts(Problem problem, int now, Map<String, Happened> happened, List<Wait> broken, Timetable timetable) {
        this.now = now;
        this.happened = happened;
        this.broken = broken;
        this.timetable = timetable;
        problem.steps().forEach(step -> steps.put(step.id(), step));
        mended = Repairs.mended(problem);
        mendedRests = Repairs.mendedRests(problem);
    }

    /** Whether no plan from now on could have avoided it. */
    boolean caused(Finding finding) {
        List<String> concerned = finding.items().stream().filter(steps::containsKey).toList();
        if (concerned.isEmpty()) {
            return finding.when().end() <= now && finding.rule() != Rule.R16 && finding.rule() != Rule.R17
                    || OVEN_RULES.contains(finding.rule()) && isOfRunningBakes(finding);
        }
        boolean allHappened = concerned.stream().allMatch(happened::containsKey);
        boolean stays = concerned.stream().anyMatch(id -> happened.containsKey(id) && happened.get(id).open());
        if (allHappened && (!stays || finding.when().end() <= now)) {
            return true;
        }
        if (finding.rule() == Rule.R02) {
            return allHappened && (isTooLong(concerned) || isRepaired(concerned)) || isOf(broken, finding) || isOf(mended, finding);
        }
        return finding.rule() == Rule.R03 && allHappened;
    }

    private static boolean isOf(Collection<Wait> waits, Finding finding) {
        return waits.stream().anyMatch(wait -> finding.items().equals(List.of(wait.fromStepId(), wait.toStepId())));
    }

    /** A stay that a repair follows. */
    private boolean isRepaired(List<String> ids) {
        return mendedRests.containsAll(ids);
    }

    /** The oven is on for what is in it already, and for nothing else. */
    private boolean isOfRunningBakes(Finding finding) {
        List<String> inIt = timetable.steps().stream().filter(step -> step.cavityId().equals(finding.place())
                && step.span().overlaps(finding.when())).map(PlacedStep::stepId).toList();
        return !inIt.isEmpty() && inIt.stream().allMatch(happened::containsKey);
    }

    /** A stay that was too long already. */
    private boolean isTooLong(List<String> ids) {
        return ids.stream().allMatch(id -> {
            Step step = steps.get(id);
            Happened so = happened.get(id);
            return (long) now - so.start() - step.putInMinutes() > step.mostMinutes();
        });
    }
}
