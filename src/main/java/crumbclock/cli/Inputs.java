package crumbclock.cli;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.change.ChangeReader;
import crumbclock.formats.change.Scenario;
import crumbclock.formats.day.DayReader;
import crumbclock.formats.day.DayTimes;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.plan.PlanJson;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Reads what the commands work on, or tells all that is wrong with it. */
final class Inputs {

    private Inputs() {
    }

    /**
     * A problem with changes: files of changes, or changes in words.
     *
     * @throws BadInput with all faults of all files and words, when there is one
     */
    static Scenario changed(Path file, List<String> changes) {
        return read(log -> ProblemReader.draft(file, List.of(), log).flatMap(draft -> ChangeReader.read(changes, draft, log)));
    }

    /**
     * The problem as it is, then with each of the changes by itself.
     *
     * @throws BadInput with all faults of all files and words, when there is one
     */
    static List<Scenario> scenarios(Path file, List<String> changes) {
        return read(log -> ProblemReader.draft(file, List.of(), log).map(draft -> {
            List<Scenario> scenarios = new ArrayList<>();
            ChangeReader.read(List.of(), draft, log).ifPresent(scenarios::add);
            changes.forEach(change -> ChangeReader.read(List.of(change), draft, log).ifPresent(scenarios::add));
            return scenarios;
        }));
    }

    /**
     * A problem with changes, and the same with one more order.
     *
     * @param order a file of changes, or words, that add one order
     * @throws BadInput with all faults of all files and words, when there is one, or when it is not one order
     */
    static PromiseInputs withOneMore(Path file, List<String> changes, String order) {
        return read(log -> ProblemReader.draft(file, List.of(), log).flatMap(draft -> {
            List<String> all = new ArrayList<>(changes);
            all.add(order);
            var base = ChangeReader.read(changes, draft, log);
            var asked = ChangeReader.read(all, draft, log);
            return base.isEmpty() || asked.isEmpty() ? Optional.empty()
                    : Optional.of(PromiseInputs.of(draft, base.get(), asked.get(), order));
        }));
    }

    /** @throws BadInput with all faults of the file, when there is one */
    static Plan plan(Path file, Problem problem) {
        return read(log -> SourceFile.read(file, log)
                .flatMap(source -> PlanJson.read(source.name(), source.text(), problem, log)));
    }

    /**
     * A plan that may have been made while the day ran.
     *
     * @throws BadInput with all faults of the file, when there is one
     */
    static KnownPlan known(Path file, Problem base) {
        return read(log -> KnownPlan.read(file, base, log));
    }

    /** @throws BadInput with all faults of the file, when there is one */
    static DayLog day(Path file, Problem problem, int now) {
        return read(log -> SourceFile.read(file, log).flatMap(source -> DayReader.read(source, problem, now, log)));
    }

    /**
     * What `--now` says.
     *
     * @return a minute inside the problem
     * @throws ParameterException when it is none
     */
    static int now(String text, ProblemClock clock, CommandSpec command) {
        return DayTimes.now(clock, text).orElseThrow(() -> new ParameterException(command.commandLine(),
                "--now: read \"" + text + "\"; expected a time inside the problem such as 11:00, with its day, as in \"Sat 11:00\","
                        + " when the problem lasts longer than one"));
    }

    /** @throws BadInput with all faults that the reader found, when there is one */
    static <T> T read(Function<IssueLog, Optional<T>> reader) {
        var log = new IssueLog();
        Optional<T> value = reader.apply(log);
        if (!log.isEmpty() || value.isEmpty()) {
            List<String> lines = new ArrayList<>(log.sorted().stream().map(Issue::toString).distinct().toList());
            lines.add(lines.size() == 1 ? "1 fault; nothing was written." : lines.size() + " faults; nothing was written.");
            throw new BadInput(lines);
        }
        return value.get();
    }
}
