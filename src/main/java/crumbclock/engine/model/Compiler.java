package crumbclock.engine.model;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Touch;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Turns a problem's records into tasks for one direction. */
final class Compiler {

    final Problem problem;
    final boolean mirrored;
    final int horizon;
    final Task[] tasks;
    final List<Need> needs = new ArrayList<>();
    final CompiledOrder[] orders;
    int[][] ordersOfOwner;
    final Spot[] spots;
    boolean hasFreeFrom;
    final Limit[][] limitsOf;

    private final Kitchen kitchen;
    private final Map<String, Task> taskById = new HashMap<>();
    private final Map<String, Integer> poolById = new HashMap<>();
    private final Map<String, Integer> allergenBits = new LinkedHashMap<>();

    Compiler(Problem problem, boolean mirrored) {
        this.problem = problem;
        this.mirrored = mirrored;
        this.horizon = problem.clock().horizonMinutes();
        this.kitchen = problem.kitchen();
        this.spots = spots();
        for (int pool = 0; pool < kitchen.pools().size(); pool++) {
            poolById.put(kitchen.pools().get(pool).id(), pool);
        }
        tasks = new Task[problem.steps().size()];
        for (int index = 0; index < tasks.length; index++) {
            tasks[index] = compile(index, problem.steps().get(index));
            taskById.put(tasks[index].step.id(), tasks[index]);
        }
        owners();
        links();
        needs();
        orders = new CompiledOrder[problem.orders().size()];
        for (int index = 0; index < orders.length; index++) {
            orders[index] = compile(index, problem.orders().get(index));
        }
        new FixedWindows(horizon, mirrored).mark(problem.fixedSteps(), taskById);
        elastic();
        limitsOf = new Limit[tasks.length][0];
        problem.coldLimits().forEach(cold -> add(limit(cold.fromStepId(), cold.toStepId(), cold.heldStepIds(), cold, null)));
        problem.lifeLimits().forEach(life -> add(limit(life.fromStepId(), life.toStepId(), life.heldStepIds(), null, life)));
        new Bounds(tasks, horizon).tighten();
    }

    /** Allergens by their bit. */
    List<String> allergens() {
        return List.copyOf(allergenBits.keySet());
    }

    int[] dayOf() {
        int[] dayOf = new int[horizon + 1];
        List<Span> days = problem.clock().days();
        for (int day = 0; day < days.size(); day++) {
            for (int minute = Math.max(0, days.get(day).start()); minute < Math.min(horizon, days.get(day).end()); minute++) {
                dayOf[mirrored ? horizon - 1 - minute : minute] = day;
            }
        }
        dayOf[horizon] = horizon == 0 ? 0 : dayOf[horizon - 1];
        return dayOf;
    }

    private Spot[] spots() {
        List<Spot> all = new ArrayList<>();
        for (Store store : kitchen.stores()) {
            for (int level = 0; level < store.shelves().size(); level++) {
                all.add(new Spot(all.size(), store, store.shelves().get(level), level));
            }
        }
        return all.toArray(new Spot[0]);
    }

    private Task compile(int index, Step step) {
        Task task = new Task(index, step, step.kind() == StepKind.HANDS_ON);
        task.presence = step.presence();
        task.contains = bits(step.contains());
        task.freeFrom = bits(step.freeFrom());
        hasFreeFrom |= task.freeFrom != 0;
        task.earliestStart = mirrored ? 0 : Math.max(0, step.earliest());
        task.latestEnd = mirrored ? horizon - Math.max(0, step.earliest()) : horizon;
        step.handsOn().ifPresent(work -> compile(task, work));
        if (!task.handsOn) {
            Optional<Touch> in = mirrored ? step.takeOut() : step.putIn();
            Optional<Touch> out = mirrored ? step.putIn() : step.takeOut();
            task.least = step.leastMinutes();
            task.most = step.mostMinutes();
            task.inMinutes = in.map(Touch::minutes).orElse(0);
            task.outMinutes = out.map(Touch::minutes).orElse(0);
            task.inPeople = in.map(touch -> skilled(touch.skill())).orElse(new int[0]);
            task.outPeople = out.map(touch -> skilled(touch.skill())).orElse(new int[0]);
        }
        step.oven().ifPresent(oven -> {
            task.bakes = true;
            task.bakeMinutes = step.leastMinutes() - oven.coolInOvenMinutes();
            task.temperatureC = oven.temperatureC();
            task.doorShutMinutes = oven.doorShutMinutes();
            task.coolsInOven = oven.coolInOvenMinutes() > 0;
            task.realInMinutes = step.putInMinutes();
            task.realOutMinutes = step.takeOutMinutes();
        });
        step.place().ifPresent(place -> compile(task, place));
        return task;
    }

