package crumbclock.formats.plan;

import java.util.List;

/**
 * A plan as its file has it. Pieces of equipment, pans, racks and pieces of a form count from 1, as people do; the domain counts them
 * from 0. Absent keys are null until the constructor gives them their default; a plan without a bound, or made for its problem file as it is, keeps null there.
 */
record PlanFile(String problem, SearchEntry search, long mediumCost, long softCost, BoundEntry bound, DayEntry day, List<CostEntry> cost,
        List<FindingEntry> findings, List<OutcomeEntry> outcomes, List<StepEntry> steps, List<TouchEntry> touches,
        List<OvenRunEntry> ovenRuns, List<PanEntry> pans, List<PlacementEntry> placements, List<CleaningEntry> cleanings) {

    PlanFile {
        search = search == null ? new SearchEntry(0, 0) : search;
        cost = orNone(cost);
        findings = orNone(findings);
        outcomes = orNone(outcomes);
        touches = orNone(touches);
        ovenRuns = orNone(ovenRuns);
        pans = orNone(pans);
        placements = orNone(placements);
        cleanings = orNone(cleanings);
    }

    record SearchEntry(long seed, long schedules) {
    }

    record BoundEntry(long mediumCost, int lateMinutes, int end, Boolean allPossible, List<OrderBoundEntry> orders) {

        BoundEntry {
            allPossible = allPossible == null || allPossible;
            orders = orNone(orders);
        }
    }

    record OrderBoundEntry(String order, boolean possible, Integer ready, Integer handOver, int lateMinutes) {

        OrderBoundEntry {
            ready = ready == null ? -1 : ready;
            handOver = handOver == null ? -1 : handOver;
        }
    }

    record CostEntry(String name, String title, boolean medium, long points, int matches) {
    }

    record FindingEntry(String rule, List<String> items, String place, int from, int until, String message) {
    }

    record ReasonEntry(String rule, String message) {
    }

    record OutcomeEntry(String order, boolean possible, Integer ready, Integer handOver, int bufferMinutes, int lateMinutes,
            List<ReasonEntry> reasons, List<String> waitsFor) {

        OutcomeEntry {
            ready = ready == null ? -1 : ready;
            handOver = handOver == null ? -1 : handOver;
            reasons = orNone(reasons);
            waitsFor = orNone(waitsFor);
        }
    }

    record SpanEntry(int from, int until) {
    }

    record WorkEntry(String person, List<SpanEntry> spans) {
    }

    record UnitEntry(String pool, int unit, int from, int until) {
    }

    record StepEntry(String step, int start, int end, List<WorkEntry> work, List<UnitEntry> units, String surface, String cavity) {

        StepEntry {
            work = orNone(work);
            units = orNone(units);
            surface = surface == null ? "" : surface;
            cavity = cavity == null ? "" : cavity;
        }
    }

    record TouchEntry(String step, String at, String person, int from, int until) {
    }

    record OvenRunEntry(String cavity, int temperature, int from, int ready, int until) {
    }

    record PanEntry(String step, int pan, String cavity, int rack, int x, int y, boolean turned) {
    }

    record PlacementEntry(String step, int piece, String store, String shelf, int x, int y, boolean turned, int from, int until) {
    }

    record CleaningEntry(String pool, int unit, int from, int until) {
    }

    private static <T> List<T> orNone(List<T> values) {
        return values == null ? List.of() : values;
    }
}
