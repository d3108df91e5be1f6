package crumbclock.formats.change;

import crumbclock.domain.change.Change;
import crumbclock.domain.change.OrderChange;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.Spot;
import crumbclock.formats.order.Names;
import crumbclock.formats.order.OrderEdits;
import crumbclock.formats.order.OrdersReader;
import crumbclock.formats.problem.AllergenCheck;
import crumbclock.formats.problem.NamedFiles;
import crumbclock.formats.problem.ProblemDraft;
import crumbclock.methods.Method;
import crumbclock.methods.MethodKind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Entries about orders to changes; remembers where each changed cake stands, for faults that show later. */
final class OrderEntries {

    private final IssueLog log;
    private final List<OrdersReader> added = new ArrayList<>();
    private final Map<String, Spot> edited = new LinkedHashMap<>();

    OrderEntries(IssueLog log) {
        this.log = log;
    }

    List<Change> drop(Entry entry, ProblemDraft draft, boolean sure) {
        return Things.of(draft).find(entry.object(), EnumSet.of(Things.Kind.ORDER), entry.atObject(), log, sure).stream()
                .<Change>map(thing -> new OrderChange.Dropped(thing.id())).toList();
    }

    List<Change> add(Entry entry, ProblemDraft draft) {
        var reader = new OrdersReader(draft.calendar(), names(draft), draft.bufferMinutes(), log);
        reader.order(entry.atObject());
        return added(reader, draft, entry.atObject());
    }

    List<Change> addFrom(Entry entry, ProblemDraft draft) {
        var reader = new OrdersReader(draft.calendar(), names(draft), draft.bufferMinutes(), log);
        NamedFiles.open(entry.atObject(), log).ifPresent(reader::file);
        return added(reader, draft, entry.atObject());
    }

    private List<Change> added(OrdersReader reader, ProblemDraft draft, Spot spot) {
        added.add(reader);
        var taken = draft.orders().stream().map(OrderRequest::id).collect(Collectors.toSet());
        for (OrderRequest order : reader.orders()) {
            if (taken.contains(order.id())) {
                spot.fault(log, "order \"" + order.id() + "\"", "an id that no other order has", "Edit that order, or drop it first.");
            }
        }
        return reader.orders().stream().filter(order -> !taken.contains(order.id()))
                .<Change>map(OrderChange.Added::new).toList();
    }

    /** The name may be an order's or a cake's. */
    List<Change> edit(Entry entry, ProblemDraft draft, boolean sure) {
        var keys = new TreeSet<>(entry.keys());
        keys.retainAll(OrderEdits.keys());
        if (keys.isEmpty()) {
            entry.spot().fault(log, "nothing to edit", "at least one key of an order or cake, such as handOver or size", "");
            return List.of();
        }
        var order = draft.orders().stream().filter(one -> one.id().equals(entry.object())
                || one.cakes().stream().anyMatch(cake -> cake.id().equals(entry.object()))).findFirst();
        if (order.isEmpty()) {
            if (sure) {
                entry.atObject().fault(log, "the id of an order or cake of this problem", Nearest.advice(entry.object(), known(draft)));
            }
            return List.of();
        }
        return edited(entry, order.get(), entry.object(), draft).map(one -> List.<Change>of(new OrderChange.Replaced(one)))
                .orElse(List.of());
    }

    Optional<OrderRequest> edited(Entry entry, OrderRequest order, String named, ProblemDraft draft) {
        var ofCakes = new TreeSet<>(entry.keys());
        ofCakes.retainAll(OrderEdits.keysOfCakes());
        boolean cakeNamed = order.cakes().stream().anyMatch(cake -> cake.id().equals(named));
        if (!ofCakes.isEmpty() && order.cakes().size() > 1 && !cakeNamed) {
            entry.atObject().fault(log, "a cake by its whole id, since order \"" + order.id() + "\" has several",
                    Nearest.advice("", order.cakes().stream().map(CakeRequest::id).toList()));
            return Optional.empty();
        }
        String cakeId = cakeNamed ? named : order.cakes().get(0).id();
        order.cakes().forEach(cake -> edited.put(cake.id(), entry.spot()));
        return Optional.of(new OrderEdits(draft.calendar(), names(draft), draft.bufferMinutes(), log).edited(order, entry.spot(), cakeId));
    }

    /** The same order under another id, edited. */
    List<Change> copy(Entry entry, String orderId, ProblemDraft draft) {
        String id = entry.text("as");
        if (draft.orders().stream().anyMatch(order -> order.id().equals(id))) {
            entry.at("as").fault(log, "an id that no other order has", "");
            return List.of();
        }
        var order = draft.orders().stream().filter(one -> one.id().equals(orderId)).findFirst().orElseThrow();
        var copy = OrderEdits.copied(order, id);
        return edited(entry, copy, copy.id(), draft).map(one -> List.<Change>of(new OrderChange.Added(one))).orElse(List.of());
    }

    private static Set<String> known(ProblemDraft draft) {
        Set<String> known = new TreeSet<>();
        draft.orders().forEach(order -> {
            known.add(order.id());
            order.cakes().forEach(cake -> known.add(cake.id()));
        });
        return known;
    }

    /** A cake whose making changes at this place. */
    void touch(String cakeId, Spot spot) {
        edited.put(cakeId, spot);
    }

    /** Tells that a changed cake or batch cannot be made, where it was changed; false when it was not. */
    boolean fault(String itemId, String read, String expected) {
        if (added.stream().anyMatch(reader -> reader.faultOfCake(itemId, read, expected))) {
            return true;
        }
        var spot = edited.get(itemId);
        if (spot != null) {
            (read.startsWith("option") && spot.node().has("options") ? spot.child("options") : spot).fault(log, read, expected, "");
        }
        return spot != null;
    }

    /** Places of the lists of allergens that edits gave, and orders that were added, to be looked through for misspelt ones. */
    void checkAllergens(AllergenCheck check) {
        added.forEach(reader -> reader.checkAllergens(check::doubt));
        edited.values().stream().distinct().forEach(spot -> check.check(spot.child("freeFrom")));
    }

    private static Names names(ProblemDraft draft) {
        return new Names(ids(draft, MethodKind.CAKE), ids(draft, MethodKind.BATCH),
                draft.batches().stream().map(BatchRequest::id).collect(Collectors.toSet()), true);
    }

    private static Set<String> ids(ProblemDraft draft, MethodKind kind) {
        return draft.methods().values().stream().filter(method -> method.kind() == kind).map(Method::id).collect(Collectors.toSet());
    }
}
