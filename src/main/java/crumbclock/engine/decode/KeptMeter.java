package crumbclock.engine.decode;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.KeptStep;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Adds up what the board's timetable costs by W08: how far it is from the plan that people already have. */
final class KeptMeter {

    private static final int NOBODY = -1;

    private final CompiledProblem compiled;
    private final Board board;
    private final int now;
    private final int movedMinute;
    private final int otherHands;
    private final Task[] tasks;
    private final int[] starts;
    private final boolean[][] works;
    /** Who touches it at its abstract beginning, and at its abstract end. */
    private final int[] in;
    private final int[] out;

    KeptMeter(Board board) {
        this.board = board;
        compiled = board.compiled;
        KeptPlan kept = compiled.problem.kept();
        now = kept.now();
        movedMinute = compiled.problem.weights().movedMinute();
        otherHands = compiled.problem.weights().otherHands();
        Map<String, Task> byId = new HashMap<>();
        for (Task task : compiled.tasks) {
            byId.put(task.step.id(), task);
        }
        List<KeptStep> steps = kept.steps().stream().filter(step -> byId.containsKey(step.stepId())).toList();
        tasks = new Task[steps.size()];
        starts = new int[tasks.length];
        in = new int[tasks.length];
        out = new int[tasks.length];
        works = new boolean[tasks.length][compiled.kitchen().people().size()];
        Map<String, Integer> people = new HashMap<>();
        for (Person person : compiled.kitchen().people()) {
            people.put(person.id(), people.size());
        }
        for (int index = 0; index < tasks.length; index++) {
            KeptStep step = steps.get(index);
            tasks[index] = byId.get(step.stepId());
            starts[index] = step.start();
            int putIn = people.getOrDefault(step.putIn(), NOBODY);
            int takeOut = people.getOrDefault(step.takeOut(), NOBODY);
            in[index] = compiled.mirrored ? takeOut : putIn;
            out[index] = compiled.mirrored ? putIn : takeOut;
            for (String person : step.people()) {
                if (people.containsKey(person)) {
                    works[index][people.get(person)] = true;
                }
            }
        }
    }

    long points() {
        long points = 0;
        for (int index = 0; index < tasks.length; index++) {
            int task = tasks[index].index;
            if (board.placed[task]) {
                int start = compiled.realStart(board.start[task], board.end[task]);
                int moved = Math.min(KeptPlan.MOST_MOVED, Math.abs(start - starts[index]));
                long each = (long) moved * movedMinute + (long) others(index) * otherHands;
                points += each * factor(Math.min(start, starts[index]) - now);
            }
        }
        return points;
    }

    /** People who do what they did not know of, and touches by such. */
    private int others(int index) {
        Task task = tasks[index];
        int others = 0;
        if (task.works) {
            for (int person : board.workers[task.index]) {
                others += works[index][person] ? 0 : 1;
            }
        } else if (!task.handsOn) {
            others += isOther(board.inPerson[task.index], in[index]) + isOther(board.outPerson[task.index], out[index]);
        }
        return others;
    }

    private static int isOther(int person, int known) {
        return person != NOBODY && person != known ? 1 : 0;
    }

    private static int factor(int lead) {
        if (lead < KeptPlan.SOON_MINUTES) {
            return KeptPlan.SOON_FACTOR;
        }
        return lead < KeptPlan.DAY_MINUTES ? KeptPlan.DAY_FACTOR : 1;
    }
}
