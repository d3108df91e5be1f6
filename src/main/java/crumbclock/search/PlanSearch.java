package crumbclock.search;

import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.decode.CostMeter;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;

/** The way into the search: a problem in, the best timetable found out. */
public final class PlanSearch {

    private PlanSearch() {
    }

    /**
     * Searches until a limit is reached or the listener asks to stop; always answers with a timetable, at worst one
     * in which no order is possible.
     */
    public static SearchResult search(Problem problem, SearchLimits limits, SearchListener listener) {
        Cost best = null;
        Timetable timetable = null;
        long schedules = 0;
        for (boolean mirrored : new boolean[] {false, true}) {
            Decoder decoder = new Decoder(CompiledProblem.of(problem, mirrored));
            CostMeter meter = new CostMeter(decoder);
            for (int[] order : StartOrders.of(decoder.compiled())) {
                decoder.decode(order);
                Cost cost = meter.measure();
                if (best == null || cost.compareTo(best) < 0) {
                    best = cost;
                    timetable = new TimetableBuilder(decoder).build();
                    listener.improved(schedules + decoder.schedules(), best);
                }
            }
            schedules += decoder.schedules();
        }
        return new SearchResult(timetable, best, schedules);
    }
}
