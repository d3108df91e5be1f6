package crumbclock.formats.day;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayNote;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.formats.csv.CsvTable;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads a day file: one line for each thing that happened, as {@code time, cake, step, word}; a line about the whole
 * kitchen has its words in any of the cells behind the time. Lines may stand in any order. What cannot be understood is an
 * issue; what can be understood in more than one way is read in one of them, and a note says so.
 */
public final class DayReader {

    private static final String LINE_EXPECTED = "time, cake, step, word, or a time and what happened to the kitchen";

    private final String file;
    private final Problem problem;
    private final int now;
    private final DayTimes times;
    private final DayNames names;
    private final IssueLog log;
    /** The plan that was worked by, by step; empty while the day is not over. */
    private final Map<String, PlacedStep> planned;
    private final List<StepEvent> steps = new ArrayList<>();
    private final List<KitchenEvent> kitchen = new ArrayList<>();
    private final List<DayNote> notes = new ArrayList<>();

    private DayReader(SourceFile source, Problem problem, int now, Map<String, PlacedStep> planned, IssueLog log) {
        this.file = source.name();
        this.problem = problem;
        this.now = now;
        this.times = new DayTimes(problem.clock(), now);
        this.names = new DayNames(problem);
        this.log = log;
        this.planned = planned;
    }

    /**
     * @param now minute from the problem's start at which it is read
     * @return empty when the log holds an issue of this file
     */
    public static Optional<DayLog> read(SourceFile source, Problem problem, int now, IssueLog log) {
        return read(source, problem, now, Map.of(), log);
    }

    /**
     * Reads the file of a day, or of a weekend, that is over. A time without a day is the one nearest to when the step was planned; for
     * the kitchen it is that time on each day, since nothing tells which.
     *
     * @param timetable that people worked by
     * @return empty when the log holds an issue of this file
     */
    public static Optional<DayLog> readFinished(SourceFile source, Problem problem, Timetable timetable, IssueLog log) {
        Map<String, PlacedStep> planned = new LinkedHashMap<>();
        timetable.steps().forEach(step -> planned.put(step.stepId(), step));
        return read(source, problem, problem.clock().horizonMinutes(), planned, log);
    }

    private static Optional<DayLog> read(SourceFile source, Problem problem, int now, Map<String, PlacedStep> planned, IssueLog log) {
        var ownLog = new IssueLog();
        var reader = new DayReader(source, problem, now, planned, ownLog);
        String[] lines = source.text().split("\\R", -1);
        for (int line = 1; line <= lines.length; line++) {
            reader.line(line, lines[line - 1]);
        }
        ownLog.sorted().forEach(log::add);
        reader.steps.sort(Comparator.comparingInt(event -> event.isTimed() ? event.minute() : now));
        return ownLog.isEmpty() ? Optional.of(new DayLog(reader.steps, reader.kitchen, reader.notes)) : Optional.empty();
    }

    private void line(int line, String text) {
        if (text.isBlank() || text.strip().startsWith("#")) {
            return;
        }
        var read = CsvTable.cells(text);
        if (read.isEmpty()) {
            fault(line, "", text.strip(), "cells of which one in quotes ends with a quote", "");
            return;
        }
        List<String> cells = new ArrayList<>(read.get());
        if (cells.get(0).equalsIgnoreCase("time")) {
            return;
        }
        while (cells.size() < 4) {
            cells.add("");
        }
        OptionalInt minute = times.minute(cells.get(0));
        if (minute.isEmpty() && !cells.get(0).isEmpty()) {
            fault(line, "column time", cells.get(0), "a time such as 11:05 or Sat 11:05, inside the problem", "");
            return;
        }
        String words = String.join(" ", cells.subList(1, cells.size())).strip().replaceAll("\\s+", " ");
        var about = KitchenWords.of(words);
        if (about.isPresent()) {
            List<Integer> days = planned.isEmpty() ? List.of() : times.all(cells.get(0));
            if (days.size() > 1) {
                notes.add(new DayNote(line, '"' + words + "\" says no day; taken as on each day, so that nothing is counted that it may have hindered"));
                days.forEach(day -> kitchen(line, OptionalInt.of(day), about.get()));
            } else {
                kitchen(line, minute, about.get());
            }
        } else {
            step(line, minute, cells);
        }
    }

