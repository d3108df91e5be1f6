package crumbclock.bound;

import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import java.util.List;

/** Which tasks are in a plan that makes certain orders: theirs, those of the batches they use, and all that is recorded. */
final class Scope {

    private final CompiledProblem compiled;

    Scope(CompiledProblem compiled) {
        this.compiled = compiled;
    }

    boolean[] nobody() {
        return new boolean[compiled.tasks.length];
    }

    boolean[] of(List<Integer> orders) {
        boolean[] made = new boolean[compiled.orders.length];
        orders.forEach(order -> made[order] = true);
        boolean[] in = nobody();
        for (Task task : compiled.tasks) {
            boolean used = task.order >= 0 && made[task.order];
            for (int order : compiled.ordersOfOwner[task.owner]) {
                used |= made[order];
            }
            in[task.index] = used || task.fixed;
        }
        return in;
    }
}
