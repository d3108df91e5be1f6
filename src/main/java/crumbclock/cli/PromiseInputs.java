package crumbclock.cli;

import crumbclock.app.promise.HelpIdeas;
import crumbclock.app.promise.PlanInHand;
import crumbclock.app.promise.Question;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.formats.change.Scenario;
import crumbclock.formats.change.StockChoices;
import crumbclock.formats.problem.ProblemDraft;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What `promise` works on, read and compared.
 *
 * @param draft   the problem file, before any change
 * @param base    without the new order
 * @param asked   with it
 * @param orderId the new order
 */
record PromiseInputs(ProblemDraft draft, Scenario base, Scenario asked, String orderId) {

    /**
     * @param text how the user named the order
     * @throws BadInput when there is not exactly one new order, or something else is different, too
     */
    static PromiseInputs of(ProblemDraft draft, Scenario base, Scenario asked, String text) {
        Problem before = base.problem();
        Problem after = asked.problem();
        Set<String> known = new LinkedHashSet<>(before.orders().stream().map(Order::id).toList());
        List<String> more = after.orders().stream().map(Order::id).filter(id -> !known.contains(id)).toList();
        if (more.size() != 1) {
            throw new BadInput("ORDER " + text + ": brings " + (more.isEmpty() ? "no new order" : more.size() + " new orders (" + String.join(", ", more) + ")")
                    + "; expected exactly one. Bring one with \"add\", \"addFrom\" or \"copy\".");
        }
        if (!after.kitchen().equals(before.kitchen()) || !after.orders().containsAll(before.orders()) || !stepsOf(after).containsAll(before.steps())) {
            throw new BadInput("ORDER " + text + ": changes more than the one new order " + more.get(0)
                    + "; expected nothing else, so that what it costs the others can be told. Give other changes with --change.");
        }
        return new PromiseInputs(draft, base, asked, more.get(0));
    }

    private static Set<Step> stepsOf(Problem problem) {
        return new LinkedHashSet<>(problem.steps());
    }

    /** When its first step may begin: that is when it was asked for, as far as anybody said. */
    int askedAt() {
        Set<String> others = new LinkedHashSet<>(base.problem().steps().stream().map(Step::id).toList());
        return asked.problem().steps().stream().filter(step -> !others.contains(step.id())).mapToInt(Step::earliest).min().orElse(0);
    }

    /** The problem as it stands in its file; empty when nothing is changed but for the order, or when it has faults without the changes. */
    Optional<Problem> unchanged() {
        List<Object> faults = new ArrayList<>();
        Optional<Problem> plain = base.changes().isEmpty() ? Optional.empty() : Optional.of(draft.problem(faults::add));
        return faults.isEmpty() ? plain : Optional.empty();
    }

    Question question(PlanInHand have, int now) {
        var with = draft.with(asked.changes());
        List<Question.Help> helps = new ArrayList<>();
        for (HelpIdeas.Idea idea : HelpIdeas.of(asked.problem(), orderId, StockChoices.of(with, orderId), now)) {
            List<Object> faults = new ArrayList<>();
            Problem problem = with.titled(asked.problem().title() + ", with: " + idea.words()).with(idea.changes()).problem(faults::add);
            if (faults.isEmpty()) {
                helps.add(new Question.Help(idea.name(), idea.words(), problem));
            }
        }
        return Question.about(have, asked.problem(), orderId, now, helps);
    }
}
