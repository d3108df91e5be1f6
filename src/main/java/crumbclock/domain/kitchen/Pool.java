package crumbclock.domain.kitchen;

import crumbclock.units.Span;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Pieces of equipment that are alike: mixer bowls, pans of one size, turntables, a car.
 *
 * @param count              pieces there are, numbered 0 to count − 1
 * @param capacity           most that one piece holds in the pool's own measure (mL or g); {@link Integer#MAX_VALUE} for no limit
 * @param cleanMinutes       idle minutes between two uses of one piece (rule R06)
 * @param deepCleanMinutes   minutes of a full clean between a use that held an allergen and one that must be free from it (rule R13)
 * @param deepCleanByAllergen full-clean minutes for single allergens where they differ
 * @param away               pieces that cannot be used for a time
 */
public record Pool(String id, String name, int count, int capacity, int cleanMinutes, int deepCleanMinutes,
        Map<String, Integer> deepCleanByAllergen, List<PoolAway> away) {

    public Pool {
        deepCleanByAllergen = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(deepCleanByAllergen));
        away = List.copyOf(away);
    }

    public int deepCleanMinutes(String allergen) {
        return deepCleanByAllergen.getOrDefault(allergen, deepCleanMinutes);
    }

    /** One piece of the pool, gone for a time. */
    public record PoolAway(int unit, Span when) {
    }
}
