package crumbclock.domain.change;

import crumbclock.domain.change.KitchenChange.Away;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Pool.PoolAway;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.units.Span;
import crumbclock.units.Spans;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Applies changes to a kitchen, whether somebody wrote them down or they happened. */
public final class KitchenChanges {

    private KitchenChanges() {
    }

    /**
     * The kitchen with the change.
     *
     * @throws IllegalArgumentException when the change names something that is not there, or an id that is taken
     */
    public static Kitchen changed(Kitchen kitchen, KitchenChange change) {
        if (change instanceof Away away) {
            return away(kitchen, away);
        }
        if (change instanceof KitchenChange.MoreHours more) {
            return withPeople(kitchen, one(kitchen.people(), person -> person.id().equals(more.personId()),
                    person -> withShifts(person, Spans.plus(person.shifts(), more.when()))));
        }
        if (change instanceof KitchenChange.MorePieces more) {
            return withPools(kitchen, one(kitchen.pools(), pool -> pool.id().equals(more.poolId()),
                    pool -> withCount(pool, pool.count() + more.pieces(), pool.away())));
        }
        if (change instanceof KitchenChange.GoodsOn goods) {
            return withShelves(kitchen, goods.storeId(), shelves -> one(shelves, shelf -> shelf.id().equals(goods.shelfId()),
                    shelf -> withGoods(shelf, joined(shelf.goods(), List.of(goods.goods())))));
        }
        if (change instanceof KitchenChange.ShelfLike like) {
            return withShelves(kitchen, like.storeId(), shelves -> {
                var model = shelves.stream().filter(shelf -> shelf.id().equals(like.shelfId())).findFirst().orElseThrow(
                        () -> new IllegalArgumentException("no shelf " + like.shelfId()));
                return joined(shelves, List.of(new Shelf(like.newId(), like.newId(), model.widthMm(), model.depthMm(),
                        model.clearHeightMm(), model.mostMassGrams(), model.freeFrom(), List.of())));
            });
        }
        return brought(kitchen, ((KitchenChange.Brought) change).parts());
    }

    private static Kitchen brought(Kitchen kitchen, Kitchen parts) {
        return new Kitchen(kitchen.name(), added(kitchen.people(), parts.people(), Person::id),
                added(kitchen.cavities(), parts.cavities(), Cavity::id), added(kitchen.stores(), parts.stores(), Store::id),
                added(kitchen.surfaces(), parts.surfaces(), Surface::id), added(kitchen.pools(), parts.pools(), Pool::id),
                kitchen.opening());
    }

    private static Kitchen away(Kitchen kitchen, Away away) {
        return switch (away.kind()) {
            case PERSON -> withPeople(kitchen, one(kitchen.people(), person -> person.id().equals(away.id()),
                    person -> withShifts(person, Spans.minus(person.shifts(), away.when()))));
            case OVEN -> new Kitchen(kitchen.name(), kitchen.people(), one(kitchen.cavities(), oven -> oven.id().equals(away.id()),
                    oven -> new Cavity(oven.id(), oven.name(), oven.racks(), oven.leastC(), oven.mostC(), oven.preheatMinutes(),
                            oven.upPerTenC(), oven.downPerTenC(), oven.keepHotMinutes(), oven.wallGapMm(), oven.panGapMm(),
                            Spans.plus(oven.away(), away.when()))),
                    kitchen.stores(), kitchen.surfaces(), kitchen.pools(), kitchen.opening());
            case STORE -> withStores(kitchen, one(kitchen.stores(), store -> store.id().equals(away.id()),
                    store -> with(store, store.shelves(), Spans.plus(store.away(), away.when()))));
            case SHELF -> {
                int slash = away.id().indexOf('/');
                yield withShelves(kitchen, away.id().substring(0, slash), shelves -> one(shelves,
                        shelf -> shelf.id().equals(away.id().substring(slash + 1)), shelf -> full(shelf, away)));
            }
            case SURFACE -> new Kitchen(kitchen.name(), kitchen.people(), kitchen.cavities(), kitchen.stores(),
                    one(kitchen.surfaces(), surface -> surface.id().equals(away.id()), surface -> new Surface(surface.id(),
                            surface.name(), surface.kind(), surface.areaMm2(), Spans.plus(surface.away(), away.when()))),
                    kitchen.pools(), kitchen.opening());
            case EQUIPMENT -> withPools(kitchen, one(kitchen.pools(), pool -> pool.id().equals(away.id()),
                    pool -> withCount(pool, pool.count(), piecesAway(pool, away))));
        };
    }

