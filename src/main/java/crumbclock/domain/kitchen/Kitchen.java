package crumbclock.domain.kitchen;

import crumbclock.units.Span;
import java.util.List;

/**
 * Everything the cakes share.
 *
 * @param opening when hands may work (rule R14): sorted, disjoint; one span over the whole horizon when nothing is said
 */
public record Kitchen(String name, List<Person> people, List<Cavity> cavities, List<Store> stores,
        List<Surface> surfaces, List<Pool> pools, List<Span> opening) {

    public Kitchen {
        people = List.copyOf(people);
        cavities = List.copyOf(cavities);
        stores = List.copyOf(stores);
        surfaces = List.copyOf(surfaces);
        pools = List.copyOf(pools);
        opening = List.copyOf(opening);
    }
}
