package crumbclock.bench.reference;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.domain.work.Step;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A kitchen for the exact solver. All orders are made. Kept: waits, rests, earliest times and the horizon; shifts, breaks,
 * opening hours, skills, pace; hands for work and touches; pools with their plain cleaning; one cavity for each bake and
 * one temperature at a time; hand-overs.
 *
 * <p>Relaxed: shelves of a kind are one area and so are surfaces and the racks of a cavity (no circles and rectangles side
 * by side, no heights, no masses); bakes going in or out together or not bind no hands against each other; and left out
 * are heating up, the oven's door, presence, full cleans and what allergens forbid in ovens and on shelves, lives and cold
 * limits, warmth, humid stores, stores that are away, the capacity of a bowl, most minutes a day.
 *
 * <p>Work that may be put down is the one thing that is <em>not</em> a relaxation, unless asked for: it has to be done in
 * one piece, though short touches may fall into it. The relaxed model gives such work no hands at all; only its bound
 * holds for every plan.
 *
 * <p>The objective is lateness, W01, W02 and W07.
 */
final class KitchenModel {

    /** A medium point in soft ones: not quite "before all wishes", but sums stay exact. */
    static final long MEDIUM = 100;

    private final CpModel model = Exact.newModel();
    private final Problem problem;
    private final int horizon;
    private final boolean relaxed;
    private final Map<String, StepVars> steps = new LinkedHashMap<>();
    private final LinearExprBuilder lateness = LinearExpr.newBuilder();
    private final LinearExprBuilder wishes = LinearExpr.newBuilder();

    private KitchenModel(Problem problem, boolean relaxed) {
        this.problem = problem;
        this.relaxed = relaxed;
        this.horizon = problem.clock().horizonMinutes();
    }

    static KitchenModel of(Problem problem, boolean relaxed) {
        KitchenModel kitchen = new KitchenModel(problem, relaxed);
        kitchen.build();
        return kitchen;
    }

    CpModel model() {
        return model;
    }

    LinearArgument lateness() {
        return lateness.build();
    }

    LinearArgument wishes() {
        return wishes.build();
    }

    private void build() {
        problem.steps().forEach(step -> steps.put(step.id(), StepVars.of(model, step, horizon)));
        HandsModel hands = new HandsModel(model, problem);
        steps.values().forEach(vars -> step(vars, hands));
        hands.close();
        RoomModel rooms = new RoomModel(model, problem, steps);
        rooms.pools();
        rooms.ovens();
        rooms.places();
        problem.waits().forEach(wait -> {
            LinearArgument from = steps.get(wait.fromStepId()).end();
            LinearArgument to = steps.get(wait.toStepId()).start();
            model.addGreaterOrEqual(to, LinearExpr.affine(from, 1, wait.leastMinutes()));
            if (wait.hasMost()) {
                model.addLessOrEqual(to, LinearExpr.affine(from, 1, wait.mostMinutes()));
            }
        });
        Map<String, LinearArgument> moments = new LinkedHashMap<>();
        problem.orders().forEach(order -> moments.put(order.id(), order(order)));
        problem.freshnessWishes().forEach(wish -> freshness(wish, moments.get(wish.orderId())));
        end();
        model.minimize(LinearExpr.newBuilder().addTerm(lateness.build(), MEDIUM).add(wishes.build()).build());
    }

    private void step(StepVars vars, HandsModel hands) {
        Step step = vars.step();
        if (step.handsOn().isPresent()) {
            if (relaxed && step.handsOn().get().mayPutDown()) {
                hands.workWithoutHands(vars);
            } else {
                hands.work(vars);
            }
            return;
        }
        int touches = step.putInMinutes() + step.takeOutMinutes();
        model.addGreaterOrEqual(vars.length(), touches + step.leastMinutes());
        if (step.mostMinutes() < horizon) {
            model.addLessOrEqual(vars.length(), touches + step.mostMinutes());
        }
        boolean bake = step.oven().isPresent();
        step.putIn().ifPresent(touch -> hands.touch(touch, vars.start(), bake));
        step.takeOut().ifPresent(touch -> hands.touch(touch, LinearExpr.affine(vars.end(), 1, -touch.minutes()), bake));
    }

    /** Hand-over, lateness and buffer of an order; answers with the moment from which freshness counts back. */
    private LinearArgument order(Order order) {
        boolean setAside = order.handOver().way() == HandOverWay.SET_ASIDE;
        int due = order.handOver().until();
        IntVar late = model.newIntVar(0, horizon, "");
        IntVar shortBuffer = model.newIntVar(0, 2L * horizon, "");
        LinearArgument leaves = setAside ? LinearExpr.constant(due) : steps.get(order.handOver().stepId()).start();
        LinearArgument moment = setAside ? leaves : LinearExpr.affine(leaves, 1, order.handOver().offsetMinutes());
        if (setAside) {
            order.cakes().forEach(cake -> model.addGreaterOrEqual(late,
                    LinearExpr.affine(steps.get(cake.finishStepId()).end(), 1, -due)));
        } else {
            model.addGreaterOrEqual(moment, order.handOver().from());
            model.addGreaterOrEqual(late, LinearExpr.affine(moment, 1, -due));
            // an order with one cake and the cake may share an id
            order.cakes().forEach(cake -> steps.values().stream().filter(vars -> vars.step().ownerId().equals(cake.id())
                    && !vars.step().id().equals(order.handOver().stepId()))
                    .forEach(vars -> model.addLessOrEqual(vars.end(), leaves)));
        }
        order.cakes().forEach(cake -> model.addGreaterOrEqual(shortBuffer, LinearExpr.newBuilder()
                .addTerm(steps.get(cake.finishStepId()).end(), 1).addTerm(leaves, -1).add(order.bufferWishMinutes()).build()));
        IntVar isLate = model.newIntVar(0, 1, "");
        model.addLessOrEqual(late, LinearExpr.term(isLate, horizon));
        lateness.addTerm(late, (long) problem.weights().lateMinute() * order.importance());
        lateness.addTerm(isLate, problem.weights().lateOrder());
        wishes.addTerm(shortBuffer, problem.weights().bufferMinute());
        return moment;
    }

    private void freshness(FreshnessWish wish, LinearArgument moment) {
        IntVar stale = model.newIntVar(0, horizon, "");
        model.addGreaterOrEqual(stale, LinearExpr.newBuilder().addTerm(moment, 1)
                .addTerm(steps.get(wish.fromStepId()).end(), -1).add(-wish.wishMinutes()).build());
        wishes.addTerm(stale, problem.weights().staleMinute());
    }

    private void end() {
        IntVar last = model.newIntVar(0, horizon, "");
        steps.values().forEach(vars -> model.addGreaterOrEqual(last, vars.end()));
        wishes.addTerm(last, problem.weights().endMinute());
    }
}