    private void compile(Task task, HandsOn work) {
        task.works = work.minutes() > 0;
        task.people = work.people();
        task.mayPutDown = work.mayPutDown();
        task.away = work.away();
        if (task.works) {
            task.workers = skilled(work.skill());
            task.workerMinutes = IntStream.of(task.workers)
                    .map(person -> kitchen.people().get(person).minutesAtOwnPace(work.workKind(), work.minutes()))
                    .toArray();
            task.spareSkills = IntStream.of(task.workers)
                    .map(person -> kitchen.people().get(person).skills().size() - (work.skill().isEmpty() ? 0 : 1))
                    .toArray();
        }
    }

    private int[] skilled(String skill) {
        return IntStream.range(0, kitchen.people().size())
                .filter(person -> kitchen.people().get(person).hasSkill(skill)).toArray();
    }

    private void compile(Task task, PlaceNeed place) {
        Form form = place.form();
        task.open = form.open();
        task.areaMm2 = form.pieces() * form.footprint().boxAreaMm2();
        List<Integer> candidates = new ArrayList<>();
        for (PlaceKind kind : place.allowed()) {
            if (kind.hasShelves()) {
                // the lowest shelf that is high enough first: tall room is scarce
                IntStream.range(0, spots.length).mapToObj(index -> spots[index])
                        .filter(spot -> spot.store().kind() == kind && mayStand(task, form, spot))
                        .sorted(Comparator.comparingInt((Spot spot) -> spot.shelf().clearHeightMm()))
                        .forEach(spot -> candidates.add(spot.index()));
            } else {
                // what must be free from something takes the small surface, and leaves the large one to the others
                Comparator<Integer> bySize = Comparator.comparingInt(surface -> kitchen.surfaces().get(surface).areaMm2());
                IntStream.range(0, kitchen.surfaces().size()).boxed()
                        .filter(surface -> kitchen.surfaces().get(surface).kind() == kind
                                && kitchen.surfaces().get(surface).areaMm2() >= task.areaMm2)
                        .sorted(task.freeFrom != 0 ? bySize : bySize.reversed())
                        .forEach(surface -> candidates.add(-1 - surface));
            }
        }
        task.spots = candidates.stream().mapToInt(Integer::intValue).toArray();
    }

    /** What never changes about an item and a shelf: rules R10 (height, size), R11 and R13 (a shelf set aside). */
    private boolean mayStand(Task task, Form form, Spot spot) {
        Shelf shelf = spot.shelf();
        int width = shelf.widthMm() - 2 * spot.store().wallGapMm();
        int depth = shelf.depthMm() - 2 * spot.store().wallGapMm();
        int itemWidth = form.footprint().widthMm();
        int itemDepth = form.footprint().depthMm();
        boolean fits = itemWidth <= width && itemDepth <= depth || itemDepth <= width && itemWidth <= depth;
        return fits && form.heightMm() <= shelf.clearHeightMm() && form.massGrams() <= shelf.mostMassGrams()
                && form.warmthC() <= spot.store().warmestInC() && !(form.pasteFinish() && spot.store().humid())
                && (task.contains & bits(shelf.freeFrom())) == 0;
    }

    private long bits(Set<String> allergens) {
        long bits = 0;
        for (String allergen : allergens) {
            Integer bit = allergenBits.computeIfAbsent(allergen, key -> allergenBits.size());
            if (bit >= Long.SIZE) {
                throw new IllegalArgumentException("more than 64 different allergens, at " + allergen);
            }
            bits |= 1L << bit;
        }
        return bits;
    }

    private void owners() {
        Map<String, Integer> ownerById = new LinkedHashMap<>();
        Map<String, Integer> orderByOwner = new HashMap<>();
        Map<String, List<Integer>> ordersByBatch = new HashMap<>();
        for (int order = 0; order < problem.orders().size(); order++) {
            orderByOwner.put(problem.orders().get(order).id(), order);
            for (Cake cake : problem.orders().get(order).cakes()) {
                orderByOwner.put(cake.id(), order);
                for (String batch : cake.batchIds()) {
                    ordersByBatch.computeIfAbsent(batch, key -> new ArrayList<>()).add(order);
                }
            }
        }
        for (Task task : tasks) {
            String owner = task.step.ownerId();
            task.owner = ownerById.computeIfAbsent(owner, key -> ownerById.size());
            task.order = orderByOwner.getOrDefault(owner, -1);
        }
        ordersOfOwner = new int[ownerById.size()][0];
        for (Batch batch : problem.batches()) {
            if (ownerById.containsKey(batch.id())) {
                ordersOfOwner[ownerById.get(batch.id())] = ordersByBatch.getOrDefault(batch.id(), List.of()).stream()
                        .mapToInt(Integer::intValue).distinct().toArray();
            }
        }
    }

