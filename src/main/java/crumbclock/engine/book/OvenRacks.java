package crumbclock.engine.book;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Pan;
import crumbclock.engine.book.CavityBook.Bake;
import crumbclock.engine.model.Task;
import crumbclock.engine.shelf.Bay;
import crumbclock.engine.shelf.Packer;
import crumbclock.engine.shelf.Piece;
import crumbclock.engine.shelf.Spot;
import crumbclock.engine.shelf.SpotFinder;
import crumbclock.engine.shelf.Standing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the pans stand in one cavity (rule R07). The same few loads come up again and again while a search runs, so
 * what was found for a load beside certain pans is remembered; geometry is asked once.
 */
final class OvenRacks {

    private static final int MOST_REMEMBERED = 50_000;
    /** Placements tried for one load; each load is tried once and then remembered. */
    private static final int MOST_NODES = 300;

    /** Pans that stand already, as numbers, and then the shapes that are to join them. */
    private record Load(int[] numbers) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Load load && Arrays.equals(numbers, load.numbers);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(numbers);
        }
    }

    /** Pans of one task in the cavity. */
    private record InOven(Task task, int[] spots) {
    }

    /** Numbers for one pan: shape, rack, x, y, turned. */
    private static final int FIELDS = 5;

    private final Cavity cavity;
    private final SpotFinder finder = new SpotFinder(16);
    private final Packer packer = new Packer();
    private final Map<Task, InOven> places = new HashMap<>();
    private final Map<Pan, Integer> shapes = new HashMap<>();
    private final List<Pan> shapeList = new ArrayList<>();
    private final Map<Task, int[]> shapesOf = new HashMap<>();
    private final Map<Load, int[]> remembered = new HashMap<>();
    private static final int[] NO_ROOM = {};
    private final IntList key = new IntList();
    private int[] found = NO_ROOM;

    OvenRacks(Cavity cavity) {
        this.cavity = cavity;
    }

    void reset() {
        places.clear();
    }

    /** Whether all pans have room beside those of the bakes that are in at an overlapping time. */
    boolean find(Bake bake, List<Bake> bakes, int first) {
        key.clear();
        for (int at = first; at < bakes.size() && bakes.get(at).start() < bake.end(); at++) {
            Bake other = bakes.get(at);
            if (bake.start() < other.end()) {
                for (int number : places.get(other.task()).spots) {
                    key.add(number);
                }
            }
        }
        int standing = key.size() / FIELDS;
        int[] own = shapesOf.computeIfAbsent(bake.task(), this::shapes);
        for (int shape : own) {
            key.add(shape);
        }
        key.add(own.length);
        Load load = new Load(key.toArray());
        found = remembered.get(load);
        if (found == null) {
            found = search(load.numbers, standing, own);
            if (remembered.size() >= MOST_REMEMBERED) {
                remembered.clear();
            }
            remembered.put(load, found);
        }
        return found != NO_ROOM;
    }

    private int[] shapes(Task task) {
        return task.step.oven().orElseThrow().pans().stream().mapToInt(pan -> shapes.computeIfAbsent(pan, key -> {
            shapeList.add(pan);
            return shapeList.size() - 1;
        })).toArray();
    }

    private int[] search(int[] numbers, int standing, int[] own) {
        IntList spots = new IntList();
        for (int shape : own) {
            if (!search(numbers, standing, spots, shape)) {
                return packTogether(numbers, standing, own);
            }
        }
        // a bake without pans stands nowhere, and has room
        return own.length == 0 ? new int[0] : spots.toArray();
    }

    private boolean search(int[] numbers, int standing, IntList spots, int shape) {
        Pan pan = shapeList.get(shape);
        for (int rack = 0; rack < cavity.racks().size(); rack++) {
            Rack level = cavity.racks().get(rack);
            if (pan.heightMm() > level.clearHeightMm()) {
                continue;
            }
            finder.clear();
            for (int at = 0; at < standing; at++) {
                addNeighbour(numbers, at * FIELDS, rack);
            }
            int[] already = spots.toArray();
            for (int at = 0; at < already.length; at += FIELDS) {
                addNeighbour(already, at, rack);
            }
            if (finder.find(level.widthMm(), level.depthMm(), cavity.panGapMm(), cavity.wallGapMm(),
                    pan.footprint().round(), pan.footprint().widthMm(), pan.footprint().depthMm(), true)) {
                spots.add(shape);
                spots.add(rack);
                spots.add(finder.xMm());
                spots.add(finder.yMm());
                spots.add(finder.turned() ? 1 : 0);
                return true;
            }
        }
        return false;
    }

    /** One pan after the other did not fit; all at once, with places exchanged, may. */
    private int[] packTogether(int[] numbers, int standing, int[] own) {
        int tallest = 0;
        List<Piece> pieces = new ArrayList<>();
        for (int shape : own) {
            Pan pan = shapeList.get(shape);
            tallest = Math.max(tallest, pan.heightMm());
            pieces.add(new Piece(pan.footprint().round(), pan.footprint().widthMm(), pan.footprint().depthMm(), true));
        }
        List<Bay> bays = new ArrayList<>();
        List<Integer> rackOfBay = new ArrayList<>();
        List<Standing> others = new ArrayList<>();
        for (int rack = 0; rack < cavity.racks().size(); rack++) {
            Rack level = cavity.racks().get(rack);
            if (level.clearHeightMm() < tallest) {
                continue;
            }
            for (int at = 0; at < standing * FIELDS; at += FIELDS) {
                if (numbers[at + 1] == rack) {
                    Pan pan = shapeList.get(numbers[at]);
                    Footprint stands = numbers[at + 4] == 1 ? pan.footprint().turned() : pan.footprint();
                    others.add(new Standing(bays.size(), stands.round(), numbers[at + 2], numbers[at + 3],
                            stands.widthMm(), stands.depthMm()));
                }
            }
            bays.add(new Bay(level.widthMm(), level.depthMm()));
            rackOfBay.add(rack);
        }
        return packer.pack(bays, others, pieces, cavity.panGapMm(), cavity.wallGapMm(), MOST_NODES)
                .map(packed -> numbers(packed, own, rackOfBay)).orElse(NO_ROOM);
    }

    private static int[] numbers(List<Spot> packed, int[] own, List<Integer> rackOfBay) {
        IntList spots = new IntList();
        for (int pan = 0; pan < own.length; pan++) {
            Spot spot = packed.get(pan);
            spots.add(own[pan]);
            spots.add(rackOfBay.get(spot.bay()));
            spots.add(spot.xMm());
            spots.add(spot.yMm());
            spots.add(spot.turned() ? 1 : 0);
        }
        return spots.toArray();
    }

    private void addNeighbour(int[] numbers, int at, int rack) {
        if (numbers[at + 1] == rack) {
            Pan pan = shapeList.get(numbers[at]);
            boolean turned = numbers[at + 4] == 1;
            finder.addNeighbour(pan.footprint().round(), numbers[at + 2], numbers[at + 3],
                    turned ? pan.footprint().depthMm() : pan.footprint().widthMm(),
                    turned ? pan.footprint().widthMm() : pan.footprint().depthMm());
        }
    }

    void take(Task task) {
        places.put(task, new InOven(task, found));
    }

    /** Pans that are recorded as standing (rule R15). */
    void force(Task task, List<PanPlace> pans) {
        int[] own = shapesOf.computeIfAbsent(task, this::shapes);
        IntList spots = new IntList();
        for (PanPlace place : pans) {
            spots.add(own[place.pan()]);
            spots.add(place.rack());
            spots.add(place.xMm());
            spots.add(place.yMm());
            spots.add(place.turned() ? 1 : 0);
        }
        places.put(task, new InOven(task, spots.toArray()));
    }

    void giveBack(Task task) {
        places.remove(task);
    }

    List<PanPlace> places(Task task) {
        List<PanPlace> list = new ArrayList<>();
        int[] spots = places.containsKey(task) ? places.get(task).spots : NO_ROOM;
        for (int at = 0; at < spots.length; at += FIELDS) {
            list.add(new PanPlace(task.step.id(), at / FIELDS, cavity.id(), spots[at + 1], spots[at + 2], spots[at + 3],
                    spots[at + 4] == 1));
        }
        return list;
    }
}
