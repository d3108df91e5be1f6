package crumbclock.app.promise;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import java.util.List;

/**
 * What is asked.
 *
 * @param base    the problem without the new order
 * @param have    a plan of it, which people have; what it breaks, others may break, too
 * @param asked   the problem with the new order, as it is wished, and nothing else different
 * @param orderId the new order
 * @param now     minute at which it is asked; what begins before stays as it is
 * @param helps   what might help
 */
public record Question(Problem base, Plan have, Problem asked, String orderId, int now, List<Help> helps) {

    public Question {
        helps = List.copyOf(helps);
    }

    /**
     * The question about a plan in hand.
     *
     * @param asked the problem with the new order, as it stands in the files
     * @param helps likewise
     */
    public static Question about(PlanInHand have, Problem asked, String orderId, int now, List<Help> helps) {
        return new Question(have.problem(), have.plan(), have.with(asked), orderId, now,
                helps.stream().map(help -> new Help(help.name(), help.words(), have.with(help.problem()))).toList());
    }

    /**
     * Something that might help.
     *
     * @param name    fit for a folder
     * @param words   for people
     * @param problem the asked problem with it
     */
    public record Help(String name, String words, Problem problem) {
    }
}
