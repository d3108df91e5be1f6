package crumbclock.formats.kitchen;

import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.MeasureReader;
import crumbclock.formats.json.Spot;
import crumbclock.formats.kitchen.KitchenFile.GoodsEntry;
import crumbclock.formats.kitchen.KitchenFile.ShelfEntry;
import crumbclock.formats.kitchen.KitchenFile.StoreEntry;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

/** Stores with their shelves and the goods that stand there already. */
record StoreReader(CalendarReader times, MeasureReader measures, IssueLog log) {

    Store read(Spot spot, StoreEntry entry) {
        Ids.unique(spot.child("shelves"), entry.shelves(), ShelfEntry::id, new HashSet<>(), log);
        List<Shelf> shelves = new ArrayList<>();
        for (int i = 0; i < entry.shelves().size(); i++) {
            shelves.add(shelf(spot.child("shelves").child(i), entry.shelves().get(i)));
        }
        var kind = PlaceKind.valueOf(entry.kind().replace(' ', '_').toUpperCase(Locale.ROOT));
        return new Store(entry.id(), entry.name(), kind, measures.position(spot.child("gap"), entry.gap()),
                measures.position(spot.child("wallGap"), entry.wallGap()),
                measures.temperature(spot.child("warmestIn"), entry.warmestIn()), entry.humid(), shelves,
                times.away(spot.child("away"), entry.away()));
    }

    private Shelf shelf(Spot spot, ShelfEntry entry) {
        int width = measures.length(spot.child("width"), entry.width());
        int depth = measures.length(spot.child("depth"), entry.depth());
        int height = measures.length(spot.child("clearHeight"), entry.clearHeight());
        int mostMass = entry.mostMass() == null ? Integer.MAX_VALUE : measures.mass(spot.child("mostMass"), entry.mostMass());
        List<Goods> goods = new ArrayList<>();
        for (int i = 0; i < entry.goods().size(); i++) {
            var at = spot.child("goods").child(i);
            var item = goods(at, entry.goods().get(i), height);
            if (item.xMm() + item.widthMm() > width || item.yMm() + item.depthMm() > depth || item.heightMm() > height) {
                at.fault(log, Spot.quote(item.name()) + " reaching " + (item.xMm() + item.widthMm()) + " × "
                        + (item.yMm() + item.depthMm()) + " mm, " + item.heightMm() + " mm high",
                        "goods that stand wholly on the shelf of " + width + " × " + depth + " mm, " + height + " mm high", "");
            }
            if (!item.when().isEmpty()) {
                goods.add(item);
            }
        }
        return new Shelf(entry.id(), entry.name(), width, depth, height, mostMass, Ids.lowerCase(entry.freeFrom()), goods);
    }

    private Goods goods(Spot spot, GoodsEntry entry, int shelfHeight) {
        Span when = times.open(spot, entry.from(), entry.until());
        return new Goods(entry.name(), measures.position(spot.child("x"), entry.x()), measures.position(spot.child("y"), entry.y()),
                measures.length(spot.child("width"), entry.width()), measures.length(spot.child("depth"), entry.depth()),
                entry.height() == null ? shelfHeight : measures.length(spot.child("height"), entry.height()),
                entry.mass() == null ? 0 : measures.mass(spot.child("mass"), entry.mass()), when);
    }
}
