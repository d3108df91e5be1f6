package crumbclock.engine.decode;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.FixedStep;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Need;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Books what has happened, is running or is pinned before the first decision (rule R15), whatever the figures say. */
final class FixedWork {

    private final Board board;
    private final CompiledProblem compiled;
    /** In the order of the problem's fixed steps, each with its task: every decode books them, so they are looked up once. */
    private final List<Known> known = new ArrayList<>();

    private record Known(Task task, FixedStep fixed) {
    }

    FixedWork(Board board) {
        this.board = board;
        this.compiled = board.compiled;
        Map<String, Task> byId = new HashMap<>();
        for (Task task : compiled.tasks) {
            byId.put(task.step.id(), task);
        }
        for (FixedStep fixed : compiled.problem.fixedSteps()) {
            Task task = byId.get(fixed.step().stepId());
            if (task != null) {
                known.add(new Known(task, fixed));
            }
        }
    }

    void book() {
        for (Known one : known) {
            book(one.task, one.fixed);
        }
    }

    private void book(Task task, FixedStep fixed) {
        PlacedStep step = fixed.step();
        Span span = compiled.mirror(step.span());
        work(task, step);
        for (PlacedTouch touch : fixed.touches()) {
            Span when = compiled.mirror(touch.when());
            int person = person(touch.personId());
            board.people.bookTouch(person, when.start(), when.end());
            boolean first = (touch.at() == TouchEnd.PUT_IN) != compiled.mirrored;
            (first ? board.inPerson : board.outPerson)[task.index] = person;
        }
        for (int cavity = 0; cavity < board.cavities.length; cavity++) {
            if (board.cavities[cavity].id().equals(step.cavityId())) {
                board.cavities[cavity].force(task, step.start(), step.end(), fixed.pans());
                board.cavity[task.index] = cavity;
            }
        }
        for (Placement placement : fixed.placements()) {
            board.shelves.force(task, placement);
            compiled.kitchen().stores().stream().filter(store -> store.id().equals(placement.storeId())).findFirst()
                    .ifPresent(store -> board.kind[task.index] = store.kind());
        }
        for (int surface = 0; surface < board.surfaces.length; surface++) {
            if (compiled.kitchen().surfaces().get(surface).id().equals(step.surfaceId())) {
                board.stand(task, surface, span.start(), span.end());
                board.kind[task.index] = compiled.kitchen().surfaces().get(surface).kind();
            }
        }
        units(task, step);
        if (task.presence) {
            board.presence.need(Math.max(0, span.start()), Math.min(compiled.horizon, span.end()));
        }
        board.place(task, span.start(), span.end());
    }

    private void work(Task task, PlacedStep step) {
        board.spans[task.index].clear();
        List<Integer> people = new ArrayList<>();
        for (PersonWork work : step.work()) {
            int person = person(work.personId());
            people.add(person);
            List<Span> spans = new ArrayList<>(work.spans().stream().map(compiled::mirror).toList());
            if (compiled.mirrored) {
                Collections.reverse(spans);
            }
            for (Span span : spans) {
                board.people.bookWork(person, span.start(), span.end(), !task.mayPutDown);
                if (task.away) {
                    board.presence.leave(person, span.start(), span.end());
                }
                if (people.size() == 1) {
                    board.spans[task.index].add(span.start());
                    board.spans[task.index].add(span.end());
                }
            }
        }
        board.workers[task.index] = people.stream().mapToInt(Integer::intValue).toArray();
    }

    private void units(Task task, PlacedStep step) {
        for (Need need : compiled.needs) {
            if (need.owner() != task) {
                continue;
            }
            String pool = compiled.kitchen().pools().get(need.pool()).id();
            int[] pieces = step.units().stream().filter(use -> use.poolId().equals(pool)).mapToInt(UnitUse::unit).toArray();
            board.pieces[need.index()] = pieces;
            for (UnitUse use : step.units()) {
                if (use.poolId().equals(pool)) {
                    Span when = compiled.mirror(new Span(use.from(), use.until()));
                    board.pools[need.pool()].force(need, use.unit(), when.start(), when.end());
                }
            }
        }
    }

    private int person(String id) {
        List<Person> people = compiled.kitchen().people();
        for (int person = 0; person < people.size(); person++) {
            if (people.get(person).id().equals(id)) {
                return person;
            }
        }
        throw new IllegalArgumentException("a fixed step names " + id + ", who is not in the kitchen");
    }
}
