package crumbclock.rules;

import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Wish;

/** How constraints are called, {@code R07 oven room: pans apart}, and back. */
final class ConstraintNames {

    /** What the medium cost is called. */
    static final String LATENESS = "lateness";

    private ConstraintNames() {
    }

    static String of(Rule rule, String facet) {
        return rule.name() + " " + rule.title() + ": " + facet;
    }

    static String of(Wish wish, String facet) {
        return wish.name() + " " + wish.title() + ": " + facet;
    }

    static String lateness(String facet) {
        return LATENESS + ": " + facet;
    }

    static boolean isRule(String name) {
        return name.startsWith("R");
    }

    static Rule ruleOf(String name) {
        return Rule.valueOf(name.substring(0, 3));
    }

    /** The number of a wish, or {@link #LATENESS}. */
    static String lineOf(String name) {
        return name.startsWith(LATENESS) ? LATENESS : name.substring(0, 3);
    }
}
