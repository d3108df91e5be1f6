package crumbclock.domain.kitchen;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One shelf of a store. Positions are measured from the front left corner as seen from the door: x to the right,
 * y to the back.
 *
 * @param clearHeightMm  nothing on the shelf is taller
 * @param mostMassGrams  all that stands here at one moment, goods included; {@link Integer#MAX_VALUE} for no limit
 * @param freeFrom       allergens that no item standing here may contain (rule R13)
 * @param goods          household or other things that stand here at known times
 */
public record Shelf(String id, String name, int widthMm, int depthMm, int clearHeightMm, int mostMassGrams,
        Set<String> freeFrom, List<Goods> goods) {

    public Shelf {
        freeFrom = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(freeFrom));
        goods = List.copyOf(goods);
    }
}
