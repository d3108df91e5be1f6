package crumbclock.bench.kitchen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The kitchen file of a made-up shop, as maps and lists that a JSON writer takes. */
final class ShopFile {

    private static final String[] WEEK =
            {"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"};

    private final ShopSize size;

    private ShopFile(ShopSize size) {
        this.size = size;
    }

    static Map<String, Object> of(ShopSize size) {
        ShopFile shop = new ShopFile(size);
        Map<String, Object> kitchen = new LinkedHashMap<>();
        kitchen.put("name", "A made-up shop for " + size.cakes() + " cakes");
        kitchen.put("people", IntStream.range(0, size.people()).mapToObj(shop::person).toList());
        kitchen.put("ovens", IntStream.range(0, size.each(0.125, 1)).mapToObj(ShopFile::oven).toList());
        kitchen.put("stores", shop.stores());
        kitchen.put("surfaces", List.of(
                Map.of("id", "racks", "kind", "rack", "area", size.each(0.35, 1) + " m2"),
                Map.of("id", "bench", "kind", "bench", "area", size.each(0.15, 1) + " m2")));
        kitchen.put("equipment", shop.equipment());
        kitchen.put("openingHours", Map.of("everyday", "05:30-20:00"));
        return kitchen;
    }

    /** Early and late shifts in turn; in a long problem two days off in a row, another pair for each. */
    private Map<String, Object> person(int index) {
        boolean early = index % 2 == 0;
        Map<String, Object> shifts = new LinkedHashMap<>();
        shifts.put("everyday", early ? "06:00-14:30" : "10:30-19:00");
        if (size.days() > 6) {
            shifts.put(WEEK[index % 7], List.of());
            shifts.put(WEEK[(index + 1) % 7], List.of());
        }
        Map<String, Object> person = new LinkedHashMap<>();
        person.put("id", "p" + (index + 1));
        person.put("name", "Person " + (index + 1));
        person.put("shifts", shifts);
        person.put("breaks", Map.of("everyday", early ? "10:30-11:00" : "14:30-15:00"));
        person.put("skills", index % 3 < 2 ? List.of("baking", "decorating", "writing", "sugar-work")
                : List.of("baking", "decorating"));
        if (index % 5 == 4) {
            person.put("pace", Map.of("coating", 1.3, "piping", 1.3, "filling", 1.3, "decorating", 1.3));
        }
        return person;
    }

    /** A convection oven with three racks of four 8 in pans each. */
    private static Map<String, Object> oven(int index) {
        Map<String, Object> rack = Map.of("width", 735, "depth", 540, "clearHeight", 150);
        Map<String, Object> oven = new LinkedHashMap<>();
        oven.put("id", "oven-" + (index + 1));
        oven.put("preheatMinutes", 25);
        oven.put("racks", List.of(rack, rack, rack));
        return oven;
    }

    private List<Map<String, Object>> stores() {
        List<Map<String, Object>> stores = new ArrayList<>();
        for (int index = 0; index < size.each(0.12, 1); index++) {
            stores.add(store("fridge-" + (index + 1), "fridge", 25, 5, 620, 580, 270));
        }
        stores.add(store("freezer", "freezer", 10, size.each(0.2, 3), 440, 380, 180));
        stores.add(store("cool-room", "cool room", 25, size.each(0.3, 2), 1200, 500, 450));
        stores.add(store("front-room", "ambient", 25, size.each(0.3, 2), 1200, 500, 450));
        return stores;
    }

    private static Map<String, Object> store(String id, String kind, int gap, int shelves, int width, int depth, int height) {
        Map<String, Object> store = new LinkedHashMap<>();
        store.put("id", id);
        store.put("kind", kind);
        store.put("gap", gap);
        store.put("wallGap", 0);
        store.put("humid", kind.equals("fridge"));
        store.put("shelves", IntStream.rangeClosed(1, shelves).mapToObj(shelf -> Map.of("id", "s" + shelf,
                "width", width, "depth", depth, "clearHeight", height)).toList());
        return store;
    }

    private List<Map<String, Object>> equipment() {
        List<Map<String, Object>> pools = new ArrayList<>();
        pools.add(pool("mixer", size.each(0.3, 2), 4));
        pools.get(0).put("capacity", "7.6 L");
        pools.get(0).put("deepCleanMinutes", 15);
        pools.add(pool("turntable", size.each(0.3, 2), 2));
        pools.add(pool("pan-6in", size.each(1, 4), 4));
        pools.add(pool("pan-8in", size.each(1.5, 6), 4));
        pools.add(pool("pan-10in", size.each(0.5, 4), 4));
        pools.add(pool("pan-9x13in", size.each(0.25, 2), 4));
        pools.add(pool("cupcake-tin", size.each(1, 4), 4));
        pools.add(pool("car", size.each(0.05, 1), 0));
        return pools;
    }

    private static Map<String, Object> pool(String id, int count, int cleanMinutes) {
        Map<String, Object> pool = new LinkedHashMap<>();
        pool.put("id", id);
        pool.put("count", count);
        pool.put("cleanMinutes", cleanMinutes);
        return pool;
    }
}
