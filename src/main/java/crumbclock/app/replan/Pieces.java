package crumbclock.app.replan;

import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.UnitUse;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Deals the pieces of a pool anew where two steps would have the same one at once: pieces of a pool are alike. */
final class Pieces {

    private Pieces() {
    }

    private record Use(String stepId, UnitUse use, boolean known) {

        boolean meets(Use other, int unit, int cleanMinutes) {
            return other.use.unit() == unit && Math.max(use.from(), other.use.from() ) < Math.min(use.until() + cleanMinutes,
                    other.use.until() + cleanMinutes) && !(use.from() == use.until()) && !(other.use.from() == other.use.until());
        }
    }

    /** @param known steps whose pieces are facts; they all began before every other step */
    static List<PlacedStep> dealt(List<PlacedStep> steps, Pool pool, Set<String> known) {
        List<Use> uses = new ArrayList<>();
        for (PlacedStep step : steps) {
            step.units().stream().filter(use -> use.poolId().equals(pool.id()))
                    .forEach(use -> uses.add(new Use(step.stepId(), use, known.contains(step.stepId()))));
        }
        uses.sort(Comparator.comparing((Use use) -> !use.known()).thenComparingInt(use -> use.use().from()));
        if (isFine(uses, pool)) {
            return steps;
        }
        Map<String, List<UnitUse>> dealt = new LinkedHashMap<>();
        List<Use> given = new ArrayList<>();
        for (Use use : uses) {
            Use own = use.known() ? use : new Use(use.stepId(), at(use.use(), freeUnit(use, given, pool)), false);
            given.add(own);
            dealt.computeIfAbsent(use.stepId(), key -> new ArrayList<>()).add(own.use());
        }
        return steps.stream().map(step -> {
            List<UnitUse> units = new ArrayList<>(step.units().stream().filter(use -> !use.poolId().equals(pool.id())).toList());
            units.addAll(dealt.getOrDefault(step.stepId(), List.of()));
            return dealt.containsKey(step.stepId()) && !known.contains(step.stepId())
                    ? new PlacedStep(step.stepId(), step.start(), step.end(), step.work(), units, step.surfaceId(), step.cavityId()) : step;
        }).toList();
    }

    private static UnitUse at(UnitUse use, int unit) {
        return new UnitUse(use.poolId(), unit, use.from(), use.until());
    }

    private static boolean isFine(List<Use> uses, Pool pool) {
        for (int one = 0; one < uses.size(); one++) {
            for (int other = one + 1; other < uses.size(); other++) {
                if (uses.get(one).meets(uses.get(other), uses.get(one).use().unit(), pool.cleanMinutes())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Its own piece if that is free, else the first free one; its own when none is, which the audit will tell. */
    private static int freeUnit(Use use, List<Use> given, Pool pool) {
        List<Integer> candidates = new ArrayList<>(List.of(use.use().unit()));
        for (int unit = 0; unit < pool.count(); unit++) {
            candidates.add(unit);
        }
        Span span = new Span(use.use().from(), use.use().until());
        return candidates.stream().filter(unit -> given.stream().noneMatch(other -> use.meets(other, unit, pool.cleanMinutes()))
                && pool.away().stream().noneMatch(away -> away.unit() == unit && away.when().overlaps(span)))
                .findFirst().orElse(use.use().unit());
    }
}
