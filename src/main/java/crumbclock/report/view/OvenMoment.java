package crumbclock.report.view;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.work.Pan;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What is in one cavity between two changes of its pans.
 *
 * @param number counted from 1 in this cavity
 * @param run    the run that the stretch lies in; empty in a plan that forgot to heat
 */
public record OvenMoment(Cavity cavity, int number, Span when, Optional<OvenRun> run, List<PlacedStep> bakes,
        List<PanIn> pans) {

    public OvenMoment {
        bakes = List.copyOf(bakes);
        pans = List.copyOf(pans);
    }

    /** One pan where it stands. */
    public record PanIn(PanPlace place, Pan pan, String label, boolean cameIn, boolean goesOut) {
    }

    /** Cavity by cavity, then by time; stretches with an empty oven are left out. */
    public static List<OvenMoment> of(PlanView view) {
        List<OvenMoment> moments = new ArrayList<>();
        for (Cavity cavity : view.problem().kitchen().cavities()) {
            moments.addAll(inCavity(view, cavity));
        }
        return moments;
    }

    private static List<OvenMoment> inCavity(PlanView view, Cavity cavity) {
        var bakes = view.plan().timetable().steps().stream()
                .filter(step -> step.cavityId().equals(cavity.id()) && step.end() > step.start()).toList();
        var changes = new TreeSet<Integer>();
        bakes.forEach(bake -> {
            changes.add(bake.start());
            changes.add(bake.end());
        });
        List<OvenMoment> moments = new ArrayList<>();
        Integer from = null;
        for (int until : changes) {
            if (from != null) {
                var when = new Span(from, until);
                var inside = bakes.stream().filter(bake -> bake.span().overlaps(when)).toList();
                if (!inside.isEmpty()) {
                    moments.add(new OvenMoment(cavity, moments.size() + 1, when, runAt(view, cavity, when.start()),
                            inside, inside.stream().flatMap(bake -> pans(view, bake, when).stream()).toList()));
                }
            }
            from = until;
        }
        return moments;
    }

    private static Optional<OvenRun> runAt(PlanView view, Cavity cavity, int minute) {
        return view.plan().timetable().ovenRuns().stream()
                .filter(run -> run.cavityId().equals(cavity.id()) && run.from() <= minute && minute < run.until())
                .findFirst();
    }

    private static List<PanIn> pans(PlanView view, PlacedStep bake, Span when) {
        List<PanIn> pans = new ArrayList<>();
        var use = view.findStep(bake.stepId()).flatMap(step -> step.oven());
        String label = view.ownerLabel(view.ownerId(bake.stepId()));
        for (PanPlace place : view.pans(bake.stepId())) {
            if (use.isPresent() && place.pan() < use.get().pans().size()) {
                pans.add(new PanIn(place, use.get().pans().get(place.pan()), label,
                        bake.start() == when.start(), bake.end() == when.end()));
            }
        }
        return pans;
    }
}
