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
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Entries about how things are made to changes. */
record WorkEntries(IssueLog log) {

    private static final String ALL = "*";
    private static final int HUNDRED = 100;

    List<Change> stock(Entry entry, ProblemDraft draft, boolean sure) {
        if (!entry.has("of")) {
            var batches = draft.batches().stream().map(BatchRequest::id).toList();
            return known(entry, entry.verb().key(), "the id of a shared batch, or a component with the cake \"of\" which it is", batches, sure)
                    ? List.of(new WorkChange.BatchInStock(entry.object())) : List.of();
        }
        boolean all = entry.text("of").equals(ALL);
        var cakes = draft.orders().stream().flatMap(order -> order.cakes().stream())
                .filter(cake -> all || cake.id().equals(entry.text("of"))).toList();
        if (cakes.isEmpty()) {
            known(entry, "of", "the id of a cake, or * for all", draft.orders().stream().flatMap(order -> order.cakes().stream())
                    .map(CakeRequest::id).toList(), sure);
            return List.of();
        }
        Set<String> components = new TreeSet<>();
        cakes.forEach(cake -> components.addAll(StockChoices.components(draft.methods().get(cake.methodId()))));
        return !known(entry, entry.verb().key(), "a component that is made for it", components, true) ? List.of()
                : cakes.stream().filter(cake -> StockChoices.components(draft.methods().get(cake.methodId())).contains(entry.object()))
                        .<Change>map(cake -> new WorkChange.ComponentInStock(cake.id(), entry.object())).toList();
    }

    /** A batch like another one. */
    List<Change> copy(Entry entry, String batchId, ProblemDraft draft) {
        String id = entry.text("as");
        if (!Things.of(draft).isFree(Things.Kind.BATCH, id)) {
            entry.at("as").fault(log, "an id that no batch or order has", "");
            return List.of();
        }
        return draft.batches().stream().filter(batch -> batch.id().equals(batchId)).<Change>map(batch -> new WorkChange.BatchAdded(
                new BatchRequest(id, id, batch.methodId(), batch.amount(), batch.earliest(), batch.contains(), batch.freeFrom(),
                        batch.options(), batch.inStock()))).toList();
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
            entry.atObject().fault(log, "the name of a step, or a kind of work", advice(plain(entry.object()), names(steps, entry)));
        }
        return found ? Optional.of(choice) : Optional.empty();
    }

    /** Names that begin like it are nearer than those that are spelt like it. */
    private static String advice(String unknown, Set<String> names) {
        var longer = names.stream().filter(name -> name.startsWith(unknown)).toList();
        return unknown.isEmpty() || longer.isEmpty() ? Nearest.advice(unknown, names)
                : "Did you mean \"" + unknown + "*\", which is " + String.join(", ", longer) + "?";
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
