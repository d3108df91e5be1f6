package crumbclock.engine.book;

import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.work.Form;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.engine.model.Spot;
import crumbclock.engine.model.Task;
import crumbclock.engine.shelf.SpotFinder;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * Who stands where on the shelves: keeps rules R10 (fit, gap, mass, no wandering), R11 (store class; by the
 * candidates that were compiled) and R13 (open items) by construction.
 */
public final class ShelfBook implements Journal.Undoable {

    private static final int BOOK = 0;
    private static final int UNTIL = 1;
    /** An item that stands no longer than this goes to the front, where nothing hides it. */
    private static final int SHORT_STAY = 240;

    /** Something on a shelf; {@code task} is {@code null} for goods and times away. */
    private static final class Item {
        final Task task;
        final int piece;
        final boolean round;
        final int x;
        final int y;
        final int width;
        final int depth;
        final boolean turned;
        final int mass;
        final int from;
        int until;

        Item(Task task, int piece, boolean round, int x, int y, int width, int depth, boolean turned, int mass,
                int from, int until) {
            this.task = task;
            this.piece = piece;
            this.round = round;
            this.x = x;
            this.y = y;
            this.width = width;
            this.depth = depth;
            this.turned = turned;
            this.mass = mass;
            this.from = from;
            this.until = until;
        }
    }

    private final CompiledProblem compiled;
    private final Journal journal;
    private final SpotFinder finder = new SpotFinder(16);
    private final List<List<Item>> items = new ArrayList<>();
    private final List<List<Item>> fixed = new ArrayList<>();
    private final List<List<Integer>> levelsOfStore = new ArrayList<>();
    private final List<Item> found = new ArrayList<>();
    private final IntList foundSpots = new IntList();

    public ShelfBook(CompiledProblem compiled, Journal journal) {
        this.compiled = compiled;
        this.journal = journal;
        for (Spot spot : compiled.spots) {
            items.add(new ArrayList<>());
            fixed.add(standing(spot));
            levelsOfStore.add(new ArrayList<>());
            for (Spot other : compiled.spots) {
                if (other.store() == spot.store()) {
                    levelsOfStore.get(spot.index()).add(other.index());
                }
            }
        }
    }

    private List<Item> standing(Spot spot) {
        List<Item> standing = new ArrayList<>();
        Shelf shelf = spot.shelf();
        for (Goods goods : shelf.goods()) {
            Span when = compiled.mirror(goods.when());
            standing.add(new Item(null, 0, false, goods.xMm(), goods.yMm(), goods.widthMm(), goods.depthMm(), false,
                    goods.massGrams(), when.start(), when.end()));
        }
        for (Span gone : spot.store().away()) {
            Span when = compiled.mirror(gone);
            standing.add(new Item(null, 0, false, 0, 0, shelf.widthMm(), shelf.depthMm(), false, 0, when.start(), when.end()));
        }
        return standing;
    }

    public void reset() {
        for (int spot = 0; spot < items.size(); spot++) {
            items.get(spot).clear();
            items.get(spot).addAll(fixed.get(spot));
        }
    }

    /**
     * −1 when all pieces of the task have room on shelves for {@code [from, until)}, which {@link #book} then takes;
     * else the first later start worth asking for (beyond the horizon when no start helps).
     */
    public int blockedUntil(Task task, int from, int until) {
        Form form = task.step.place().orElseThrow().form();
        found.clear();
        foundSpots.clear();
        for (int piece = 0; piece < form.pieces(); piece++) {
            if (!findRoom(task, form, piece, from, until)) {
                return nextChange(task, from, until);
            }
        }
        return -1;
    }

    private boolean findRoom(Task task, Form form, int piece, int from, int until) {
        for (int index : task.spots) {
            if (index >= 0 && findRoom(task, form, piece, index, from, until)) {
                return true;
            }
        }
        return false;
    }

    private boolean findRoom(Task task, Form form, int piece, int index, int from, int until) {
        Spot spot = compiled.spots[index];
        Shelf shelf = spot.shelf();
        Store store = spot.store();
        if (compiled.hasFreeFrom && meetsAllergen(task, spot, from, until)) {
            return false;
        }
        finder.clear();
        long mass = form.massGrams();
        for (Item item : items.get(index)) {
            if (item.from < until && from < item.until) {
                finder.addNeighbour(item.round, item.x, item.y, item.width, item.depth);
                mass += item.mass;
            }
        }
        for (int earlier = 0; earlier < found.size(); earlier++) {
            if (foundSpots.get(earlier) == index) {
                Item item = found.get(earlier);
                finder.addNeighbour(item.round, item.x, item.y, item.width, item.depth);
                mass += item.mass;
            }
        }
        // all that stands here at any time meanwhile: at least what stands here at one moment
        if (mass > shelf.mostMassGrams()) {
            return false;
        }
        boolean round = form.footprint().round();
        if (!finder.find(shelf.widthMm(), shelf.depthMm(), store.gapMm(), store.wallGapMm(), round,
                form.footprint().widthMm(), form.footprint().depthMm(), true, until - from <= SHORT_STAY)) {
            return false;
        }
        boolean turned = finder.turned();
        found.add(new Item(task, piece, round, finder.xMm(), finder.yMm(),
                turned ? form.footprint().depthMm() : form.footprint().widthMm(),
                turned ? form.footprint().widthMm() : form.footprint().depthMm(), turned, form.massGrams(), from, until));
        foundSpots.add(index);
        return true;
    }

