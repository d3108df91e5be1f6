package crumbclock.methods;

import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Wait;
import crumbclock.methods.Expansion.Made;

import java.util.ArrayList;
import java.util.List;

/** The waits of one expansion: along each section, between sections, and from shared batches. */
final class Links {

    private final WorkOrder order;
    private final Expansion expansion;
    private final List<Wait> waits = new ArrayList<>();
    private final List<LifeLimit> batchLives = new ArrayList<>();

    private Links(WorkOrder order, Expansion expansion) {
        this.order = order;
        this.expansion = expansion;
    }

    static Links of(WorkOrder order, Expansion expansion) {
        var links = new Links(order, expansion);
        for (Made step : expansion.made()) {
            links.linkBefore(step);
            step.template().after().forEach(after -> links.linkAfter(step, after));
        }
        return links;
    }

    List<Wait> waits() {
        return List.copyOf(waits);
    }

    /** How long what came from a shared batch keeps until each step that uses it. */
    List<LifeLimit> batchLives() {
        return List.copyOf(batchLives);
    }

    private void linkBefore(Made step) {
        var wait = step.template().waitBefore();
        expansion.before(step).ifPresent(before -> waits.add(
                new Wait(before.id(), step.id(), wait.leastMinutes(), most(wait.mostMinutes()))));
    }

    private void linkAfter(Made step, AfterTemplate after) {
        var section = after.step().isEmpty() ? section(after.section()) : expansion.sectionOf(after.step());
        if (order.stock().holds(section)) {
            return;
        }
        if (order.fromBatch(section)) {
            linkBatch(step, after, section);
        } else {
            var before = after.step().isEmpty() ? expansion.ends(section, step.tier())
                    : expansion.find(after.step(), step.tier());
            before.forEach(made -> waits.add(
                    new Wait(made.id(), step.id(), after.leastMinutes(), most(after.mostMinutes()))));
        }
    }

    private Section section(String id) {
        return order.method().sections().stream().filter(section -> section.id().equals(id)).findFirst().orElseThrow();
    }

    private void linkBatch(Made step, AfterTemplate after, Section section) {
        String end = order.batchEnds().get(section.id());
        var use = section.batch();
        waits.add(new Wait(end, step.id(), Math.max(use.leastMinutes(), after.leastMinutes()),
                Math.min(most(use.mostMinutes()), most(after.mostMinutes()))));
        if (!use.lifeMinutes().isEmpty()) {
            batchLives.add(new LifeLimit(step.id() + "/" + section.id() + "-life", section.id(), order.ownerId(), end,
                    step.id(), List.of(), use.lifeMinutes()));
        }
    }

    private static int most(Integer minutes) {
        return minutes == null ? Wait.NO_MOST : minutes;
    }
}
