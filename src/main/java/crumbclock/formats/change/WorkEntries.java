package crumbclock.formats.change;

import crumbclock.domain.change.Change;
import crumbclock.domain.change.StepChoice;
import crumbclock.domain.change.WorkChange;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.work.Step;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.problem.ProblemDraft;
import crumbclock.methods.Method;
import crumbclock.methods.MethodLibrary;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Entries about how things are made to changes. */
record WorkEntries(IssueLog log) {

    private static final int HUNDRED = 100;

    List<Change> stock(Entry entry, ProblemDraft draft, boolean sure) {
        if (!entry.has("of")) {
            var batches = draft.batches().stream().map(BatchRequest::id).toList();
            return known(entry, entry.verb().key(), "the id of a shared batch, or a component with the cake \"of\" which it is", batches, sure)
                    ? List.of(new WorkChange.BatchInStock(entry.object())) : List.of();
        }
        var cake = cake(entry, draft);
        if (cake.isEmpty()) {
            known(entry, "of", "the id of a cake", cakeIds(draft), sure);
            return List.of();
        }
        var method = draft.methods().get(cake.get().methodId());
        return known(entry, entry.verb().key(), "a component of method " + method.id(), components(method), true)
                ? List.of(new WorkChange.ComponentInStock(cake.get().id(), entry.object())) : List.of();
    }

    /** A cake by its whole id: the order's, where that has no other. */
    private static Optional<CakeRequest> cake(Entry entry, ProblemDraft draft) {
        String named = entry.text("of");
        return draft.orders().stream().flatMap(order -> order.cakes().stream()).filter(cake -> cake.id().equals(named)).findFirst();
    }

    private static List<String> cakeIds(ProblemDraft draft) {
        return draft.orders().stream().flatMap(order -> order.cakes().stream()).map(CakeRequest::id).toList();
    }

    private static Set<String> components(Method method) {
        var components = new TreeSet<>(MethodLibrary.componentsOf(method));
        method.options().stream().filter(option -> option.values().stream().anyMatch(value -> value.value().equals("spare")))
                .forEach(option -> components.add(option.id()));
        return components;
    }

    List<Change> time(Entry entry, ProblemDraft draft, boolean sure) {
        if (!entry.has("percent") && !entry.has("minutes")) {
            entry.spot().fault(log, "neither percent nor minutes", "\"percent\" or \"minutes\", or both", "");
            return List.of();
        }
        return choice(entry, draft, sure).map(steps -> List.<Change>of(new WorkChange.StepTime(steps,
                entry.number("percent", HUNDRED), entry.number("minutes", 0)))).orElse(List.of());
    }

    List<Change> window(Entry entry, ProblemDraft draft, boolean sure) {
        return choice(entry, draft, sure).map(steps -> List.<Change>of(new WorkChange.StepWindow(steps,
                entry.number("percent", HUNDRED)))).orElse(List.of());
    }

    private Optional<StepChoice> choice(Entry entry, ProblemDraft draft, boolean sure) {
        var steps = draft.expanded(fault -> { }).steps().stream().filter(step -> !StepChoice.isHandOver(step)).toList();
        Set<String> owners = new TreeSet<>();
        draft.orders().forEach(order -> owners.add(order.id()));
        steps.forEach(step -> owners.add(step.ownerId()));
        if (entry.has("of") && !known(entry, "of", "the id of an order, cake or batch", owners, sure)) {
            return Optional.empty();
        }
        var choice = new StepChoice(entry.object(), entry.text("of"));
        boolean found = steps.stream().anyMatch(choice::holds);
        if (!found && sure) {
            entry.atObject().fault(log, "the name of a step, or a kind of work", Nearest.advice(plain(entry.object()), names(steps, entry)));
        }
        return found ? Optional.of(choice) : Optional.empty();
    }

    private static String plain(String pattern) {
        return pattern.endsWith("*") ? pattern.substring(0, pattern.length() - 1) : pattern;
    }

    private static Set<String> names(List<Step> steps, Entry entry) {
        var any = new StepChoice("*", entry.text("of"));
        Set<String> names = new TreeSet<>();
        steps.stream().filter(any::holds).forEach(step -> {
            names.add(StepChoice.nameOf(step));
            if (!StepChoice.workKindOf(step).isEmpty()) {
                names.add(StepChoice.workKindOf(step));
            }
        });
        return names;
    }

    private boolean known(Entry entry, String key, String expected, Collection<String> known, boolean sure) {
        boolean there = known.contains(entry.text(key));
        if (!there && sure) {
            entry.at(key).fault(log, expected, Nearest.advice(entry.text(key), known));
        }
        return there;
    }
}
