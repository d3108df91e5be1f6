package crumbclock.formats.change;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.request.OrderRequest;
import crumbclock.formats.issue.Alternatives;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.Spot;
import crumbclock.formats.problem.ProblemDraft;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What changes may name: the orders and everything in the kitchen. */
final class Things {

    private final List<Thing> all = new ArrayList<>();

    private Things() {
    }

    /** What can have a name. */
    enum Kind {
        ORDER, BATCH, PERSON, OVEN, STORE, SHELF, SURFACE, EQUIPMENT;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * @param name what people may call it
     * @param id   its own id; of a shelf {@code store/shelf}. An oven with several cavities is called by one name and has an id for each
     */
    record Thing(Kind kind, String name, String id) {
    }

    static Things of(ProblemDraft draft) {
        var things = new Things();
        Kitchen kitchen = draft.kitchen();
        for (OrderRequest order : draft.orders()) {
            things.add(Kind.ORDER, order.id());
        }
        draft.batches().forEach(batch -> things.add(Kind.BATCH, batch.id()));
        kitchen.people().forEach(person -> things.add(Kind.PERSON, person.id()));
        for (Cavity oven : kitchen.cavities()) {
            things.add(Kind.OVEN, oven.id());
            if (oven.id().contains("/")) {
                things.all.add(new Thing(Kind.OVEN, oven.id().substring(0, oven.id().indexOf('/')), oven.id()));
            }
        }
        for (Store store : kitchen.stores()) {
            things.add(Kind.STORE, store.id());
            for (Shelf shelf : store.shelves()) {
                things.add(Kind.SHELF, store.id() + "/" + shelf.id());
            }
        }
        kitchen.surfaces().forEach(surface -> things.add(Kind.SURFACE, surface.id()));
        kitchen.pools().forEach(pool -> things.add(Kind.EQUIPMENT, pool.id()));
        return things;
    }

    private void add(Kind kind, String id) {
        all.add(new Thing(kind, id, id));
    }

    /**
     * All that a name means, of one kind; empty, with an issue, when it means nothing, or things of several kinds.
     *
     * @param named a name, or a kind and a name: {@code person lew}
     * @param kinds what may be meant
     * @param sure  false when something unreadable may have brought more names: an unknown one is then no issue
     */
    List<Thing> find(String named, Set<Kind> kinds, Spot spot, IssueLog log, boolean sure) {
        int space = named.indexOf(' ');
        String first = space < 0 ? "" : named.substring(0, space).toLowerCase(Locale.ROOT);
        var said = kinds.stream().filter(kind -> kind.word().equals(first)).findFirst();
        Set<Kind> meant = said.map(EnumSet::of).orElseGet(() -> EnumSet.copyOf(kinds));
        String name = said.isPresent() ? named.substring(space + 1).strip() : named;
        var found = all.stream().filter(thing -> meant.contains(thing.kind()) && thing.name().equals(name)).toList();
        Set<Kind> foundKinds = found.stream().map(Thing::kind).collect(Collectors.toCollection(() -> EnumSet.noneOf(Kind.class)));
        if (foundKinds.size() > 1) {
            spot.fault(log, "a name with its kind, such as \"" + found.get(0).kind().word() + " " + name + "\"",
                    "Kinds that have it: " + foundKinds.stream().map(Kind::word).collect(Collectors.joining(", ")) + ".");
            return List.of();
        }
        if (found.isEmpty() && sure) {
            Set<String> known = all.stream().filter(thing -> meant.contains(thing.kind())).map(Thing::name)
                    .collect(Collectors.toCollection(TreeSet::new));
            spot.fault(log, expected(meant), Nearest.advice(name, known));
        }
        return found;
    }

    /** Whether the id can be given to something new of that kind. */
    boolean isFree(Kind kind, String id) {
        var shared = EnumSet.of(Kind.OVEN, Kind.STORE, Kind.SURFACE);
        return all.stream().noneMatch(thing -> thing.name().equals(id)
                && (kind == Kind.BATCH && thing.kind() == Kind.ORDER || thing.kind() == kind || shared.contains(thing.kind()) && shared.contains(kind)));
    }

    private static String expected(Set<Kind> kinds) {
        String some = Alternatives.of(kinds.stream().map(Kind::word).toList());
        return "the id of " + (some.matches("[aeiou].*") ? "an " : "a ") + some + " of this problem";
    }
}
