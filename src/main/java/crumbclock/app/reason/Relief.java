package crumbclock.app.reason;

import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Wait;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * One kind of rule dropped for the sake of argument. What comes out is easier than the problem and never harder: things
 * are added or asked for less, so that what has happened still fits. The likely ones come first: looking for causes ends
 * when it has taken long enough.
 */
enum Relief {

    PEOPLE(Rule.R03, "there are too few hands, or not at the right time, or without the skill",
            "with more people at all hours", KitchenRelief::people),
    OVENS(Rule.R07, "there is too little room in the ovens", "with more and larger ovens", KitchenRelief::ovens),
    SHELVES(Rule.R10, "there is too little shelf space", "with more and larger shelves", KitchenRelief::shelves),
    EQUIPMENT(Rule.R06, "there is too little equipment, or rack or bench space", "with more equipment, racks and benches",
            KitchenRelief::equipment),
    TIME(Rule.R01, "its steps and the waits between them take too long", "with no waits and no baking or resting time",
            Relief::withoutTime),
    HOURS(Rule.R14, "the kitchen is shut, or its ingredients come too late", "with the kitchen open at all hours and all ingredients there",
            Relief::withoutHours),
    HAND_OVER(Rule.R16, "nobody is there to hand it over", "if it were fetched without anybody's help",
            Relief::withoutHandOvers),
    NOT_TOO_LONG(Rule.R02, "some of its steps may not wait long enough for the next ones", "with no limit to the waits",
            Relief::withoutMost),
    STORES(Rule.R11, "no store takes it as warm, or as humid, as it is", "with stores that take everything",
            KitchenRelief::stores),
    LIFE(Rule.R12, "something in it does not keep long enough", "if everything kept for ever", Relief::withoutLife),
    ALLERGENS(Rule.R13, "it must be kept apart from allergens", "without care for allergens", Relief::withoutAllergens);

    /** Stands in for "as many as anybody needs": each more makes the small search slower. */
    static final int MANY = 40;

    private final Rule rule;
    private final String cause;
    private final String cure;
    private final UnaryOperator<Problem> easier;

    Relief(Rule rule, String cause, String cure, UnaryOperator<Problem> easier) {
        this.rule = rule;
        this.cause = cause;
        this.cure = cure;
        this.easier = easier;
    }

    Rule rule() {
        return rule;
    }

    /** The cause in words, to begin a sentence with. */
    String cause() {
        return cause;
    }

    /** What was granted, in words: "with …" or "if …". */
    String cure() {
        return cure;
    }

    Problem ease(Problem problem) {
        return easier.apply(problem);
    }

    /** Everything dropped but this one. */
    Problem easeAllOthers(Problem problem) {
        Problem eased = problem;
        for (Relief relief : values()) {
            if (relief != this) {
                eased = relief.ease(eased);
            }
        }
        return eased;
    }

    private static Problem withoutTime(Problem problem) {
        List<Wait> waits = problem.waits().stream().map(wait -> new Wait(wait.fromStepId(), wait.toStepId(),
                Math.min(0, wait.leastMinutes()), wait.mostMinutes())).toList();
        return problem.withEachStep(StepChange::withoutRest).withWaits(waits);
    }

    private static Problem withoutMost(Problem problem) {
        List<Wait> waits = problem.waits().stream().map(wait -> new Wait(wait.fromStepId(), wait.toStepId(),
                wait.leastMinutes(), Wait.NO_MOST)).toList();
        return problem.withEachStep(StepChange::withoutMost).withWaits(waits);
    }

    private static Problem withoutLife(Problem problem) {
        return problem.withLimits(List.of(), List.of());
    }

    private static Problem withoutAllergens(Problem problem) {
        return KitchenRelief.allergens(problem).withEachStep(StepChange::withoutFreeFrom);
    }

    private static Problem withoutHours(Problem problem) {
        return KitchenRelief.opening(problem).withEachStep(StepChange::withoutEarliest);
    }

    static Problem withoutHandOvers(Problem problem) {
        Set<String> handOvers = new HashSet<>();
        problem.orders().forEach(order -> handOvers.add(order.handOver().stepId()));
        return problem.withEachStep(step -> handOvers.contains(step.id())
                ? StepChange.withoutHandsOrCar(step) : step);
    }
}
