package crumbclock.formats.change;

import crumbclock.domain.change.Change;
import crumbclock.domain.change.KitchenChange;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.formats.change.Things.Kind;
import crumbclock.formats.change.Things.Thing;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.JsonLoader;
import crumbclock.formats.json.JsonLoader.Loaded;
import crumbclock.formats.json.MeasureReader;
import crumbclock.formats.json.Spot;
import crumbclock.formats.kitchen.CalendarReader;
import crumbclock.formats.kitchen.KitchenFile;
import crumbclock.formats.kitchen.KitchenReader;
import crumbclock.formats.problem.ProblemDraft;
import crumbclock.units.Span;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** Entries about people and things to changes. */
record KitchenEntries(IssueLog log) {

    List<Change> away(Entry entry, ProblemDraft draft, boolean sure) {
        var when = when(entry, draft);
        var found = Things.of(draft).find(entry.object(), EnumSet.complementOf(EnumSet.of(Kind.ORDER, Kind.BATCH)), entry.atObject(), log, sure);
        if (found.isEmpty() || when.isEmpty()) {
            return List.of();
        }
        var kind = KitchenChange.Kind.valueOf(found.get(0).kind().name());
        int most = draft.kitchen().pools().stream().filter(pool -> pool.id().equals(found.get(0).id())).mapToInt(pool -> pool.count())
                .findFirst().orElse(0);
        int pieces = kind == KitchenChange.Kind.EQUIPMENT ? entry.number("pieces", most) : 0;
        if (entry.has("pieces") && pieces > most || entry.has("pieces") && kind != KitchenChange.Kind.EQUIPMENT) {
            entry.at("pieces").fault(log, most == 0 ? "no pieces: only equipment has them" : "at most " + most + ", all that there are", "");
            return List.of();
        }
        return found.stream().<Change>map(thing -> new KitchenChange.Away(kind, thing.id(), pieces, when.get())).toList();
    }

    List<Change> hours(Entry entry, ProblemDraft draft, boolean sure) {
        var when = when(entry, draft);
        var found = Things.of(draft).find(entry.object(), EnumSet.of(Kind.PERSON), entry.atObject(), log, sure);
        return when.isEmpty() ? List.of()
                : found.stream().<Change>map(person -> new KitchenChange.MoreHours(person.id(), when.get())).toList();
    }

    List<Change> more(Entry entry, ProblemDraft draft, boolean sure) {
        return Things.of(draft).find(entry.object(), EnumSet.of(Kind.EQUIPMENT), entry.atObject(), log, sure).stream()
                .<Change>map(pool -> new KitchenChange.MorePieces(pool.id(), entry.number("pieces", 1))).toList();
    }

    List<Change> bring(Entry entry, ProblemDraft draft) {
        var file = JsonLoader.bound(entry.node().path(entry.verb().key()), entry.atObject(), KitchenFile.class, log);
        if (file.isEmpty()) {
            return List.of();
        }
        var parts = new KitchenReader(draft.calendar(), log).read(new Loaded<>(file.get(), entry.atObject()));
        var things = Things.of(draft);
        checkFree(things, Kind.PERSON, entry.atObject().child("people"), parts.people().stream().map(Person::id).toList());
        checkFree(things, Kind.OVEN, entry.atObject().child("ovens"), parts.cavities().stream().map(Cavity::id).toList());
        checkFree(things, Kind.STORE, entry.atObject().child("stores"), parts.stores().stream().map(Store::id).toList());
        checkFree(things, Kind.SURFACE, entry.atObject().child("surfaces"), parts.surfaces().stream().map(Surface::id).toList());
        checkFree(things, Kind.EQUIPMENT, entry.atObject().child("equipment"), parts.pools().stream().map(pool -> pool.id()).toList());
        return List.of(new KitchenChange.Brought(parts));
    }

    private void checkFree(Things things, Kind kind, Spot spot, List<String> ids) {
        ids.stream().filter(id -> !things.isFree(kind, id))
                .forEach(id -> spot.fault(log, "the id \"" + id + "\"", "an id that is not taken", "Choose another one."));
    }

