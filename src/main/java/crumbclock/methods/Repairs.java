package crumbclock.methods;

import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.methods.Expansion.Made;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;

/** What can be done about the waits of one expansion: a repair for each of them that the method has one for. */
final class Repairs {

    private final Expansion expansion;
    private final List<Wait> waits;
    private final List<Repair> repairs = new ArrayList<>();

    private Repairs(Expansion expansion, List<Wait> waits) {
        this.expansion = expansion;
        this.waits = waits;
    }

    /** @param waits of the expansion; a repair of one that the options leave out falls away */
    static List<Repair> of(WorkOrder order, Expansion expansion, List<Wait> waits) {
        var repairs = new Repairs(expansion, waits);
        order.method().repairs().forEach(repairs::add);
        return List.copyOf(repairs.repairs);
    }

    private void add(RepairTemplate template) {
        for (Made to : expansion.find(template.to(), Made.ALL_TIERS)) {
            for (Made from : expansion.find(template.from(), to.tier())) {
                if (waits.stream().anyMatch(wait -> wait.fromStepId().equals(from.id()) && wait.toStepId().equals(to.id()))) {
                    add(template, from, to);
                }
            }
        }
    }

    private void add(RepairTemplate template, Made from, Made to) {
        Made about = to.tier() == Made.ALL_TIERS ? from : to;
        List<Step> steps = new ArrayList<>();
        List<Wait> own = new ArrayList<>();
        String before = from.id();
        for (StepTemplate each : template.steps()) {
            var made = expansion.beside(about, each);
            if (made.isPresent()) {
                own.add(wait(before, made.get().id(), each.waitBefore()));
                steps.add(made.get());
                before = made.get().id();
            }
        }
        if (!steps.isEmpty()) {
            own.add(wait(before, to.id(), template.waitAfter()));
            repairs.add(new Repair(from.id(), to.id(), EnumSet.copyOf(template.missed()), steps, own));
        }
    }

    private static Wait wait(String from, String to, WaitTemplate wait) {
        return new Wait(from, to, wait.leastMinutes(), wait.mostMinutes() == null ? Wait.NO_MOST : wait.mostMinutes());
    }
}