    private void links() {
        Map<Task, List<Link>> before = new HashMap<>();
        Map<Task, List<Link>> after = new HashMap<>();
        for (Wait wait : problem.waits()) {
            Task from = taskById.get(mirrored ? wait.toStepId() : wait.fromStepId());
            Task to = taskById.get(mirrored ? wait.fromStepId() : wait.toStepId());
            Link link = new Link(from, to, wait.leastMinutes(), wait.mostMinutes());
            after.computeIfAbsent(from, key -> new ArrayList<>()).add(link);
            before.computeIfAbsent(to, key -> new ArrayList<>()).add(link);
        }
        endsBeforeHandOver(before, after);
        for (Task task : tasks) {
            task.before = before.getOrDefault(task, List.of()).toArray(new Link[0]);
            task.after = after.getOrDefault(task, List.of()).toArray(new Link[0]);
        }
    }

    /** Rule R16: all work on an order's cakes is over when its hand-over begins, whether or not a wait says so. */
    private void endsBeforeHandOver(Map<Task, List<Link>> before, Map<Task, List<Link>> after) {
        Map<String, List<Task>> tasksOfOwner = new HashMap<>();
        for (Task task : tasks) {
            tasksOfOwner.computeIfAbsent(task.step.ownerId(), key -> new ArrayList<>()).add(task);
        }
        for (Order order : problem.orders()) {
            Task door = taskById.get(order.handOver().stepId());
            if (door == null) {
                continue;
            }
            order.cakes().stream().flatMap(cake -> tasksOfOwner.getOrDefault(cake.id(), List.of()).stream())
                    .filter(task -> task != door && !(mirrored ? before : after).containsKey(task))
                    .sorted(Comparator.comparingInt(task -> task.index))
                    .forEach(task -> {
                        Link link = mirrored ? new Link(door, task, 0, Integer.MAX_VALUE) : new Link(task, door, 0, Integer.MAX_VALUE);
                        after.computeIfAbsent(link.from(), key -> new ArrayList<>()).add(link);
                        before.computeIfAbsent(link.to(), key -> new ArrayList<>()).add(link);
                    });
        }
    }

    private void needs() {
        Map<Task, List<Need>> takes = new HashMap<>();
        Map<Task, List<Need>> gives = new HashMap<>();
        for (Task owner : tasks) {
            for (EquipmentNeed need : owner.step.equipment()) {
                Task until = taskById.get(need.untilStepId());
                Need compiled = new Need(needs.size(), poolById.get(need.poolId()), need.units(), need.amount(), owner,
                        mirrored ? until : owner, mirrored ? owner : until);
                needs.add(compiled);
                takes.computeIfAbsent(compiled.first(), key -> new ArrayList<>()).add(compiled);
                gives.computeIfAbsent(compiled.last(), key -> new ArrayList<>()).add(compiled);
            }
        }
        for (Task task : tasks) {
            task.takes = takes.getOrDefault(task, List.of()).toArray(new Need[0]);
            task.gives = gives.getOrDefault(task, List.of()).toArray(new Need[0]);
        }
    }

    private CompiledOrder compile(int index, Order order) {
        HandOver handOver = order.handOver();
        Task[] finishes = order.cakes().stream().map(cake -> taskById.get(cake.finishStepId())).toArray(Task[]::new);
        Task door = handOver.stepId().isEmpty() ? null : taskById.get(handOver.stepId());
        int earliestStart = Math.max(0, handOver.from() - handOver.offsetMinutes());
        int latestStart = handOver.until() - handOver.offsetMinutes();
        if (door != null && mirrored) {
            door.earliestEnd = Math.max(door.earliestEnd, horizon - latestStart);
            door.latestEnd = Math.min(door.latestEnd, horizon - earliestStart);
        } else if (door != null) {
            door.earliestStart = Math.max(door.earliestStart, earliestStart);
        } else if (mirrored) {
            for (Task finish : finishes) {
                finish.earliestStart = Math.max(finish.earliestStart, horizon - latestStart);
            }
        }
        return new CompiledOrder(index, door, finishes, earliestStart, latestStart, handOver.offsetMinutes(),
                handOver.until(), order.importance(), order.bufferWishMinutes());
    }

    private Limit limit(String from, String to, List<String> held, ColdLimit cold, LifeLimit life) {
        Task[] stays = held.stream().map(taskById::get).toArray(Task[]::new);
        return new Limit(taskById.get(from), taskById.get(to), stays, Optional.ofNullable(cold), Optional.ofNullable(life),
                mirrored);
    }

    /** Kept at both ends: usually the last of them is placed last, but nothing in a problem says that it must be. */
    private void add(Limit limit) {
        for (Task end : new Task[] {limit.first(), limit.last()}) {
            Limit[] old = limitsOf[end.index];
            limitsOf[end.index] = java.util.Arrays.copyOf(old, old.length + 1);
            limitsOf[end.index][old.length] = limit;
        }
    }

    /** A bake ends when it is done; any other unattended step with room between least and most ends when it is taken. */
    private void elastic() {
        for (Task task : tasks) {
            task.elastic = !task.handsOn && !task.bakes && !task.fixed && task.most > task.least && task.after.length > 0;
        }
    }
}
