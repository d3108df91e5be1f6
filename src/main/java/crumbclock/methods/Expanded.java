package crumbclock.methods;

import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Order;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;

import java.util.List;

/**
 * Requests turned into concrete work.
 *
 * @param steps batches as read, then orders as read: in each the cakes as read, then the hand-over
 */
public record Expanded(List<Order> orders, List<Batch> batches, List<Step> steps, List<Wait> waits,
        List<ColdLimit> coldLimits, List<LifeLimit> lifeLimits, List<FreshnessWish> freshnessWishes, List<Repair> repairs) {

    public Expanded {
        orders = List.copyOf(orders);
        batches = List.copyOf(batches);
        steps = List.copyOf(steps);
        waits = List.copyOf(waits);
        coldLimits = List.copyOf(coldLimits);
        lifeLimits = List.copyOf(lifeLimits);
        freshnessWishes = List.copyOf(freshnessWishes);
        repairs = List.copyOf(repairs);
    }
}