    /** Rule R13 on shelves: open items side by side, and an open item under an open one. */
    private boolean meetsAllergen(Task task, Spot spot, int from, int until) {
        if (!task.open) {
            return false;
        }
        for (int other : levelsOfStore.get(spot.index())) {
            int level = compiled.spots[other].level();
            for (Item item : items.get(other)) {
                if (item.task == null || !item.task.open || item.from >= until || from >= item.until) {
                    continue;
                }
                boolean itemHarms = level <= spot.level() && (item.task.contains & task.freeFrom) != 0;
                boolean taskHarms = level >= spot.level() && (task.contains & item.task.freeFrom) != 0;
                if (itemHarms || taskHarms) {
                    return true;
                }
            }
        }
        return false;
    }

    private int nextChange(Task task, int from, int until) {
        int next = compiled.horizon + 1;
        for (int index : task.spots) {
            if (index < 0) {
                continue;
            }
            for (int level : compiled.hasFreeFrom ? levelsOfStore.get(index) : List.of(index)) {
                for (Item item : items.get(level)) {
                    if (item.from < until && from < item.until) {
                        next = Math.min(next, item.until);
                    }
                }
            }
        }
        return next;
    }

    /** Kind of the store in which the last {@link #blockedUntil} found room for the first piece. */
    public PlaceKind kindFound() {
        return compiled.spots[foundSpots.get(0)].store().kind();
    }

    /** Takes what the last {@link #blockedUntil} found. */
    public void book(Task task) {
        for (int index = 0; index < found.size(); index++) {
            items.get(foundSpots.get(index)).add(found.get(index));
            journal.add(this, BOOK, foundSpots.get(index), 0, 0);
        }
    }

    /** Books a placement that is recorded (rule R15), in real time. */
    public void force(Task task, Placement placement) {
        Form form = task.step.place().orElseThrow().form();
        Span when = compiled.mirror(placement.when());
        for (Spot spot : compiled.spots) {
            if (spot.store().id().equals(placement.storeId()) && spot.shelf().id().equals(placement.shelfId())) {
                boolean turned = placement.turned();
                items.get(spot.index()).add(new Item(task, placement.piece(), form.footprint().round(), placement.xMm(),
                        placement.yMm(), turned ? form.footprint().depthMm() : form.footprint().widthMm(),
                        turned ? form.footprint().widthMm() : form.footprint().depthMm(), turned, form.massGrams(),
                        when.start(), when.end()));
            }
        }
    }

    /** Ends a stay that was booked open-ended. */
    public void shorten(Task task, int until) {
        for (int index : task.spots) {
            if (index < 0) {
                continue;
            }
            List<Item> here = items.get(index);
            for (int at = here.size() - 1; at >= 0; at--) {
                if (here.get(at).task == task) {
                    journal.add(this, UNTIL, index, at, here.get(at).until);
                    here.get(at).until = until;
                }
            }
        }
    }

    @Override
    public void undo(int code, int spot, int at, int until) {
        List<Item> here = items.get(spot);
        if (code == BOOK) {
            here.remove(here.size() - 1);
        } else {
            here.get(at).until = until;
        }
    }

    /** All placements of tasks, shelf by shelf as booked, in real time. */
    public List<Placement> placements() {
        List<Placement> placements = new ArrayList<>();
        for (int index = 0; index < items.size(); index++) {
            Spot spot = compiled.spots[index];
            for (Item item : items.get(index)) {
                if (item.task != null) {
                    placements.add(new Placement(item.task.step.id(), item.piece, spot.store().id(), spot.shelf().id(),
                            item.x, item.y, item.turned, compiled.mirror(new Span(item.from, item.until))));
                }
            }
        }
        return placements;
    }

    /** Wish W06: how often an item goes in or comes out while another stands in front of it. */
    public int countBehind() {
        int count = 0;
        for (List<Item> here : items) {
            for (Item item : here) {
                if (item.task == null) {
                    continue;
                }
                for (Item other : here) {
                    if (other.task != item.task && inFront(other, item)) {
                        count += stands(other, item.from) ? 1 : 0;
                        count += stands(other, item.until) ? 1 : 0;
                    }
                }
            }
        }
        return count;
    }

    private static boolean inFront(Item other, Item item) {
        return other.y < item.y && other.x < item.x + item.width && item.x < other.x + other.width;
    }

    private static boolean stands(Item item, int minute) {
        return item.from < minute && minute < item.until;
    }
}
