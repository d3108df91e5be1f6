package crumbclock.rules.fact;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.UnitUse;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Lays out who works when and what equipment is held. */
final class WorkReader {

    private final List<Object> facts = new ArrayList<>();
    private final List<WorkSpan> workSpans = new ArrayList<>();
    private final Map<String, Integer> cleanMinutesByPool = new HashMap<>();
    private int heldUnits;

    WorkReader(Problem problem, List<TimedStep> timedSteps) {
        List<Span> days = problem.clock().days();
        problem.kitchen().pools().forEach(pool -> cleanMinutesByPool.put(pool.id(), pool.cleanMinutes()));
        for (TimedStep timed : timedSteps) {
            readWork(timed, days);
            readEquipment(timed);
        }
        facts.addAll(workSpans);
        facts.add(watch(problem));
    }

    List<Object> facts() {
        return facts;
    }

    private void readWork(TimedStep timed, List<Span> days) {
        if (!timed.isHandsOn()) {
            return;
        }
        for (PersonWork work : timed.placed().work()) {
            for (Span written : work.spans()) {
                Span span = FarMinutes.clip(written);
                workSpans.add(new WorkSpan(workSpans.size(), timed.id(), timed.ownerId(),
                        timed.step().handsOn().orElseThrow(), work.personId(), span, dayOf(span.start(), days)));
            }
        }
    }

    private static int dayOf(int minute, List<Span> days) {
        for (int day = 0; day < days.size(); day++) {
            if (days.get(day).contains(minute)) {
                return day;
            }
        }
        return -1;
    }

    private void readEquipment(TimedStep timed) {
        var pools = new TreeSet<String>();
        for (EquipmentNeed need : timed.step().equipment()) {
            facts.add(new PieceNeed(timed.id(), need, timed.span()));
            pools.add(need.poolId());
        }
        for (UnitUse use : timed.placed().units()) {
            facts.add(new HeldUnit(heldUnits++, timed.step(), timed.start(), use,
                    cleanMinutesByPool.getOrDefault(use.poolId(), 0)));
            pools.add(use.poolId());
        }
        for (String pool : pools) {
            int needed = timed.step().equipment().stream().filter(need -> need.poolId().equals(pool))
                    .mapToInt(EquipmentNeed::units).sum();
            int given = (int) timed.placed().units().stream().filter(use -> use.poolId().equals(pool)).count();
            facts.add(new PoolDemand(timed.id(), pool, needed, given, timed.span()));
        }
    }

    private Watch watch(Problem problem) {
        List<Span> present = new ArrayList<>();
        for (Person person : problem.kitchen().people()) {
            List<Span> away = workSpans.stream()
                    .filter(span -> span.work().away() && span.personId().equals(person.id()))
                    .map(WorkSpan::span).toList();
            present.addAll(SpanSet.of(person.shifts()).minus(SpanSet.of(away)).spans());
        }
        return new Watch(SpanSet.of(present));
    }
}
