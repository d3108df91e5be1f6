package crumbclock.app.promise;

import crumbclock.domain.change.Change;
import crumbclock.domain.change.KitchenChange.MoreHours;
import crumbclock.domain.change.KitchenChange.MorePieces;
import crumbclock.domain.change.KitchenChange.ShelfLike;
import crumbclock.domain.change.WorkChange.ComponentInStock;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** What a kitchen could do to make one more order easier: things in stock, people longer, one shelf or one piece more. Not all will help. */
public final class HelpIdeas {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
    /** A helper who is asked the evening before may come so much earlier, */
    private static final int EARLIER = 90;
    /** and one who is there already may stay so much longer. */
    private static final int LONGER = 60;

    private final Problem asked;
    private final Order order;
    private final int now;
    private final List<Step> own;
    private final List<Idea> ideas = new ArrayList<>();

    private HelpIdeas(Problem asked, String orderId, int now) {
        this.asked = asked;
        this.now = now;
        this.order = asked.orders().stream().filter(one -> one.id().equals(orderId)).findFirst().orElseThrow();
        Set<String> owners = new TreeSet<>(List.of(orderId));
        order.cakes().stream().map(Cake::id).forEach(owners::add);
        this.own = asked.steps().stream().filter(step -> owners.contains(step.ownerId())).toList();
    }

    /**
     * One idea.
     *
     * @param name  fit for a folder
     * @param words for people
     */
    public record Idea(String name, String words, List<Change> changes) {

        public Idea {
            changes = List.copyOf(changes);
        }
    }

    /**
     * Ideas for an order, those that ask least of people first.
     *
     * @param asked the problem with the order
     * @param stock what could be in stock for it
     * @param now   nothing can be different before
     */
    public static List<Idea> of(Problem asked, String orderId, List<ComponentInStock> stock, int now) {
        var ideas = new HelpIdeas(asked, orderId, now);
        stock.forEach(ideas::inStock);
        asked.kitchen().people().forEach(ideas::hours);
        asked.kitchen().stores().forEach(ideas::shelf);
        asked.kitchen().pools().forEach(ideas::piece);
        return List.copyOf(ideas.ideas);
    }

    private void add(String name, String words, Change change) {
        ideas.add(new Idea(name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", ""), words, List.of(change)));
    }

    private void inStock(ComponentInStock stock) {
        String what = stock.component().equals("layers") ? "spare layers" : stock.component().replace('-', ' ');
        String of = order.cakes().size() > 1 ? " of " + stock.cakeId() : "";
        add("stock " + stock.component() + (of.isEmpty() ? "" : " " + stock.cakeId()), what + of + " in stock", stock);
    }

    /** Only hours up to the wished time: later ones cannot help with it. */
    private void hours(Person person) {
        for (Span shift : person.shifts()) {
            int from = Math.max(now, shift.start() - EARLIER);
            boolean free = person.shifts().stream().allMatch(other -> other.end() <= from || other.start() >= shift.start());
            if (from < shift.start() && shift.start() < order.handOver().until() && free) {
                add(person.id() + " from " + time(from), person.name() + " from " + time(from) + " on instead of " + time(shift.start()),
                        new MoreHours(person.id(), new Span(from, shift.start())));
            }
            int until = Math.min(shift.end() + LONGER, asked.clock().horizonMinutes());
            if (shift.end() > now && shift.end() < Math.min(until, order.handOver().until())) {
                add(person.id() + " until " + time(until), person.name() + " until " + time(until) + " instead of " + time(shift.end()),
                        new MoreHours(person.id(), new Span(shift.end(), until)));
            }
        }
    }

    private String time(int minute) {
        return TIME.format(asked.clock().at(minute));
    }

    /** One like the largest, empty, for a kind of store that the order wants. */
    private void shelf(Store store) {
        Set<PlaceKind> wanted = new TreeSet<>();
        own.forEach(step -> step.place().ifPresent(place -> wanted.addAll(place.allowed())));
        Shelf largest = null;
        for (Shelf shelf : store.shelves()) {
            boolean larger = largest == null || (long) shelf.widthMm() * shelf.depthMm() * shelf.clearHeightMm()
                    > (long) largest.widthMm() * largest.depthMm() * largest.clearHeightMm();
            largest = larger ? shelf : largest;
        }
        String id = "one-more";
        if (largest != null && wanted.contains(store.kind()) && store.shelves().stream().noneMatch(shelf -> shelf.id().equals(id))) {
            add("shelf " + store.id(), "one shelf more in " + store.name() + ", like " + largest.name(), new ShelfLike(store.id(), largest.id(), id));
        }
    }

    private void piece(Pool pool) {
        if (own.stream().flatMap(step -> step.equipment().stream()).map(EquipmentNeed::poolId).anyMatch(pool.id()::equals)) {
            add("more " + pool.id(), "one " + pool.name() + " more", new MorePieces(pool.id(), 1));
        }
    }
}
