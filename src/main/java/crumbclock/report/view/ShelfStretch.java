package crumbclock.report.view;

import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Form;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What stands on one shelf between two changes.
 *
 * @param number counted from 1 on this shelf, stretches with nothing of the plan on it left out
 * @param items  things of the plan, in the order in which they went in
 * @param goods  what else stands there
 */
public record ShelfStretch(Store store, Shelf shelf, int number, Span when, List<Item> items, List<Goods> goods) {

    public ShelfStretch {
        items = List.copyOf(items);
        goods = List.copyOf(goods);
    }

    /**
     * One piece as it stands.
     *
     * @param footprint turned as it stands
     * @param cameIn    it went in at the start of this stretch
     * @param goesOut   it goes out at the end of this stretch
     */
    public record Item(Placement placement, String label, Form form, Footprint footprint, boolean cameIn,
            boolean goesOut) {
    }

    /** All stretches with at least one thing of the plan, shelf by shelf from the top down, then by time. */
    public static List<ShelfStretch> of(PlanView view) {
        List<ShelfStretch> stretches = new ArrayList<>();
        for (Store store : view.problem().kitchen().stores()) {
            for (Shelf shelf : store.shelves()) {
                stretches.addAll(onShelf(view, store, shelf));
            }
        }
        return stretches;
    }

    private static List<ShelfStretch> onShelf(PlanView view, Store store, Shelf shelf) {
        List<Placement> here = view.plan().timetable().placements().stream()
                .filter(one -> one.storeId().equals(store.id()) && one.shelfId().equals(shelf.id())
                        && !one.when().isEmpty())
                .toList();
        var changes = new TreeSet<Integer>();
        here.forEach(one -> {
            changes.add(one.when().start());
            changes.add(one.when().end());
        });
        shelf.goods().forEach(one -> {
            changes.add(one.when().start());
            changes.add(one.when().end());
        });
        List<ShelfStretch> stretches = new ArrayList<>();
        Integer from = null;
        for (int until : changes) {
            if (from != null) {
                var when = new Span(from, until);
                var items = here.stream().filter(one -> one.when().overlaps(when))
                        .flatMap(one -> item(view, one, when).stream()).toList();
                var goods = shelf.goods().stream().filter(one -> one.when().overlaps(when)).toList();
                if (!items.isEmpty()) {
                    stretches.add(new ShelfStretch(store, shelf, stretches.size() + 1, when, items, goods));
                }
            }
            from = until;
        }
        return stretches;
    }

    private static Optional<Item> item(PlanView view, Placement place, Span when) {
        return view.findStep(place.stepId()).flatMap(step -> step.place().map(need -> new Item(place,
                view.ownerLabel(step.ownerId()), need.form(),
                PlaceWords.standing(need.form().footprint(), place.turned()),
                place.when().start() == when.start(), place.when().end() == when.end())));
    }

    /** Floor that nothing stands on, in whole percent of the shelf, rounded down; gaps count as free. */
    public int freePercent() {
        double whole = (double) shelf.widthMm() * shelf.depthMm();
        double taken = items.stream().mapToDouble(item -> area(item.footprint())).sum()
                + goods.stream().mapToDouble(one -> (double) one.widthMm() * one.depthMm()).sum();
        return (int) Math.floor(Math.max(0, 100 - 100 * taken / whole));
    }

    private static double area(Footprint footprint) {
        double box = (double) footprint.widthMm() * footprint.depthMm();
        return footprint.round() ? box * Math.PI / 4 : box;
    }

    /** Height of the tallest thing of the plan. */
    public int tallestMm() {
        return items.stream().mapToInt(item -> item.form().heightMm()).max().orElse(0);
    }
}
