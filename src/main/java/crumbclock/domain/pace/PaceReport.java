package crumbclock.domain.pace;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What finished days say of minutes.
 *
 * @param kitchen      whose figures are in use
 * @param days         how many day files were read
 * @param paces        in the kitchen's order of people, each by kind of work: kinds that the kitchen has a pace for, or that were seen
 * @param steps        by name, hands-on ones first
 * @param leftOut      by time
 * @param withoutStart steps recorded as done whose beginning nobody wrote down
 * @param withoutTimes steps told to be slower whose beginning or end nobody wrote down
 */
public record PaceReport(String kitchen, int days, List<PaceRow> paces, List<StepRow> steps, List<LeftOut> leftOut, int withoutStart,
        int withoutTimes) {

    /** Nothing was written down. */
    public static final PaceReport NOTHING = new PaceReport("", 0, List.of(), List.of(), List.of(), 0, 0);

    public PaceReport {
        paces = List.copyOf(paces);
        steps = List.copyOf(steps);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Adds up what was seen, in whatever order it comes.
     *
     * @param seen of people of this kitchen, or of nobody
     */
    public static PaceReport of(Kitchen kitchen, int days, List<SeenStep> seen, List<LeftOut> leftOut, int withoutStart, int withoutTimes) {
        List<SeenStep> byTime = seen.stream().sorted(Comparator.comparing((SeenStep step) -> step.from().toInstant())
                .thenComparing(SeenStep::stepId)
                .thenComparing(step -> step.until().toInstant()).thenComparing(SeenStep::personId).thenComparingInt(SeenStep::plainMinutes)
                .thenComparingInt(SeenStep::plannedMinutes).thenComparingInt(SeenStep::realMinutes)).toList();
        List<PaceRow> paces = new ArrayList<>();
        for (Person person : kitchen.people()) {
            var kinds = new TreeSet<>(person.paceByWork().keySet());
            List<SeenStep> own = byTime.stream().filter(step -> step.tellsPace() && step.personId().equals(person.id())).toList();
            own.forEach(step -> kinds.add(step.workKind()));
            kinds.forEach(kind -> paces.add(pace(person, kind, own.stream().filter(step -> step.workKind().equals(kind)).toList())));
        }
        return new PaceReport(kitchen.name(), days, paces, steps(byTime), leftOut.stream().sorted(Comparator
                .comparing((LeftOut one) -> one.from().toInstant()).thenComparing(LeftOut::stepId)
                .thenComparing(one -> one.until().toInstant()).thenComparing(LeftOut::reason)).toList(),
                withoutStart, withoutTimes);
    }

    private static PaceRow pace(Person person, String kind, List<SeenStep> steps) {
        return new PaceRow(person.id(), person.name(), kind, person.paceByWork().getOrDefault(kind, 1.0), steps.isEmpty() ? Optional.empty()
                : Optional.of(Spread.of(steps.stream().map(SeenStep::pace).toList())), steps);
    }

    private static List<StepRow> steps(List<SeenStep> seen) {
        Map<String, List<SeenStep>> handsOn = new TreeMap<>();
        Map<String, List<SeenStep>> alone = new TreeMap<>();
        seen.forEach(step -> (step.plainMinutes() > 0 ? handsOn : alone).computeIfAbsent(step.stepName(), key -> new ArrayList<>()).add(step));
        List<StepRow> rows = new ArrayList<>();
        handsOn.values().forEach(steps -> rows.add(StepRow.of(steps)));
        alone.values().forEach(steps -> rows.add(StepRow.of(steps)));
        return rows;
    }

    /** How many steps were reckoned with. */
    public int seen() {
        return steps.stream().mapToInt(step -> step.minutes().seen()).sum();
    }

    /** Paces to take instead of those in use: by person, in the kitchen's order, and kind of work. */
    public Map<String, Map<String, Double>> learned() {
        Map<String, Map<String, Double>> learned = new LinkedHashMap<>();
        paces.forEach(row -> row.learned().ifPresent(
                pace -> learned.computeIfAbsent(row.personId(), key -> new LinkedHashMap<>()).put(row.workKind(), pace)));
        return learned;
    }
}
