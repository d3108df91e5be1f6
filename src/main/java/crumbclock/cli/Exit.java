package crumbclock.cli;

import crumbclock.domain.plan.Plan;

/** What the program says to whoever started it, as a number. */
enum Exit {

    /** Sound and all on time. */
    ON_TIME(0),
    /** Sound, but an order is late or not possible. */
    NOT_ALL_ON_TIME(1),
    /** Input, options or places to write that do not work; nothing was written. */
    BAD_INPUT(2),
    /** The audit found a broken rule, or the program failed. */
    FAULT(3);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }

    static Exit of(Plan plan) {
        if (!plan.isSound()) {
            return FAULT;
        }
        boolean allOnTime = plan.timetable().outcomes().stream()
                .allMatch(outcome -> outcome.possible() && outcome.lateMinutes() == 0);
        return allOnTime ? ON_TIME : NOT_ALL_ON_TIME;
    }
}
