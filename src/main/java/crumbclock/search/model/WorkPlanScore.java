package crumbclock.search.model;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import crumbclock.engine.cost.Cost;

/**
 * The score of an order of work: what its timetable costs. Hard is always 0, because the decoder makes sound timetables
 * only; an easy calculator is as fast as an incremental one here, since every decode starts afresh.
 */
public class WorkPlanScore implements EasyScoreCalculator<WorkPlan, HardMediumSoftLongScore> {

    @Override
    public HardMediumSoftLongScore calculateScore(WorkPlan plan) {
        Cost cost = plan.getDesk().weigh(plan.getOrder().getSequence());
        return HardMediumSoftLongScore.of(0, -cost.medium(), -cost.soft());
    }
}
