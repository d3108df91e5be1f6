package crumbclock.engine.decode;

import crumbclock.domain.plan.Cleaning;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.engine.book.CavityBook;
import crumbclock.engine.book.IntList;
import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.FullCleans;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Writes the decoder's last timetable down in real time, with all that the audit wants to see. */
public final class TimetableBuilder {

    private final Decoder decoder;
    private final CompiledProblem compiled;
    private final Board board;
    private final CostMeter meter;

    public TimetableBuilder(Decoder decoder) {
        this.decoder = decoder;
        compiled = decoder.compiled();
        board = decoder.board();
        meter = new CostMeter(decoder);
    }

    public Timetable build() {
        Map<Task, List<UnitUse>> units = new PieceDealer(board).deal();
        List<PlacedStep> steps = new ArrayList<>();
        List<PlacedTouch> touches = new ArrayList<>();
        List<PanPlace> pans = new ArrayList<>();
        for (Task task : compiled.tasks) {
            if (board.placed[task.index]) {
                steps.add(step(task, units.getOrDefault(task, List.of())));
                touches(task, touches);
                if (board.cavity[task.index] >= 0) {
                    pans.addAll(board.cavities[board.cavity[task.index]].pans(task));
                }
            }
        }
        steps.sort(Comparator.comparingInt(PlacedStep::start).thenComparing(PlacedStep::stepId));
        touches.sort(Comparator.comparing(PlacedTouch::when).thenComparing(PlacedTouch::stepId));
        pans.sort(Comparator.comparing(PanPlace::stepId).thenComparingInt(PanPlace::pan));
        List<OvenRun> runs = new ArrayList<>();
        for (CavityBook cavity : board.cavities) {
            runs.addAll(cavity.runs());
        }
        runs.sort(Comparator.comparingInt(OvenRun::from).thenComparing(OvenRun::cavityId));
        List<Placement> placements = board.shelves.placements();
        placements.sort(Comparator.comparing(Placement::when).thenComparing(Placement::stepId)
                .thenComparingInt(Placement::piece));
        return new Timetable(steps, touches, runs, pans, placements, cleanings(units), outcomes());
    }

    private PlacedStep step(Task task, List<UnitUse> units) {
        List<PersonWork> work = new ArrayList<>();
        if (task.works) {
            List<Span> spans = new ArrayList<>();
            IntList list = board.spans[task.index];
            for (int span = 0; span < list.size(); span += 2) {
                spans.add(compiled.mirror(new Span(list.get(span), list.get(span + 1))));
            }
            Collections.sort(spans);
            for (int person : board.workers[task.index]) {
                work.add(new PersonWork(compiled.kitchen().people().get(person).id(), spans));
            }
        }
        Span span = compiled.mirror(new Span(board.start[task.index], board.end[task.index]));
        String surface = board.surface[task.index] < 0 ? ""
                : compiled.kitchen().surfaces().get(board.surface[task.index]).id();
        String cavity = board.cavity[task.index] < 0 ? "" : board.cavities[board.cavity[task.index]].id();
        return new PlacedStep(task.step.id(), span.start(), span.end(), work, units, surface, cavity);
    }

    private void touches(Task task, List<PlacedTouch> touches) {
        if (task.handsOn) {
            return;
        }
        int start = board.start[task.index];
        int end = board.end[task.index];
        if (task.inMinutes > 0 && board.inPerson[task.index] >= 0) {
            touches.add(touch(task, true, board.inPerson[task.index], start, start + task.inMinutes));
        }
        if (task.outMinutes > 0 && board.outPerson[task.index] >= 0) {
            touches.add(touch(task, false, board.outPerson[task.index], end - task.outMinutes, end));
        }
    }

    private PlacedTouch touch(Task task, boolean first, int person, int from, int until) {
        return new PlacedTouch(task.step.id(), first != compiled.mirrored ? TouchEnd.PUT_IN : TouchEnd.TAKE_OUT,
                compiled.kitchen().people().get(person).id(), compiled.mirror(new Span(from, until)));
    }

    /** A full clean right before each use that must be free from something the piece held before. */
    private List<Cleaning> cleanings(Map<Task, List<UnitUse>> units) {
        record Held(Task task, UnitUse use) {
        }
        Map<String, List<Held>> byPiece = new java.util.TreeMap<>();
        for (Task task : compiled.tasks) {
            for (UnitUse use : units.getOrDefault(task, List.of())) {
                byPiece.computeIfAbsent(use.poolId() + "\t" + use.unit(), key -> new ArrayList<>()).add(new Held(task, use));
            }
        }
        Map<String, FullCleans> cleans = new HashMap<>();
        for (int pool = 0; pool < board.pools.length; pool++) {
            cleans.put(compiled.kitchen().pools().get(pool).id(), compiled.fullCleans(pool));
        }
        List<Cleaning> cleanings = new ArrayList<>();
        for (List<Held> uses : byPiece.values()) {
            uses.sort(Comparator.comparingInt((Held held) -> held.use.from()).thenComparingInt(held -> held.use.until()));
            long before = 0;
            for (Held held : uses) {
                UnitUse use = held.use;
                if ((held.task.freeFrom & before) != 0) {
                    int minutes = cleans.get(use.poolId()).minutes(held.task.freeFrom & before);
                    cleanings.add(new Cleaning(use.poolId(), use.unit(), new Span(use.from() - minutes, use.from())));
                    before &= ~cleans.get(use.poolId()).cleaned(minutes);
                }
                before |= held.task.contains;
            }
        }
        cleanings.sort(Comparator.comparing(Cleaning::when).thenComparing(Cleaning::poolId).thenComparingInt(Cleaning::unit));
        return cleanings;
    }

    private List<Outcome> outcomes() {
        List<Outcome> outcomes = new ArrayList<>();
        for (CompiledOrder order : compiled.orders) {
            String id = compiled.problem.orders().get(order.index()).id();
            if (!decoder.isPossible(order.index())) {
                outcomes.add(new Outcome(id, false, -1, -1, 0, 0, List.of(), List.of()));
                continue;
            }
            int moment = meter.moment(order);
            outcomes.add(new Outcome(id, true, meter.ready(order), moment, meter.buffer(order),
                    Math.max(0, moment - order.until()), List.of(), List.of()));
        }
        return outcomes;
    }
}
