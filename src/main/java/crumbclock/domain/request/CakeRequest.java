package crumbclock.domain.request;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * One cake as ordered.
 *
 * @param id        unique among cakes and batches: {@code A1} or {@code A1/2} for the second cake of an order
 * @param tiers     from the bottom up, at least one
 * @param pieces    for small cakes made by the dozen: how many; 1 for a single cake
 * @param batches   component of the method → shared batch that it is taken from, or {@link #IN_STOCK}; components not named are made
 *                  for this cake alone
 * @param options   choices that the method offers, by name
 * @param contains  allergens beyond those of the method
 */
public record CakeRequest(String id, String title, String methodId, List<TierRequest> tiers, int pieces, int servings,
        String message, Set<String> contains, Set<String> freeFrom, Map<String, String> batches,
        Map<String, String> options) {

    /** Stands for a batch in {@code batches} when the component is there already and is not made. */
    public static final String IN_STOCK = "stock";

    public CakeRequest {
        tiers = List.copyOf(tiers);
        contains = Collections.unmodifiableSortedSet(new TreeSet<>(contains));
        freeFrom = Collections.unmodifiableSortedSet(new TreeSet<>(freeFrom));
        batches = Collections.unmodifiableSortedMap(new TreeMap<>(batches));
        options = Collections.unmodifiableSortedMap(new TreeMap<>(options));
    }
}
