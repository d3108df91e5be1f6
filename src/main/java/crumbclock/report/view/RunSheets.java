package crumbclock.report.view;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes one run sheet for each person of the kitchen who has anything to do. */
public final class RunSheets {

    private final PlanView view;
    private final ClockText clock;
    private final RunRows rows;

    private RunSheets(PlanView view) {
        this.view = view;
        this.clock = view.clock();
        this.rows = new RunRows(view);
    }

    /** In the kitchen's order of people; somebody without work or touches has no sheet. */
    public static List<RunSheet> of(PlanView view) {
        var sheets = new RunSheets(view);
        var reminders = Reminders.byPerson(view);
        List<RunSheet> all = new ArrayList<>();
        for (Person person : view.problem().kitchen().people()) {
            var sheet = sheets.sheet(person, reminders.getOrDefault(person.id(), List.of()));
            if (!sheet.days().isEmpty()) {
                all.add(sheet);
            }
        }
        return all;
    }

    private RunSheet sheet(Person person, List<RunSheet.Row> reminders) {
        List<RunSheet.Row> all = new ArrayList<>(reminders);
        for (PlacedStep step : view.plan().timetable().steps()) {
            for (PersonWork work : step.work()) {
                if (work.personId().equals(person.id())) {
                    all.addAll(rows.work(step, work));
                }
            }
        }
        for (PlacedTouch touch : view.plan().timetable().touches()) {
            if (touch.personId().equals(person.id())) {
                all.add(rows.touch(touch));
            }
        }
        all.sort(Comparator.comparingInt(RunSheet.Row::from).thenComparingInt(RunSheet.Row::until)
                .thenComparing(RunSheet.Row::kind).thenComparing(RunSheet.Row::stepId));
        return new RunSheet(person.id(), person.name(), ClockText.duration(view.handsMinutes(person.id())),
                days(person, all));
    }

    private List<RunSheet.Day> days(Person person, List<RunSheet.Row> all) {
        Map<String, List<RunSheet.Row>> byDay = new LinkedHashMap<>();
        all.forEach(row -> byDay.computeIfAbsent(clock.longDay(row.from()), day -> new ArrayList<>()).add(row));
        List<RunSheet.Day> days = new ArrayList<>();
        byDay.forEach((title, ofDay) -> {
            int hands = ofDay.stream().filter(row -> row.kind() != RunSheet.Kind.REMINDER)
                    .mapToInt(row -> row.until() - row.from()).sum();
            days.add(new RunSheet.Day(title, shiftText(person, ofDay.get(0).from()), ClockText.duration(hands), ofDay));
        });
        return days;
    }

    private String shiftText(Person person, int minuteOfDay) {
        var shifts = onDay(person.shifts(), minuteOfDay);
        var breaks = onDay(person.breaks(), minuteOfDay);
        String text = shifts.isEmpty() ? "no shift this day" : "here " + String.join(", ", shifts);
        return breaks.isEmpty() ? text : text + "; break " + String.join(", ", breaks);
    }

    private List<String> onDay(List<Span> spans, int minuteOfDay) {
        return spans.stream().filter(span -> clock.sameDay(span.start(), minuteOfDay)
                || clock.sameDay(span.end() - 1, minuteOfDay)).map(clock::span).toList();
    }

    /** Whether the person is in the kitchen's calendar at that minute: on shift and not on a break. */
    static boolean isThere(Person person, int minute) {
        return person.shifts().stream().anyMatch(span -> span.contains(minute))
                && person.breaks().stream().noneMatch(span -> span.contains(minute));
    }

    static Comparator<PlacedTouch> firstPutIn() {
        return Comparator.comparing((PlacedTouch touch) -> touch.at() != TouchEnd.PUT_IN)
                .thenComparing(PlacedTouch::when);
    }
}