    private void fault(int line, String where, String read, String expected, String advice) {
        log.add(new Issue(file, line, where, read.isEmpty() ? "nothing" : '"' + read + '"', expected, advice));
    }

    private void kitchen(int line, OptionalInt minute, KitchenWords about) {
        var named = names.thing(about);
        if (named.isEmpty()) {
            fault(line, "", about.subject(), about.kind() == KitchenEvent.Kind.PERSON_AWAY ? "somebody of the kitchen"
                    : "an oven or a store of the kitchen", names.thingAdvice(about));
            return;
        }
        int at = minute.orElse(now);
        var when = times.span(about.times(), at, named.get().kind() == KitchenEvent.Kind.PERSON_AWAY && !about.isIll());
        if (when.isEmpty()) {
            fault(line, "", about.times(), "times from-to such as 14:10-14:40, inside the problem", "");
            return;
        }
        if (minute.isEmpty() && about.times().isEmpty()) {
            notes.add(new DayNote(line, "no time is said; taken as from now on"));
        }
        kitchen.add(new KitchenEvent(line, named.get().kind(), named.get().id(), when.get()));
    }

    private void step(int line, OptionalInt minute, List<String> cells) {
        String said = String.join(" ", cells.subList(3, cells.size())).strip();
        var word = StepWords.of(said.isEmpty() ? cells.get(2) : said);
        if (word.isEmpty()) {
            fault(line, "column word", said.isEmpty() ? cells.get(2) : said,
                    "started, done, slower with minutes, spoiled, redo from a step, or skip; or " + LINE_EXPECTED,
                    StepWords.advice(said));
            return;
        }
        String cake = cells.get(1);
        String step = !word.get().step().isEmpty() ? word.get().step() : said.isEmpty() ? "" : cells.get(2);
        var owners = names.owners(cake);
        if (owners.isEmpty() && !cake.isEmpty()) {
            fault(line, "column cake", cake, "an order, cake or batch of the problem", names.ownerAdvice(cake));
            return;
        }
        if (step.isEmpty() && (word.get().word() != DayWord.SPOILED || owners.isEmpty())) {
            fault(line, "column step", step, "the step that is meant", "Only a whole cake that is spoiled needs no step.");
            return;
        }
        List<String> ids = step.isEmpty() ? names.allSteps(owners) : names.steps(owners, step);
        if (ids.isEmpty()) {
            fault(line, "column step", step, owners.isEmpty() ? "a step of the problem by its whole id, or its cake beside it"
                    : "a step of " + cake, names.stepAdvice(owners, step));
            return;
        }
        if (ids.size() > 1 && !step.isEmpty()) {
            notes.add(new DayNote(line, '"' + step + "\" of " + (cake.isEmpty() ? "all" : cake) + " is " + String.join(" and ", ids)
                    + "; taken as all of them"));
        }
        steps.add(new StepEvent(line, timeOf(line, near(cells.get(0), minute, ids, word.get().word())), ids, word.get().word(), word.get().minutes()));
    }

    /** The time of a day that is over, as near to the plan as may be. */
    private OptionalInt near(String text, OptionalInt minute, List<String> ids, DayWord word) {
        return minute.isEmpty() ? minute : ids.stream().filter(planned::containsKey).map(planned::get).findFirst()
                .map(step -> times.near(text, word == DayWord.STARTED ? step.start() : step.end())).orElse(minute);
    }

    private int timeOf(int line, OptionalInt minute) {
        if (minute.isPresent() && minute.getAsInt() > now) {
            notes.add(new DayNote(line, times.show(minute.getAsInt()) + " is still to come; taken as now, "
                    + times.show(now)));
            return now;
        }
        return minute.orElse(StepEvent.NO_TIME);
    }
}
