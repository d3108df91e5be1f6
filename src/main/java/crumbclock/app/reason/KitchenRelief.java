package crumbclock.app.reason;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** Kitchens with more in them than there is: what was there stays as it is, and more comes beside it. */
final class KitchenRelief {

    private static final int ROOMY_MM = 2_000;
    private static final int ROOMY_MM2 = 1_000_000_000;
    private static final int HOTTEST_C = 1_000;
    /** Cannot clash with an id from a file, where ids hold no blanks. */
    private static final String ADDED = "added ";

    private KitchenRelief() {
    }

    static Problem people(Problem problem) {
        Kitchen kitchen = problem.kitchen();
        List<Span> always = List.of(whole(problem));
        Set<String> skills = new TreeSet<>();
        problem.steps().forEach(step -> {
            step.handsOn().ifPresent(work -> skills.add(work.skill()));
            step.putIn().ifPresent(touch -> skills.add(touch.skill()));
            step.takeOut().ifPresent(touch -> skills.add(touch.skill()));
        });
        List<Person> people = new ArrayList<>();
        kitchen.people().forEach(person -> people.add(new Person(person.id(), person.name(), always, List.of(),
                person.skills(), person.paceByWork(), Integer.MAX_VALUE)));
        for (int more = 0; more < Math.min(Relief.MANY / 4, problem.steps().size()); more++) {
            people.add(new Person(ADDED + more, ADDED + more, always, List.of(), skills, Map.of(), Integer.MAX_VALUE));
        }
        return with(problem, people, kitchen.cavities(), kitchen.stores(), kitchen.surfaces(), kitchen.pools());
    }

    /** The people there are, at all hours. */
    static Problem hours(Problem problem) {
        Kitchen kitchen = problem.kitchen();
        return with(problem, kitchen.people().stream().map(person -> new Person(person.id(), person.name(),
                List.of(whole(problem)), List.of(), person.skills(), person.paceByWork(), Integer.MAX_VALUE)).toList(),
                kitchen.cavities(), kitchen.stores(), kitchen.surfaces(), kitchen.pools());
    }

    static Problem equipment(Problem problem) {
        Kitchen kitchen = problem.kitchen();
        List<Pool> pools = kitchen.pools().stream().map(pool -> new Pool(pool.id(), pool.name(),
                pool.count() + Relief.MANY, Integer.MAX_VALUE, 0, pool.deepCleanMinutes(), pool.deepCleanByAllergen(),
                pool.away())).toList();
        List<Surface> surfaces = new ArrayList<>(kitchen.surfaces());
        for (PlaceKind kind : List.of(PlaceKind.RACK, PlaceKind.BENCH)) {
            surfaces.add(new Surface(ADDED + kind, ADDED + kind, kind, ROOMY_MM2, List.of()));
        }
        return with(problem, kitchen.people(), kitchen.cavities(), kitchen.stores(), surfaces, pools);
    }

    static Problem ovens(Problem problem) {
        Kitchen kitchen = problem.kitchen();
        var rack = new Rack(ROOMY_MM, ROOMY_MM, ROOMY_MM);
        int bakes = (int) problem.steps().stream().filter(step -> step.oven().isPresent()).count();
        List<Cavity> cavities = new ArrayList<>(kitchen.cavities());
        for (int more = 0; more < Math.min(Relief.MANY, bakes); more++) {
            cavities.add(new Cavity(ADDED + more, ADDED + more, List.of(rack, rack), 0, HOTTEST_C, 0, 0, 0,
                    problem.clock().horizonMinutes(), 0, 0, List.of()));
        }
        return with(problem, kitchen.people(), cavities, kitchen.stores(), kitchen.surfaces(), kitchen.pools());
    }

    /** More of each kind of store that a step names, like the first of its kind where there is one. */
    static Problem shelves(Problem problem) {
        Kitchen kitchen = problem.kitchen();
        Set<PlaceKind> kinds = new TreeSet<>();
        int pieces = 0;
        for (Step step : problem.steps()) {
            if (step.place().isPresent()) {
                kinds.addAll(step.place().get().allowed());
                pieces += step.place().get().form().pieces();
            }
        }
        List<Shelf> shelves = new ArrayList<>();
        for (int more = 0; more < Math.min(Relief.MANY, pieces); more++) {
            shelves.add(new Shelf(ADDED + more, ADDED + more, ROOMY_MM, ROOMY_MM, ROOMY_MM, Integer.MAX_VALUE, Set.of(),
                    List.of()));
        }
        List<Store> stores = new ArrayList<>(kitchen.stores());
        for (PlaceKind kind : kinds) {
            if (kind.hasShelves()) {
                var like = kitchen.stores().stream().filter(store -> store.kind() == kind).findFirst();
                stores.add(new Store(ADDED + kind, ADDED + kind, kind, 0, 0, like.map(Store::warmestInC).orElse(HOTTEST_C),
                        like.map(Store::humid).orElse(false), shelves, List.of()));
            }
        }
        return with(problem, kitchen.people(), kitchen.cavities(), stores, kitchen.surfaces(), kitchen.pools());
    }

    static Problem stores(Problem problem) {
        return withStores(problem, store -> new Store(store.id(), store.name(), store.kind(), store.gapMm(),
                store.wallGapMm(), HOTTEST_C, false, store.shelves(), store.away()));
    }

    static Problem allergens(Problem problem) {
        return withStores(problem, store -> new Store(store.id(), store.name(), store.kind(), store.gapMm(),
                store.wallGapMm(), store.warmestInC(), store.humid(), store.shelves().stream().map(shelf -> new Shelf(
                        shelf.id(), shelf.name(), shelf.widthMm(), shelf.depthMm(), shelf.clearHeightMm(),
                        shelf.mostMassGrams(), Set.of(), shelf.goods())).toList(), store.away()));
    }

    static Problem opening(Problem problem) {
        Kitchen kitchen = problem.kitchen();
        return problem.withKitchen(new Kitchen(kitchen.name(), kitchen.people(), kitchen.cavities(),
                kitchen.stores(), kitchen.surfaces(), kitchen.pools(), List.of(whole(problem))));
    }

    private static Problem withStores(Problem problem, Function<Store, Store> change) {
        Kitchen kitchen = problem.kitchen();
        return with(problem, kitchen.people(), kitchen.cavities(), kitchen.stores().stream().map(change).toList(),
                kitchen.surfaces(), kitchen.pools());
    }

    private static Problem with(Problem problem, List<Person> people, List<Cavity> cavities, List<Store> stores,
            List<Surface> surfaces, List<Pool> pools) {
        return problem.withKitchen(new Kitchen(problem.kitchen().name(), people, cavities, stores, surfaces,
                pools, problem.kitchen().opening()));
    }

    private static Span whole(Problem problem) {
        return new Span(0, problem.clock().horizonMinutes());
    }
}
