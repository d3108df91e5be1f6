package crumbclock.search.model;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;

/** How one order is placed: one of the decoder's ways. An order that is left out stays so. */
@PlanningEntity
public class OrderWay {

    @PlanningId
    private int order;
    @PlanningVariable(valueRangeProviderRefs = "ways")
    private Integer way;

    public OrderWay() {
    }

    public OrderWay(int order, int way) {
        this.order = order;
        this.way = way;
    }

    public int getOrder() {
        return order;
    }

    public Integer getWay() {
        return way;
    }

    public void setWay(Integer way) {
        this.way = way;
    }
}
