package crumbclock.domain.request;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A shared batch as asked for: one making of a component for all cakes that name it.
 *
 * @param amount  in the mixer pool's measure (g or mL); 0 to add up what the cakes need
 * @param inStock it is there already: nothing of it is made
 */
public record BatchRequest(String id, String title, String methodId, int amount, int earliest, Set<String> contains,
        Set<String> freeFrom, Map<String, String> options, boolean inStock) {

    /** One that has to be made. */
    public BatchRequest(String id, String title, String methodId, int amount, int earliest, Set<String> contains,
            Set<String> freeFrom, Map<String, String> options) {
        this(id, title, methodId, amount, earliest, contains, freeFrom, options, false);
    }

    public BatchRequest {
        contains = Collections.unmodifiableSortedSet(new TreeSet<>(contains));
        freeFrom = Collections.unmodifiableSortedSet(new TreeSet<>(freeFrom));
        options = Collections.unmodifiableSortedMap(new TreeMap<>(options));
    }
}
