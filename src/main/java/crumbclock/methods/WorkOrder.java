package crumbclock.methods;

import java.util.Map;
import java.util.Set;

/**
 * Everything that one expansion of a method needs to know.
 *
 * @param ownerId    cake or batch
 * @param contains   allergens beyond the method's
 * @param freeFrom   allergens that it must not meet
 * @param earliest   no step before this minute
 * @param handOverId the order's hand-over step; empty when there is none
 * @param batchEnds  section → last step of the shared batch that it is taken from
 * @param stock      sections that are there already
 * @param poolIds    pools that the kitchen has
 */
record WorkOrder(String ownerId, Method method, Scope scope, Choices choices, Set<String> contains,
        Set<String> freeFrom, int earliest, String handOverId, Map<String, String> batchEnds,
        Stock stock, Set<String> poolIds) {

    boolean fromBatch(Section section) {
        return batchEnds.containsKey(section.id());
    }
}
