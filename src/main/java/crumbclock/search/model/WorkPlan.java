package crumbclock.search.model;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningEntityProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import crumbclock.engine.decode.Decoder;
import java.util.ArrayList;
import java.util.List;

/** Timefold's planning solution: the order of work, the way each order is placed, and the desk at which they are decoded. */
@PlanningSolution
public class WorkPlan {

    @ProblemFactProperty
    private DecodeDesk desk;
    @ValueRangeProvider
    @ProblemFactCollectionProperty
    private List<UnitRef> units = new ArrayList<>();
    @PlanningEntityProperty
    private WorkOrder order;
    @ValueRangeProvider(id = "ways")
    @ProblemFactCollectionProperty
    private List<Integer> possibleWays = List.of(Decoder.BUFFERED, Decoder.BUFFERED_TOGETHER, Decoder.SPLIT,
            Decoder.TOGETHER, Decoder.LEFT_OUT);
    @PlanningEntityCollectionProperty
    private List<OrderWay> ways = new ArrayList<>();
    @PlanningScore
    private HardMediumSoftLongScore score;

    public WorkPlan() {
    }

    /** @param ways of each order, by its index */
    public WorkPlan(DecodeDesk desk, List<UnitRef> sequence, int[] ways) {
        this.desk = desk;
        this.units = List.copyOf(sequence);
        this.order = new WorkOrder(new ArrayList<>(sequence));
        for (int index = 0; index < ways.length; index++) {
            this.ways.add(new OrderWay(index, ways[index]));
        }
    }

    public DecodeDesk getDesk() {
        return desk;
    }

    public WorkOrder getOrder() {
        return order;
    }

    public List<OrderWay> getWays() {
        return ways;
    }

    public List<UnitRef> getUnits() {
        return units;
    }

    public HardMediumSoftLongScore getScore() {
        return score;
    }

    public void setScore(HardMediumSoftLongScore score) {
        this.score = score;
    }
}
