package crumbclock.cli;

import crumbclock.app.pace.FinishedDay;
import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayNote;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.change.ChangeReader;
import crumbclock.formats.change.Scenario;
import crumbclock.formats.day.DayReader;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.pace.KitchenPaces;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finished days with what was planned for them.
 *
 * @param kitchen of the first problem, with the paces in use
 * @param file    that holds this kitchen
 * @param notes   what was assumed while the day files were read
 */
record PacesInputs(Kitchen kitchen, KitchenPaces file, List<FinishedDay> days, List<String> notes) {

    /**
     * Reads everything; the faults of all files are told at once.
     *
     * @param problems one for all days, or one for each
     * @param days     as many as there are plans
     * @throws BadInput with all faults of all files
     */
    static PacesInputs read(List<Path> problems, List<String> changes, List<Path> plans, List<Path> days) {
        return Inputs.read(log -> {
            List<Optional<Problem>> read = problems.stream().map(file -> ProblemReader.draft(file, List.of(), log)
                    .flatMap(draft -> ChangeReader.read(changes, draft, log)).map(Scenario::problem)).toList();
            List<FinishedDay> finished = new ArrayList<>();
            List<String> notes = new ArrayList<>();
            for (int i = 0; i < days.size(); i++) {
                Path dayFile = days.get(i);
                Path planFile = plans.get(i);
                read.get(read.size() == 1 ? 0 : i).flatMap(problem -> day(problem, planFile, dayFile, log))
                        .ifPresent(day -> {
                            finished.add(day);
                            day.log().notes().stream().map(DayNote::message).sorted().forEach(note -> notes.add(dayFile + ": " + note));
                        });
            }
            Optional<KitchenPaces> kitchen = KitchenPaces.of(problems.get(0), log);
            return kitchen.isEmpty() || read.get(0).isEmpty() ? Optional.empty()
                    : Optional.of(new PacesInputs(read.get(0).get().kitchen(), kitchen.get(), List.copyOf(finished), List.copyOf(notes)));
        });
    }

    /** A day file is read, and its faults are told, though its plan is at fault. */
    private static Optional<FinishedDay> day(Problem problem, Path planFile, Path dayFile, IssueLog log) {
        Optional<KnownPlan> plan = KnownPlan.read(planFile, problem, log);
        Optional<DayLog> day = SourceFile.read(dayFile, log).flatMap(source -> plan.isPresent()
                ? DayReader.readFinished(source, plan.get().problem(), plan.get().plan().timetable(), log)
                : DayReader.read(source, problem, problem.clock().horizonMinutes(), log));
        return plan.flatMap(one -> day.map(events -> new FinishedDay(one.problem(), one.plan().timetable(), events)));
    }
}