    /** A shelf that cannot be used is one that is full; what stood there then is out of the way. */
    private static Shelf full(Shelf shelf, Away away) {
        List<Goods> goods = new ArrayList<>();
        for (Goods there : shelf.goods()) {
            Spans.minus(List.of(there.when()), away.when()).forEach(when -> goods.add(new Goods(there.name(), there.xMm(), there.yMm(),
                    there.widthMm(), there.depthMm(), there.heightMm(), there.massGrams(), when)));
        }
        goods.add(new Goods("not to be used", 0, 0, shelf.widthMm(), shelf.depthMm(), shelf.clearHeightMm(), 0, away.when()));
        return withGoods(shelf, goods);
    }

    private static List<PoolAway> piecesAway(Pool pool, Away away) {
        List<PoolAway> all = new ArrayList<>(pool.away());
        for (int piece = Math.max(0, pool.count() - away.pieces()); piece < pool.count(); piece++) {
            int unit = piece;
            var times = Spans.plus(pool.away().stream().filter(one -> one.unit() == unit).map(PoolAway::when).toList(), away.when());
            all.removeIf(one -> one.unit() == unit);
            times.forEach(when -> all.add(new PoolAway(unit, when)));
        }
        return all;
    }

    private static Person withShifts(Person person, List<Span> shifts) {
        return new Person(person.id(), person.name(), shifts, person.breaks(), person.skills(), person.paceByWork(),
                person.mostMinutesADay());
    }

    private static Pool withCount(Pool pool, int count, List<PoolAway> away) {
        return new Pool(pool.id(), pool.name(), count, pool.capacity(), pool.cleanMinutes(), pool.deepCleanMinutes(),
                pool.deepCleanByAllergen(), away);
    }

    private static Shelf withGoods(Shelf shelf, List<Goods> goods) {
        return new Shelf(shelf.id(), shelf.name(), shelf.widthMm(), shelf.depthMm(), shelf.clearHeightMm(), shelf.mostMassGrams(),
                shelf.freeFrom(), goods);
    }

    private static Store with(Store store, List<Shelf> shelves, List<Span> away) {
        return new Store(store.id(), store.name(), store.kind(), store.gapMm(), store.wallGapMm(), store.warmestInC(), store.humid(),
                shelves, away);
    }

    private static Kitchen withShelves(Kitchen kitchen, String storeId, UnaryOperator<List<Shelf>> change) {
        return withStores(kitchen, one(kitchen.stores(), store -> store.id().equals(storeId),
                store -> with(store, change.apply(store.shelves()), store.away())));
    }

    private static Kitchen withPeople(Kitchen kitchen, List<Person> people) {
        return new Kitchen(kitchen.name(), people, kitchen.cavities(), kitchen.stores(), kitchen.surfaces(), kitchen.pools(),
                kitchen.opening());
    }

    private static Kitchen withStores(Kitchen kitchen, List<Store> stores) {
        return new Kitchen(kitchen.name(), kitchen.people(), kitchen.cavities(), stores, kitchen.surfaces(), kitchen.pools(),
                kitchen.opening());
    }

    private static Kitchen withPools(Kitchen kitchen, List<Pool> pools) {
        return new Kitchen(kitchen.name(), kitchen.people(), kitchen.cavities(), kitchen.stores(), kitchen.surfaces(), pools,
                kitchen.opening());
    }

    private static <T> List<T> one(List<T> all, Predicate<T> meant, UnaryOperator<T> change) {
        if (all.stream().noneMatch(meant)) {
            throw new IllegalArgumentException("nothing of that name is in the kitchen");
        }
        return all.stream().map(each -> meant.test(each) ? change.apply(each) : each).toList();
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    private static <T> List<T> added(List<T> there, List<T> more, Function<T, String> id) {
        for (T one : more) {
            if (there.stream().anyMatch(other -> id.apply(other).equals(id.apply(one)))) {
                throw new IllegalArgumentException("the id " + id.apply(one) + " is taken");
            }
        }
        return joined(there, more);
    }
}
