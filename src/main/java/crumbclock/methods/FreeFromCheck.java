package crumbclock.methods;

import crumbclock.domain.work.Step;

import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;

/** A cake that is made with what it must be free from cannot be planned into being right. */
final class FreeFromCheck {

    private final Contents contents;
    private final Consumer<ExpansionFault> faults;

    FreeFromCheck(Contents contents, Consumer<ExpansionFault> faults) {
        this.contents = contents;
        this.faults = faults;
    }

    /** Tells of the first step of the cake or batch that holds an allergen which it must be free from. */
    void check(String orderId, String ownerId, List<Step> steps) {
        for (Step step : steps) {
            if (step.ownerId().equals(ownerId)) {
                var both = new TreeSet<>(contents.in(step.id()));
                both.retainAll(step.freeFrom());
                if (!both.isEmpty()) {
                    faults.accept(new ExpansionFault(orderId, ownerId, "must be free from " + String.join(", ", both)
                            + ", but step " + step.id() + " contains it; expected another method, option or batch"));
                    return;
                }
            }
        }
    }
}
