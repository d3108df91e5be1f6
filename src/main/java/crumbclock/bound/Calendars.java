package crumbclock.bound;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.problem.FixedStep;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.model.Bits;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import crumbclock.units.Spans;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** When people and ovens can do anything, one bit a minute, in real time. */
final class Calendars {

    final int horizon;
    /** For work, by person: on shift, no break, open, not at recorded work. */
    final long[][] work;
    /** For touches, by person: the same, but recorded work that may be put down does not count. */
    final long[][] touch;
    final Presence[] presence;
    final Presence[] touchPresence;
    /** Somebody is in the kitchen, as far as shifts go (rule R05). */
    final long[] watched;
    /** By cavity: not away. */
    final long[][] there;
    /** By cavity: not away, watched, and time enough before it in the same stretch to heat up. */
    final long[][] hot;

    private final CompiledProblem compiled;
    private final Map<List<Integer>, Presence> together = new HashMap<>();

    Calendars(CompiledProblem compiled) {
        this.compiled = compiled;
        horizon = compiled.horizon;
        List<Person> people = compiled.kitchen().people();
        long[] open = compiled.calendar(compiled.kitchen().opening());
        work = new long[people.size()][];
        touch = new long[people.size()][];
        for (int person = 0; person < work.length; person++) {
            work[person] = Instants.both(compiled.calendar(people.get(person).shifts()), open);
            clear(work[person], people.get(person).breaks());
            touch[person] = work[person].clone();
        }
        recordedWork();
        presence = new Presence[work.length];
        touchPresence = new Presence[work.length];
        for (int person = 0; person < work.length; person++) {
            presence[person] = new Presence(work[person], horizon);
            touchPresence[person] = new Presence(touch[person], horizon);
        }
        List<Span> stretches = Spans.joined(people.stream().flatMap(person -> person.shifts().stream()).toList());
        watched = compiled.calendar(stretches);
        List<Cavity> cavities = compiled.kitchen().cavities();
        there = new long[cavities.size()][];
        hot = new long[cavities.size()][];
        for (int cavity = 0; cavity < there.length; cavity++) {
            there[cavity] = Bits.ofSize(horizon + 1);
            Bits.set(there[cavity], 0, horizon);
            clear(there[cavity], cavities.get(cavity).away());
            hot[cavity] = hot(cavities.get(cavity), stretches);
        }
    }

    /** The minutes at which any of them can work. */
    Presence together(int[] people) {
        return together.computeIfAbsent(IntStream.of(people).boxed().toList(),
                key -> new Presence(workOf(people, 1), horizon));
    }

    /** The minutes at which at least {@code count} of them can work. */
    long[] workOf(int[] people, int count) {
        long[] together = Bits.ofSize(horizon + 1);
        if (count == 1) {
            for (int person : people) {
                Instants.unite(together, work[person]);
            }
            return together;
        }
        for (int minute = 0; minute < horizon; minute++) {
            int found = 0;
            for (int person : people) {
                found += Bits.get(work[person], minute) ? 1 : 0;
            }
            if (found >= count) {
                Bits.set(together, minute, minute + 1);
            }
        }
        return together;
    }

    private void recordedWork() {
        Problem problem = compiled.problem;
        Map<String, Task> byId = new HashMap<>();
        for (Task task : compiled.tasks) {
            byId.put(task.step.id(), task);
        }
        Map<String, Integer> personById = new HashMap<>();
        for (int person = 0; person < work.length; person++) {
            personById.put(compiled.kitchen().people().get(person).id(), person);
        }
        for (FixedStep fixed : problem.fixedSteps()) {
            Task task = byId.get(fixed.step().stepId());
            fixed.step().work().forEach(one -> {
                Integer person = personById.get(one.personId());
                if (person != null) {
                    clear(work[person], one.spans());
                    if (task != null && (!task.mayPutDown || task.away)) {
                        clear(touch[person], one.spans());
                    }
                }
            });
        }
    }

    /** Heating up has to lie in the same stretch, and may begin before the problem does. */
    private long[] hot(Cavity cavity, List<Span> stretches) {
        List<Span> hot = new ArrayList<>();
        List<Span> away = Spans.joined(cavity.away());
        for (Span stretch : stretches) {
            int from = stretch.start();
            for (Span gone : away) {
                if (gone.overlaps(stretch)) {
                    add(hot, from + cavity.preheatMinutes(), gone.start());
                    from = Math.max(from, gone.end());
                }
            }
            add(hot, from + cavity.preheatMinutes(), stretch.end());
        }
        return compiled.calendar(hot);
    }

    private static void add(List<Span> spans, int from, int until) {
        if (from < until) {
            spans.add(new Span(from, until));
        }
    }

    private void clear(long[] calendar, List<Span> spans) {
        for (Span span : spans) {
            Bits.clear(calendar, Math.max(0, span.start()), Math.min(horizon, span.end()));
        }
    }
}
