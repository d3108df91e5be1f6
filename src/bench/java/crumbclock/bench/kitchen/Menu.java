package crumbclock.bench.kitchen;

import java.util.List;
import java.util.Random;

/** What a made-up shop sells, by how often it is asked for: much that is simple, little that takes a day. */
final class Menu {

    /**
     * One kind of cake.
     *
     * @param share   parts of the whole
     * @param sizes   one of them, by chance
     * @param options as in an order's table
     */
    record Dish(int share, String method, List<String> sizes, String layers, int pieces, String options) {
    }

    private static final List<Dish> DISHES = List.of(
            new Dish(33, "charity-border-cake", List.of("8 in", "8 in", "6 in"), "2", 0, ""),
            new Dish(25, "cupcakes-swirl", List.of("70 mm"), "", 24, "ahead=yes"),
            new Dish(12, "abc-layer-cake", List.of("6 in", "8 in", "10 in"), "3", 0, ""),
            new Dish(10, "cream-cheese-sheet-cake", List.of("9 x 13 in"), "1", 0, "nuts=none"),
            new Dish(5, "cheesecake", List.of("9 in"), "1", 0, ""),
            new Dish(5, "smbc-drip-cake", List.of("6 in", "8 in"), "3", 0, ""),
            new Dish(4, "naked-berry-cake", List.of("8 in"), "3", 0, ""),
            new Dish(3, "smbc-marbled-cake", List.of("8 in"), "3", 0, ""),
            new Dish(2, "cream-cheese-sheet-cake", List.of("9 x 13 in"), "1", 0, ""),
            new Dish(1, "paste-tiered-cake", List.of("10 in + 6 in"), "2+2", 0, ""));

    private Menu() {
    }

    static Dish any(Random random) {
        int part = random.nextInt(DISHES.stream().mapToInt(Dish::share).sum());
        for (Dish dish : DISHES) {
            part -= dish.share();
            if (part < 0) {
                return dish;
            }
        }
        throw new AssertionError("shares add up");
    }
}
