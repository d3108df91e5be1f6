package crumbclock.formats.plan;

import crumbclock.domain.plan.Cleaning;
import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.LowerBound.OrderBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.JsonLoader.Loaded;
import crumbclock.formats.json.Spot;
import crumbclock.formats.plan.PlanFile.BoundEntry;
import crumbclock.formats.plan.PlanFile.FindingEntry;
import crumbclock.formats.plan.PlanFile.OutcomeEntry;
import crumbclock.formats.plan.PlanFile.OvenRunEntry;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A plan file to a plan. Only what cannot be a plan of this problem at all is an issue (unknown ids, an end before its start);
 * whether it is sound is the audit's business, so that a plan changed by hand can be audited.
 */
final class PlanReader {

    private final Problem problem;
    private final IssueLog log;
    private final PlanReferences references;
    private final StepConverter converter;

    PlanReader(Problem problem, IssueLog log) {
        this.problem = problem;
        this.log = log;
        this.references = new PlanReferences(problem, log);
        this.converter = new StepConverter(references);
    }

    Plan read(Loaded<PlanFile> loaded) {
        var file = loaded.value();
        var root = loaded.spot();
        if (!file.problem().equals(problem.title())) {
            root.child("problem").fault(log, Spot.quote(problem.title()) + ", the title of the problem it is read for",
                    "Name the problem file that the plan was made for, and its changes.");
        }
        var cost = file.cost().stream()
                .map(line -> new CostLine(line.name(), line.title(), line.medium(), line.points(), line.matches())).toList();
        return new Plan(file.problem(), timetable(root, file), Each.of(root.child("findings"), file.findings(), this::finding), cost,
                file.mediumCost(), file.softCost(), new Plan.SearchNote(file.search().seed(), file.search().schedules()),
                Optional.ofNullable(file.bound()).map(entry -> bound(root.child("bound"), entry)));
    }

    private LowerBound bound(Spot spot, BoundEntry entry) {
        references.moment(spot, "end", entry.end());
        return new LowerBound(entry.mediumCost(), entry.lateMinutes(), entry.end(), entry.allPossible(),
                Each.of(spot.child("orders"), entry.orders(), (inner, order) -> {
                    references.order(inner, order.order());
                    references.moment(inner, "ready", order.ready());
                    references.moment(inner, "handOver", order.handOver());
                    return new OrderBound(order.order(), order.possible(), order.ready(), order.handOver(), order.lateMinutes());
                }));
    }

    /** The lists of the file, sorted again by time and id: who edits a file puts lines where they please. */
    private Timetable timetable(Spot root, PlanFile file) {
        List<PlacedStep> steps = Each.of(root.child("steps"), file.steps(), converter::step);
        List<PlacedTouch> touches = Each.of(root.child("touches"), file.touches(), (spot, entry) -> {
            references.step(spot, entry.step());
            return converter.touch(spot, entry.step(), entry);
        });
        List<OvenRun> runs = Each.of(root.child("ovenRuns"), file.ovenRuns(), this::ovenRun);
        var pans = Each.of(root.child("pans"), file.pans(), (spot, entry) -> {
            references.step(spot, entry.step());
            return converter.pan(spot, entry.step(), entry);
        });
        List<Placement> placements = Each.of(root.child("placements"), file.placements(), (spot, entry) -> {
            references.step(spot, entry.step());
            return converter.placement(spot, entry.step(), entry);
        });
        List<Cleaning> cleanings = Each.of(root.child("cleanings"), file.cleanings(), (spot, entry) -> {
            references.unit(spot, entry.pool(), entry.unit());
            return new Cleaning(entry.pool(), entry.unit() - 1, references.span(spot, entry.from(), entry.until()));
        });
        steps.sort(Comparator.comparingInt(PlacedStep::start).thenComparing(PlacedStep::stepId));
        touches.sort(Comparator.comparing(PlacedTouch::when).thenComparing(PlacedTouch::stepId));
        runs.sort(Comparator.comparingInt(OvenRun::from).thenComparing(OvenRun::cavityId));
        placements.sort(Comparator.comparing(Placement::when).thenComparing(Placement::stepId));
        cleanings.sort(Comparator.comparing(Cleaning::when).thenComparing(Cleaning::poolId));
        return new Timetable(steps, touches, runs, pans, placements, cleanings,
                Each.of(root.child("outcomes"), file.outcomes(), this::outcome));
    }

    private OvenRun ovenRun(Spot spot, OvenRunEntry entry) {
        references.cavity(spot, entry.cavity());
        references.span(spot, "from", entry.from(), "ready", entry.ready());
        var whole = references.span(spot, entry.from(), entry.until());
        return new OvenRun(entry.cavity(), entry.temperature(), whole.start(), entry.ready(), whole.end());
    }

    private Outcome outcome(Spot spot, OutcomeEntry entry) {
        references.order(spot, entry.order());
        references.moment(spot, "ready", entry.ready());
        references.moment(spot, "handOver", entry.handOver());
        var reasons = entry.reasons().stream().map(reason -> new Outcome.Reason(Rule.valueOf(reason.rule()), reason.message())).toList();
        return new Outcome(entry.order(), entry.possible(), entry.ready(), entry.handOver(), entry.bufferMinutes(),
                entry.lateMinutes(), reasons, entry.waitsFor());
    }

    private Finding finding(Spot spot, FindingEntry entry) {
        return new Finding(Rule.valueOf(entry.rule()), entry.items(), entry.place(), references.span(spot, entry.from(), entry.until()),
                entry.message());
    }
}
