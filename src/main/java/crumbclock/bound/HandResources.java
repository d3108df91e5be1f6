package crumbclock.bound;

import crumbclock.bound.Use.When;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Hands (rules R03, R04, R14): for each group of people, the work that only they can do against the minutes they are
 * there. A touch may fall into work that may be put down, so both never count together; touches of bakes that may
 * share a cavity may be one movement, so those do not count.
 */
final class HandResources {

    private static final int MOST_GROUPS = 16;

    private final CompiledProblem compiled;
    private final Calendars calendars;
    private final Net net;
    private final boolean[] singleTouches;

    /** @param singleTouches by task: its touches are no movement together with another bake's */
    HandResources(CompiledProblem compiled, Calendars calendars, Net net, boolean[] singleTouches) {
        this.compiled = compiled;
        this.calendars = calendars;
        this.net = net;
        this.singleTouches = singleTouches;
    }

    List<Resource> all() {
        List<Resource> all = new ArrayList<>();
        for (Set<Integer> group : groups()) {
            int[] people = group.stream().mapToInt(Integer::intValue).toArray();
            List<Use> work = new ArrayList<>();
            List<Use> solid = new ArrayList<>();
            for (Task task : compiled.tasks) {
                add(task, group, work, solid);
            }
            all.add(new Resource("work of " + people.length, supply(people, calendars.presence), people.length, work));
            if (solid.stream().anyMatch(use -> use.when() != When.ALL)) {
                // a touch may fall into recorded work that may be put down
                all.add(new Resource("work and touches of " + people.length, supply(people, calendars.touchPresence),
                        people.length, solid));
            }
        }
        return all;
    }

    private Set<Set<Integer>> groups() {
        Set<Set<Integer>> groups = new LinkedHashSet<>();
        Set<Integer> everybody = new TreeSet<>();
        for (int person = 0; person < compiled.kitchen().people().size(); person++) {
            everybody.add(person);
        }
        groups.add(everybody);
        for (Task task : compiled.tasks) {
            for (int[] people : new int[][] {task.workers, task.inPeople, task.outPeople}) {
                if (people.length > 0 && groups.size() < MOST_GROUPS) {
                    groups.add(set(people));
                }
            }
        }
        return groups;
    }

    private static Set<Integer> set(int[] people) {
        Set<Integer> set = new TreeSet<>();
        Arrays.stream(people).forEach(set::add);
        return set;
    }

    private void add(Task task, Set<Integer> group, List<Use> work, List<Use> solid) {
        int index = task.index;
        if (net.fixed[index]) {
            return;
        }
        int minutes = net.rooms[index].shortest();
        if (task.works && minutes > 0 && group.containsAll(set(task.workers))) {
            if (task.mayPutDown) {
                work.add(new Use(When.IN_PIECES, index, index, minutes, 0, task.people, calendars.together(task.workers)));
            } else {
                Use use = Use.all(index, minutes, task.people);
                work.add(use);
                solid.add(use);
            }
        }
        if (singleTouches[index]) {
            if (task.inMinutes > 0 && group.containsAll(set(task.inPeople))) {
                solid.add(new Use(When.AT_START, index, index, task.inMinutes, 0, 1, null));
            }
            if (task.outMinutes > 0 && group.containsAll(set(task.outPeople))) {
                solid.add(new Use(When.AT_END, index, index, task.outMinutes, 0, 1, null));
            }
        }
    }

    /** Person minutes; of a day no more than each may work (rule R03). */
    private Supply supply(int[] people, Presence[] presence) {
        long[] perMinute = new long[compiled.horizon];
        List<Integer> limited = new ArrayList<>();
        for (int person : people) {
            if (isLimited(person, presence[person])) {
                limited.add(person);
                continue;
            }
            for (int minute = 0; minute < perMinute.length; minute++) {
                perMinute[minute] += presence[person].in(minute, minute + 1);
            }
        }
        Supply free = Supply.of(perMinute, 0);
        return limited.isEmpty() ? free : (from, until) -> free.in(from, until)
                + limited.stream().mapToLong(person -> limited(person, presence[person], from, until)).sum();
    }

    private boolean isLimited(int person, Presence presence) {
        int most = compiled.kitchen().people().get(person).mostMinutesADay();
        return compiled.days.stream().anyMatch(day -> presence.in(day.start(), day.end()) > most);
    }

    private long limited(int person, Presence presence, int from, int until) {
        int most = compiled.kitchen().people().get(person).mostMinutesADay();
        long minutes = 0;
        for (Span day : compiled.days) {
            minutes += Math.min(most, presence.in(Math.max(from, day.start()), Math.min(until, day.end())));
        }
        return minutes;
    }
}
