package crumbclock.report.view;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.Cleaning;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Things that somebody must think of and that no step asks for: turning an oven on or off, a full clean. The plan gives
 * them to nobody, so they go on the sheet of one person who is there: for an oven the one who loads it first, else
 * the first in the kitchen's order who has nothing else to do.
 */
final class Reminders {

    private final PlanView view;
    private final Map<String, List<RunSheet.Row>> byPerson = new LinkedHashMap<>();

    private Reminders(PlanView view) {
        this.view = view;
    }

    static Map<String, List<RunSheet.Row>> byPerson(PlanView view) {
        var reminders = new Reminders(view);
        var timetable = view.plan().timetable();
        timetable.ovenRuns().forEach(reminders::oven);
        timetable.cleanings().forEach(reminders::cleaning);
        return reminders.byPerson;
    }

    private void oven(OvenRun run) {
        var runs = view.plan().timetable().ovenRuns();
        String oven = view.findCavity(run.cavityId()).map(cavity -> cavity.name()).orElse(run.cavityId());
        boolean goesOn = runs.stream()
                .anyMatch(other -> other.cavityId().equals(run.cavityId()) && other.from() == run.until());
        boolean wasOn = runs.stream()
                .anyMatch(other -> other.cavityId().equals(run.cavityId()) && other.until() == run.from());
        String ready = "ready " + view.clock().timeSeenFrom(run.from(), run.readyAt());
        add(run.from(), run.from(), loader(run), (wasOn ? "set " : "turn on ") + oven + " to " + run.temperatureC()
                + " °C", ready);
        if (!goesOn) {
            add(run.until(), run.until(), loader(run), "turn off " + oven, "");
        }
    }

    private String loader(OvenRun run) {
        return view.plan().timetable().touches().stream().filter(touch -> touch.at() == TouchEnd.PUT_IN
                        && run.from() <= touch.when().start() && touch.when().start() < run.until()
                        && view.findPlaced(touch.stepId()).filter(step -> step.cavityId().equals(run.cavityId()))
                                .isPresent())
                .min(RunSheets.firstPutIn()).map(PlacedTouch::personId).orElse("");
    }

    private void cleaning(Cleaning cleaning) {
        add(cleaning.when().start(), cleaning.when().end(), "",
                "full clean: " + view.unitName(cleaning.poolId(), cleaning.unit()), "before the next use");
    }

    private boolean isBusy(Person person, Span when) {
        var timetable = view.plan().timetable();
        return timetable.touches().stream().anyMatch(touch -> touch.personId().equals(person.id())
                && touch.when().overlaps(when))
                || timetable.steps().stream().flatMap(step -> step.work().stream())
                        .anyMatch(work -> work.personId().equals(person.id())
                                && work.spans().stream().anyMatch(span -> span.overlaps(when)));
    }

    private void add(int from, int until, String preferred, String what, String note) {
        var people = view.problem().kitchen().people();
        // the minute before counts too: an oven is turned off as the last one leaves
        var there = people.stream().filter(person -> RunSheets.isThere(person, from)
                || RunSheets.isThere(person, from - 1)).toList();
        var when = new Span(from, Math.max(until, from + 1));
        var chosen = there.stream().filter(person -> person.id().equals(preferred)).findFirst()
                .or(() -> there.stream().filter(person -> !isBusy(person, when)).findFirst())
                .or(() -> there.stream().findFirst());
        String personId = chosen.map(Person::id).orElse(preferred);
        String clock = from == until ? view.clock().time(from)
                : view.clock().span(new Span(from, until));
        byPerson.computeIfAbsent(personId, id -> new ArrayList<>()).add(new RunSheet.Row(from, until,
                RunSheet.Kind.REMINDER, "", clock, what, "", -1, "", "", "", "",
                note.isEmpty() ? List.of() : List.of(note)));
    }
}
