package crumbclock.search.model;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import crumbclock.search.model.DecodeDesk.Weight;

/**
 * The score of an order of work: what its timetable costs; hard counts what did not work out. An easy calculator is as
 * fast as an incremental one here, since every decode starts afresh.
 */
public class WorkPlanScore implements EasyScoreCalculator<WorkPlan, HardMediumSoftLongScore> {

    @Override
    public HardMediumSoftLongScore calculateScore(WorkPlan plan) {
        Weight weight = plan.getDesk().weigh(plan);
        return HardMediumSoftLongScore.of(-weight.breaks(), -weight.cost().medium(), -weight.cost().soft());
    }
}
