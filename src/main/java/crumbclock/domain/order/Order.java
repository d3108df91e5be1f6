package crumbclock.domain.order;

import java.util.List;

/**
 * What somebody asked for.
 *
 * @param cakes             at least one
 * @param importance        factor on its late minutes, at least 1
 * @param bufferWishMinutes wish W01: this long between the last cake's finish and the hand-over
 */
public record Order(String id, String title, List<Cake> cakes, HandOver handOver, int importance,
        int bufferWishMinutes) {

    public Order {
        cakes = List.copyOf(cakes);
    }
}
