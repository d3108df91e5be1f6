package crumbclock.report.view;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One problem and one plan with their ids resolved. Ids that name nothing are shown as they are: a report must never
 * be the reason why a faulty plan cannot be looked at.
 */
public final class PlanView {

    private final Problem problem;
    private final Plan plan;
    private final ClockText clock;
    private final Map<String, Step> steps;
    private final Map<String, PlacedStep> placed;
    private final Map<String, Cake> cakes;
    private final Map<String, Batch> batches;
    private final Map<String, Order> orders;
    private final Map<String, List<PlacedTouch>> touches;
    private final Map<String, List<Placement>> placements;
    private final Map<String, List<PanPlace>> pans;
    private final Map<String, List<Wait>> waitsFrom;
    private final Map<String, List<Wait>> waitsTo;
    private final Set<String> fixed = new LinkedHashSet<>();

    public PlanView(Problem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        this.clock = new ClockText(problem.clock());
        var timetable = plan.timetable();
        this.steps = byId(problem.steps(), Step::id);
        this.placed = byId(timetable.steps(), PlacedStep::stepId);
        this.cakes = byId(problem.cakes(), Cake::id);
        this.batches = byId(problem.batches(), Batch::id);
        this.orders = byId(problem.orders(), Order::id);
        this.touches = group(timetable.touches(), PlacedTouch::stepId);
        this.placements = group(timetable.placements(), Placement::stepId);
        this.pans = group(timetable.pans(), PanPlace::stepId);
        this.waitsFrom = group(problem.waits(), Wait::fromStepId);
        this.waitsTo = group(problem.waits(), Wait::toStepId);
        problem.fixedSteps().forEach(one -> fixed.add(one.step().stepId()));
    }

    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        all.forEach(one -> map.putIfAbsent(id.apply(one), one));
        return map;
    }

    private static <T> Map<String, List<T>> group(List<T> all, Function<T, String> id) {
        return all.stream().collect(Collectors.groupingBy(id, LinkedHashMap::new, Collectors.toList()));
    }

    public Problem problem() {
        return problem;
    }

    public Plan plan() {
        return plan;
    }

    public ClockText clock() {
        return clock;
    }

    public Optional<Step> findStep(String id) {
        return Optional.ofNullable(steps.get(id));
    }

    public Optional<PlacedStep> findPlaced(String stepId) {
        return Optional.ofNullable(placed.get(stepId));
    }

    public List<PlacedTouch> touches(String stepId) {
        return touches.getOrDefault(stepId, List.of());
    }

    public List<Placement> placements(String stepId) {
        return placements.getOrDefault(stepId, List.of());
    }

    public List<PanPlace> pans(String stepId) {
        return pans.getOrDefault(stepId, List.of());
    }

    public List<Wait> waitsFrom(String stepId) {
        return waitsFrom.getOrDefault(stepId, List.of());
    }

    public List<Wait> waitsTo(String stepId) {
        return waitsTo.getOrDefault(stepId, List.of());
    }

    /** Whether the step is done, running or pinned, so that the plan only repeats what is known (rule R15). */
    public boolean isFixed(String stepId) {
        return fixed.contains(stepId);
    }

    /** {@code final coat}, or {@code bake (10 in tier)}. */
    public String stepName(String stepId) {
        return findStep(stepId).map(step -> step.part().isEmpty() ? step.name() : step.name() + " (" + step.part() + ")")
                .orElse(stepId);
    }

    public String ownerId(String stepId) {
        return findStep(stepId).map(Step::ownerId).orElse("");
    }

    /** The shortest name that is still unique: the order's id for the only cake of an order, else the owner's id. */
    public String ownerLabel(String ownerId) {
        var cake = cakes.get(ownerId);
        if (cake != null && orders.containsKey(cake.orderId()) && orders.get(cake.orderId()).cakes().size() == 1) {
            return cake.orderId();
        }
        return ownerId;
    }

    public String ownerTitle(String ownerId) {
        if (cakes.containsKey(ownerId)) {
            return cakes.get(ownerId).title();
        }
        if (batches.containsKey(ownerId)) {
            return batches.get(ownerId).title();
        }
        return orders.containsKey(ownerId) ? orders.get(ownerId).title() : ownerId;
    }

    /** Position of the owner's order among all orders, −1 for a batch, which belongs to several. */
    public int orderIndex(String ownerId) {
        var orderId = cakes.containsKey(ownerId) ? cakes.get(ownerId).orderId() : ownerId;
        return new ArrayList<>(orders.keySet()).indexOf(orderId);
    }

    public Optional<Order> findOrder(String orderId) {
        return Optional.ofNullable(orders.get(orderId));
    }

    public String personName(String personId) {
        return problem.kitchen().people().stream().filter(person -> person.id().equals(personId)).map(Person::name)
                .findFirst().orElse(personId);
    }

    public Optional<Cavity> findCavity(String cavityId) {
        return problem.kitchen().cavities().stream().filter(cavity -> cavity.id().equals(cavityId)).findFirst();
    }

    public Optional<Store> findStore(String storeId) {
        return problem.kitchen().stores().stream().filter(store -> store.id().equals(storeId)).findFirst();
    }

    public Optional<Shelf> findShelf(String storeId, String shelfId) {
        return findStore(storeId).flatMap(store ->
                store.shelves().stream().filter(shelf -> shelf.id().equals(shelfId)).findFirst());
    }

    public String surfaceName(String surfaceId) {
        return problem.kitchen().surfaces().stream().filter(surface -> surface.id().equals(surfaceId))
                .map(Surface::name).findFirst().orElse(surfaceId);
    }

    /** {@code Mixer bowl}, with its number when there are several of them. */
    public String unitName(String poolId, int unit) {
        return problem.kitchen().pools().stream().filter(pool -> pool.id().equals(poolId))
                .map(pool -> pool.count() > 1 ? pool.name() + " " + (unit + 1) : pool.name())
                .findFirst().orElse(poolId + " " + (unit + 1));
    }

    public Optional<Pool> findPool(String poolId) {
        return problem.kitchen().pools().stream().filter(pool -> pool.id().equals(poolId)).findFirst();
    }

    /** Minutes of hands-on work and touches of one person within the whole plan. */
    public int handsMinutes(String personId) {
        int work = plan.timetable().steps().stream().flatMap(step -> step.work().stream())
                .filter(one -> one.personId().equals(personId)).map(PersonWork::spans).flatMap(List::stream)
                .mapToInt(span -> span.minutes()).sum();
        return work + plan.timetable().touches().stream().filter(touch -> touch.personId().equals(personId))
                .mapToInt(touch -> touch.when().minutes()).sum();
    }
}