    /** Stores and shelves come empty, and nothing that comes is ever away. */
    List<Change> copy(Entry entry, Thing thing, ProblemDraft draft) {
        String id = entry.text("as");
        int slash = thing.id().indexOf('/');
        String freeId = thing.kind() == Kind.SHELF ? thing.id().substring(0, slash + 1) + id : id;
        if (!Things.of(draft).isFree(thing.kind(), freeId)) {
            entry.at("as").fault(log, "an id that is not taken", "");
            return List.of();
        }
        if (thing.kind() == Kind.SHELF) {
            return List.of(new KitchenChange.ShelfLike(thing.id().substring(0, slash), thing.id().substring(slash + 1), id));
        }
        var from = draft.kitchen();
        return List.of(new KitchenChange.Brought(new Kitchen("",
                only(thing, Kind.PERSON, from.people().stream().filter(one -> one.id().equals(thing.id())).map(one -> new Person(id, id,
                        one.shifts(), one.breaks(), one.skills(), one.paceByWork(), one.mostMinutesADay())).toList()),
                only(thing, Kind.OVEN, from.cavities().stream().filter(one -> one.id().equals(thing.id())).map(one -> new Cavity(id, id,
                        one.racks(), one.leastC(), one.mostC(), one.preheatMinutes(), one.upPerTenC(), one.downPerTenC(),
                        one.keepHotMinutes(), one.wallGapMm(), one.panGapMm(), List.of())).toList()),
                only(thing, Kind.STORE, from.stores().stream().filter(one -> one.id().equals(thing.id())).map(one -> new Store(id, id,
                        one.kind(), one.gapMm(), one.wallGapMm(), one.warmestInC(), one.humid(),
                        one.shelves().stream().map(KitchenEntries::empty).toList(), List.of())).toList()),
                only(thing, Kind.SURFACE, from.surfaces().stream().filter(one -> one.id().equals(thing.id()))
                        .map(one -> new Surface(id, id, one.kind(), one.areaMm2(), List.of())).toList()),
                List.of(), List.of())));
    }

    private static <T> List<T> only(Thing thing, Kind kind, List<T> found) {
        return thing.kind() == kind ? found : List.of();
    }

    private static Shelf empty(Shelf shelf) {
        return new Shelf(shelf.id(), shelf.name(), shelf.widthMm(), shelf.depthMm(), shelf.clearHeightMm(), shelf.mostMassGrams(),
                shelf.freeFrom(), List.of());
    }

    List<Change> goods(Entry entry, ProblemDraft draft, boolean sure) {
        var when = when(entry, draft);
        var found = Things.of(draft).find(entry.text("on"), EnumSet.of(Kind.SHELF), entry.at("on"), log, sure);
        if (when.isEmpty() || found.isEmpty()) {
            return List.of();
        }
        String storeId = found.get(0).id().substring(0, found.get(0).id().indexOf('/'));
        String shelfId = found.get(0).id().substring(storeId.length() + 1);
        var shelf = draft.kitchen().stores().stream().filter(store -> store.id().equals(storeId))
                .flatMap(store -> store.shelves().stream()).filter(one -> one.id().equals(shelfId)).findFirst().orElseThrow();
        var goods = goods(entry, shelf, when.get());
        if (goods.xMm() + goods.widthMm() > shelf.widthMm() || goods.yMm() + goods.depthMm() > shelf.depthMm()
                || goods.heightMm() > shelf.clearHeightMm()) {
            entry.spot().fault(log, Spot.quote(goods.name()) + " reaching " + (goods.xMm() + goods.widthMm()) + " × "
                    + (goods.yMm() + goods.depthMm()) + " mm, " + goods.heightMm() + " mm high", "goods that stand wholly on the shelf of "
                    + shelf.widthMm() + " × " + shelf.depthMm() + " mm, " + shelf.clearHeightMm() + " mm high", "");
            return List.of();
        }
        return List.of(new KitchenChange.GoodsOn(storeId, shelfId, goods));
    }

    private Goods goods(Entry entry, Shelf shelf, Span when) {
        var measures = new MeasureReader(log);
        int x = entry.has("x") ? measures.position(entry.at("x"), entry.text("x")) : 0;
        int y = entry.has("y") ? measures.position(entry.at("y"), entry.text("y")) : 0;
        return new Goods(entry.object(), x, y,
                entry.has("width") ? measures.length(entry.at("width"), entry.text("width")) : Math.max(1, shelf.widthMm() - x),
                entry.has("depth") ? measures.length(entry.at("depth"), entry.text("depth")) : Math.max(1, shelf.depthMm() - y),
                entry.has("height") ? measures.length(entry.at("height"), entry.text("height")) : shelf.clearHeightMm(),
                entry.has("mass") ? measures.mass(entry.at("mass"), entry.text("mass")) : 0, when);
    }

    /** From–until, cut to the problem; empty, with an issue, when it is none or lies outside. */
    private Optional<Span> when(Entry entry, ProblemDraft draft) {
        var calendar = draft.calendar();
        Span span = new CalendarReader(calendar, log).open(entry.spot(), entry.textOrNull("from"), entry.textOrNull("until"));
        boolean told = entry.at("from").isFaulty(log) || entry.at("until").isFaulty(log);
        if (span.isEmpty() && !told) {
            entry.spot().fault(log, "a time outside the problem", "a time that reaches into it, " + calendar.showWhole(), "");
        }
        return span.isEmpty() || told ? Optional.empty() : Optional.of(span);
    }
}
