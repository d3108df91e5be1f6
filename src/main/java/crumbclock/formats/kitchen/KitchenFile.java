package crumbclock.formats.kitchen;

import java.util.List;
import java.util.Map;

/**
 * A kitchen as its file has it: measures and times still text. Absent keys take the defaults that {@code kitchen.schema.json}
 * states; what has no default there stays null.
 */
public record KitchenFile(String name, List<PersonEntry> people, List<OvenEntry> ovens, List<StoreEntry> stores,
        List<SurfaceEntry> surfaces, List<PoolEntry> equipment, Map<String, List<String>> openingHours) {

    public KitchenFile {
        people = orNone(people);
        ovens = orNone(ovens);
        stores = orNone(stores);
        surfaces = orNone(surfaces);
        equipment = orNone(equipment);
    }

    /** A person; times of day by weekday or date. */
    public record PersonEntry(String id, String name, Map<String, List<String>> shifts, Map<String, List<String>> breaks,
            List<String> skills, Map<String, Double> pace, Double mostHoursADay) {

        public PersonEntry {
            name = or(name, id);
            breaks = or(breaks, Map.of());
            skills = orNone(skills);
            pace = or(pace, Map.of());
            mostHoursADay = or(mostHoursADay, 24.0);
        }
    }

    /** An oven: with racks of its own, or with cavities that take from it what they do not say. */
    public record OvenEntry(String id, String name, List<RackEntry> racks, List<OvenEntry> cavities, Integer preheatMinutes,
            String leastTemperature, String mostTemperature, Integer upPerTenC, Integer downPerTenC, Integer keepHotMinutes,
            String wallGap, String panGap, List<AwayEntry> away) {
    }

    public record RackEntry(String width, String depth, String clearHeight) {
    }

    /** A stretch in which something cannot be used; a missing end is open. */
    public record AwayEntry(Integer unit, String from, String until) {
    }

    public record StoreEntry(String id, String name, String kind, String gap, String wallGap, String warmestIn, Boolean humid,
            List<ShelfEntry> shelves, List<AwayEntry> away) {

        public StoreEntry {
            name = or(name, id);
            gap = or(gap, "20");
            wallGap = or(wallGap, "10");
            warmestIn = or(warmestIn, "30");
            humid = or(humid, false);
            away = orNone(away);
        }
    }

    public record ShelfEntry(String id, String name, String width, String depth, String clearHeight, String mostMass,
            List<String> freeFrom, List<GoodsEntry> goods) {

        public ShelfEntry {
            name = or(name, id);
            freeFrom = orNone(freeFrom);
            goods = orNone(goods);
        }
    }

    public record GoodsEntry(String name, String x, String y, String width, String depth, String height, String mass,
            String from, String until) {
    }

    public record SurfaceEntry(String id, String name, String kind, String area, List<AwayEntry> away) {

        public SurfaceEntry {
            name = or(name, id);
            away = orNone(away);
        }
    }

    public record PoolEntry(String id, String name, Integer count, String capacity, Integer cleanMinutes, Integer deepCleanMinutes,
            Map<String, Integer> deepCleanByAllergen, List<AwayEntry> away) {

        public PoolEntry {
            name = or(name, id);
            count = or(count, 1);
            cleanMinutes = or(cleanMinutes, 0);
            deepCleanMinutes = or(deepCleanMinutes, 15);
            deepCleanByAllergen = or(deepCleanByAllergen, Map.of());
            away = orNone(away);
        }
    }

    private static <T> T or(T value, T fallback) {
        return value == null ? fallback : value;
    }

    private static <T> List<T> orNone(List<T> values) {
        return or(values, List.of());
    }
}
