package crumbclock.domain.order;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One cake of an order (or one box of cupcakes).
 *
 * @param id           unique among cakes and batches
 * @param title        for people: "8 in vanilla, marbled"
 * @param finishStepId the last step before it waits for hand-over (usually boxing)
 * @param batchIds     shared batches that it uses
 */
public record Cake(String id, String orderId, String title, int servings, String message, Set<String> contains,
        Set<String> freeFrom, String finishStepId, List<String> batchIds) {

    public Cake {
        contains = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(contains));
        freeFrom = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(freeFrom));
        batchIds = List.copyOf(batchIds);
    }
}
