package crumbclock.app.replan;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.day.DayNews.Change;
import crumbclock.domain.day.DayNews.Kind;
import crumbclock.domain.day.DayNews.PersonNews;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.work.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Compares two plans of one day: for each person, what is different from now on. */
final class News {

    private final Situation situation;
    private final Map<String, Map<String, Integer>> before;
    private final Map<String, Map<String, Integer>> after;

    private News(Situation situation, Timetable before, Timetable after) {
        this.situation = situation;
        this.before = tasks(before);
        this.after = tasks(after);
    }

    static DayNews of(Situation situation, Plan old, Plan plan, List<Finding> inFact, PaceReport soFar) {
        var news = new News(situation, old.timetable(), plan.timetable());
        List<PersonNews> people = new ArrayList<>();
        for (Person person : situation.problem().kitchen().people()) {
            List<Change> changes = news.changes(person.id());
            if (!changes.isEmpty()) {
                people.add(new PersonNews(person.id(), changes));
            }
        }
        return new DayNews(situation.now(), people, lost(situation, old, plan), inFact, situation.notes(), soFar);
    }

    /** By task (a step, or a touch of it): who does it, and when. */
    private static Map<String, Map<String, Integer>> tasks(Timetable timetable) {
        Map<String, Map<String, Integer>> tasks = new LinkedHashMap<>();
        timetable.steps().forEach(step -> step.work().forEach(work ->
                tasks.computeIfAbsent(step.stepId(), key -> new TreeMap<>()).put(work.personId(), step.start())));
        for (PlacedTouch touch : timetable.touches()) {
            String task = touch.stepId() + "\t" + (touch.at() == TouchEnd.PUT_IN ? "put in" : "take out");
            tasks.computeIfAbsent(task, key -> new TreeMap<>()).put(touch.personId(), touch.when().start());
        }
        return tasks;
    }

    private List<Change> changes(String person) {
        List<Change> changes = new ArrayList<>();
        after.forEach((task, by) -> {
            Integer minute = by.get(person);
            Map<String, Integer> known = before.getOrDefault(task, Map.of());
            boolean isNew = !known.containsKey(person);
            if (minute != null && minute >= situation.now() && !(known.containsKey(person) && known.get(person).equals(minute))) {
                changes.add(change(task, minute, isNew ? Kind.NEW : Kind.MOVED, isNew ? -1 : known.get(person),
                        isNew ? others(known, person) : List.of()));
            }
        });
        before.forEach((task, by) -> {
            Integer minute = by.get(person);
            Map<String, Integer> now = after.getOrDefault(task, Map.of());
            if (minute != null && minute >= situation.now() && !now.containsKey(person)) {
                changes.add(change(task, minute, Kind.GONE, minute, others(now, person)));
            }
        });
        changes.sort(Comparator.comparingInt(Change::minute).thenComparing(Change::stepId).thenComparing(Change::touch));
        return changes;
    }

    private static Change change(String task, int minute, Kind kind, int beforeMinute, List<String> others) {
        int tab = task.indexOf('\t');
        return new Change(minute, kind, tab < 0 ? task : task.substring(0, tab), tab < 0 ? "" : task.substring(tab + 1),
                beforeMinute, others);
    }

    private List<String> others(Map<String, Integer> by, String person) {
        return by.keySet().stream().filter(other -> !other.equals(person)).map(id -> situation.problem().kitchen().people().stream()
                .filter(one -> one.id().equals(id)).map(Person::name).findFirst().orElse(id)).toList();
    }

    private static List<String> lost(Situation situation, Plan old, Plan plan) {
        List<String> lost = new ArrayList<>();
        Map<String, List<String>> work = new LinkedHashMap<>();
        for (Step step : situation.problem().steps()) {
            Integer at = situation.lostAt().get(step.id());
            if (at != null && situation.old().find(step.id()).filter(known -> known.start() < at).isPresent()) {
                work.computeIfAbsent(step.ownerId(), key -> new ArrayList<>()).add(step.name());
            }
        }
        work.forEach((owner, steps) -> lost.add("Work on " + owner + " is lost, from \"" + steps.get(0) + "\" on."));
        for (Outcome outcome : plan.timetable().outcomes()) {
            Outcome was = old.timetable().outcomes().stream().filter(one -> one.orderId().equals(outcome.orderId())).findFirst().orElse(outcome);
            if (was.possible() && !outcome.possible()) {
                lost.add("Order " + outcome.orderId() + " is not possible any more.");
            } else if (outcome.possible() && outcome.lateMinutes() > was.lateMinutes()) {
                lost.add("Order " + outcome.orderId() + " will be " + outcome.lateMinutes() + " min late.");
            }
        }
        return lost;
    }
}
