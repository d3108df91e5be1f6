package crumbclock.formats.plan;

import crumbclock.domain.day.DayState;
import crumbclock.domain.day.DayState.BatchAgain;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.problem.KeptPlan;
import crumbclock.domain.problem.KeptStep;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Repair;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.JsonLoader;
import crumbclock.formats.json.JsonLoader.Loaded;
import crumbclock.formats.json.Spot;
import crumbclock.formats.plan.DayEntry.AgainEntry;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Reads from a plan file what the plan differs in from its problem file, when it was made while the day ran. */
public final class DayStates {

    private static final Map<String, KitchenEvent.Kind> KINDS = Map.of("power cut", KitchenEvent.Kind.POWER_CUT, "oven",
            KitchenEvent.Kind.OVEN_DEAD, "store", KitchenEvent.Kind.STORE_WARM, "person", KitchenEvent.Kind.PERSON_AWAY);

    private final Problem problem;
    private final IssueLog log;
    private final PlanReferences references;

    private DayStates(Problem problem, IssueLog log) {
        this.problem = problem;
        this.log = log;
        this.references = new PlanReferences(problem, log);
    }

    static String word(KitchenEvent.Kind kind) {
        return KINDS.entrySet().stream().filter(entry -> entry.getValue() == kind).map(Map.Entry::getKey).findFirst().orElseThrow();
    }

    private static Optional<Loaded<PlanFile>> load(SourceFile file, IssueLog log) {
        return JsonLoader.loadWithSpot(file, "plan", PlanFile.class, log);
    }

    /**
     * Batches that the plan makes a second time; to be known before its steps can be read.
     *
     * @param problem as it stands in its file
     * @return empty when the log holds an issue
     */
    public static Optional<List<BatchAgain>> again(SourceFile file, Problem problem, IssueLog log) {
        var loaded = load(file, log);
        if (loaded.isEmpty() || loaded.get().value().day() == null) {
            return log.isEmpty() ? Optional.of(List.of()) : Optional.empty();
        }
        var users = new TreeMap<String, Set<String>>();
        problem.batches().forEach(batch -> users.put(batch.id(), problem.cakes().stream().filter(cake -> cake.batchIds().contains(batch.id()))
                .map(cake -> cake.id()).collect(Collectors.toCollection(LinkedHashSet::new))));
        Spot spot = loaded.get().spot().child("day").child("again");
        List<BatchAgain> again = new ArrayList<>();
        for (int i = 0; i < loaded.get().value().day().again().size(); i++) {
            AgainEntry entry = loaded.get().value().day().again().get(i);
            Set<String> of = users.get(entry.batch());
            if (of == null) {
                spot.child(i).child("batch").fault(log, "a batch of the problem, or one made again above", Nearest.advice(entry.batch(), users.keySet()));
                continue;
            }
            for (int j = 0; j < entry.cakes().size(); j++) {
                if (!of.contains(entry.cakes().get(j))) {
                    spot.child(i).child("cakes").child(j).fault(log, "a cake that uses the batch", Nearest.advice(entry.cakes().get(j), of));
                }
            }
            of.removeAll(entry.cakes());
            users.put(secondId(entry.batch(), users.keySet(), problem), new LinkedHashSet<>(entry.cakes()));
            again.add(new BatchAgain(entry.batch(), entry.cakes()));
        }
        return log.isEmpty() ? Optional.of(again) : Optional.empty();
    }

    /** As a second batch is called. */
    private static String secondId(String batch, Set<String> batches, Problem problem) {
        Set<String> taken = new LinkedHashSet<>(batches);
        problem.cakes().forEach(cake -> taken.add(cake.id()));
        return BatchAgain.freeId(batch, taken);
    }

    /**
     * Ids of the repairs that the plan has; to be known before its steps can be read.
     *
     * @param problem with the batches that are made a second time
     * @return none when the log holds an issue
     */
    public static List<String> repairs(SourceFile file, Problem problem, IssueLog log) {
        var ownLog = new IssueLog();
        var loaded = load(file, ownLog).filter(one -> one.value().day() != null);
        loaded.ifPresent(one -> new DayStates(problem, ownLog).known(one.spot().child("day").child("repairs"), one.value().day().repairs(),
                problem.repairs().stream().map(Repair::id).toList(), "a repair of the problem: the id of its first step"));
        ownLog.sorted().forEach(log::add);
        return ownLog.isEmpty() ? loaded.map(one -> one.value().day().repairs()).orElse(List.of()) : List.of();
    }

