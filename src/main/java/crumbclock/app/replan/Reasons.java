package crumbclock.app.replan;

import crumbclock.app.reason.SlackTrace;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.decode.Decoder;
import crumbclock.engine.decode.TimetableBuilder;
import crumbclock.engine.model.CompiledProblem;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Why an order will be late or not possible, found out fast: whether it could be on time if it had the kitchen to itself from
 * now on.
 */
final class Reasons {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private final Problem whole;
    private final Decoder decoder;

    private Reasons(Problem whole, Problem rest) {
        this.whole = whole;
        this.decoder = new Decoder(CompiledProblem.of(rest, false));
    }

    /**
     * @param whole with all records
     * @param rest  as the engine knows it, with nothing pinned
     */
    static Timetable explained(Problem whole, Problem rest, Timetable timetable) {
        boolean allFine = timetable.outcomes().stream().allMatch(outcome -> outcome.possible() && outcome.lateMinutes() == 0);
        Reasons reasons = allFine ? null : new Reasons(whole, rest);
        var trace = new SlackTrace(whole, timetable);
        return timetable.withEachOutcome(outcome -> outcome.explained(
                outcome.possible() && outcome.lateMinutes() == 0 ? List.of() : reasons.of(outcome),
                outcome.possible() ? trace.stepsWithoutSlack(outcome.orderId()) : List.of()));
    }

    /**
     * The step of an order for which no place is found even when it has the kitchen to itself; empty when each has one.
     *
     * @param rest as the engine knows it, with nothing pinned
     */
    static String stepWithoutPlace(Problem whole, Problem rest, String orderId) {
        var reasons = new Reasons(whole, rest);
        int index = reasons.alone(orderId);
        boolean known = !reasons.decoder.isPossible(index) && reasons.decoder.reasonTask(index) != null;
        return known ? RestProblem.original(reasons.decoder.reasonTask(index).step.id()) : "";
    }

    /** Plans one order and nothing else; its index. */
    private int alone(String orderId) {
        boolean[] wanted = new boolean[whole.orders().size()];
        int index = IntStream.range(0, wanted.length).filter(order -> whole.orders().get(order).id().equals(orderId))
                .findFirst().orElseThrow();
        wanted[index] = true;
        decoder.decode(IntStream.range(0, decoder.compiled().units.fine.length).toArray(), wanted);
        return index;
    }

    private List<Outcome.Reason> of(Outcome outcome) {
        int index = alone(outcome.orderId());
        if (!decoder.isPossible(index)) {
            Rule rule = decoder.reason(index) == null ? Rule.R17 : decoder.reason(index);
            String step = decoder.reasonTask(index) == null ? "one of its steps" : decoder.reasonTask(index).step.name();
            return List.of(new Outcome.Reason(rule, "even with the kitchen to itself from now on, no place is found for: " + step));
        }
        Outcome alone = new TimetableBuilder(decoder).build().outcomes().get(index);
        String when = TIME.format(whole.clock().at(alone.handMinute()));
        String beside = alone.lateMinutes() > 0 ? "even with the kitchen to itself from now on it would be handed over at " + when
                : "with the kitchen to itself from now on it could be handed over at " + when + "; the other orders need the same hands and ovens";
        return List.of(new Outcome.Reason(outcome.possible() ? Rule.R16 : Rule.R17, beside));
    }
}