    /**
     * The whole of it.
     *
     * @param problem with the batches that are made a second time, and with the repairs
     * @return empty for a plan that is for the problem as it stands in its file, and when the log holds an issue
     */
    public static Optional<DayState> read(SourceFile file, Problem problem, IssueLog log) {
        var ownLog = new IssueLog();
        var state = load(file, ownLog).filter(loaded -> loaded.value().day() != null)
                .map(loaded -> new DayStates(problem, ownLog).state(loaded.spot().child("day"), loaded.value()));
        ownLog.sorted().forEach(log::add);
        return ownLog.isEmpty() ? state : Optional.empty();
    }

    private DayState state(Spot spot, PlanFile file) {
        DayEntry day = file.day();
        references.moment(spot, "now", day.now());
        Map<String, Integer> slower = new LinkedHashMap<>();
        Each.of(spot.child("slower"), day.slower(), (at, entry) -> {
            references.step(at, entry.step());
            if (problem.steps().stream().anyMatch(step -> step.id().equals(entry.step()) && step.handsOn().isEmpty())) {
                at.child("step").fault(log, "a step that somebody works on", "");
            }
            return slower.put(entry.step(), entry.minutes());
        });
        Map<String, Integer> lost = new LinkedHashMap<>();
        Each.of(spot.child("lost"), day.lost(), (at, entry) -> {
            references.step(at, entry.step());
            references.moment(at, "lostBy", entry.lostBy());
            return lost.put(entry.step(), entry.lostBy());
        });
        Set<String> placed = file.steps().stream().map(PlanFile.StepEntry::step).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> all = problem.steps().stream().map(step -> step.id()).collect(Collectors.toCollection(LinkedHashSet::new));
        return new DayState(day.now(), Each.of(spot.child("away"), day.away(), this::away), slower,
                known(spot.child("skipped"), day.skipped(), all, "a step of the problem"),
                day.again().stream().map(entry -> new BatchAgain(entry.batch(), entry.cakes())).toList(), day.repairs(), lost,
                known(spot.child("happened"), day.happened(), placed, "a step that this plan places"),
                known(spot.child("goingOn"), day.goingOn(), day.happened(), "a step that stands under \"happened\""),
                new KeptPlan(day.now(), Each.of(spot.child("known"), day.known(), this::kept)));
    }

    private KitchenEvent away(Spot spot, DayEntry.AwayEntry entry) {
        var kind = KINDS.get(entry.kind());
        var kitchen = problem.kitchen();
        List<String> known = switch (kind) {
            case POWER_CUT -> List.of("");
            case OVEN_DEAD -> kitchen.cavities().stream().map(one -> one.id()).toList();
            case STORE_WARM -> kitchen.stores().stream().map(one -> one.id()).toList();
            case PERSON_AWAY -> kitchen.people().stream().map(one -> one.id()).toList();
        };
        if (!known.contains(entry.id())) {
            spot.child("id").fault(log, kind == KitchenEvent.Kind.POWER_CUT ? "no id beside a power cut" : "the id of "
                    + (entry.kind().equals("oven") ? "an " : "a ") + entry.kind().toLowerCase(Locale.ROOT) + " of the kitchen",
                    kind == KitchenEvent.Kind.POWER_CUT ? "" : Nearest.advice(entry.id(), known));
        }
        return new KitchenEvent(0, kind, entry.id(), references.span(spot, entry.from(), entry.until()));
    }

    private KeptStep kept(Spot spot, DayEntry.KnownEntry entry) {
        references.step(spot, entry.step());
        references.moment(spot, "start", entry.start());
        return new KeptStep(entry.step(), entry.start(), entry.people(), entry.putIn(), entry.takeOut());
    }

    private Set<String> known(Spot spot, List<String> ids, Collection<String> known, String expected) {
        for (int i = 0; i < ids.size(); i++) {
            if (!known.contains(ids.get(i))) {
                spot.child(i).fault(log, expected, Nearest.advice(ids.get(i), known));
            }
        }
        return new LinkedHashSet<>(ids);
    }
}
