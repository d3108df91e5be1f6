package crumbclock.domain.change;

import crumbclock.domain.request.BatchRequest;

/** A change of how things are made. */
public sealed interface WorkChange extends Change {

    /** A component of one cake that is there already, so that neither it nor what goes into it alone is made. */
    record ComponentInStock(String cakeId, String component) implements WorkChange {
    }

    /** One shared batch more; no other batch or cake has its id. */
    record BatchAdded(BatchRequest batch) implements WorkChange {
    }

    /** A whole shared batch that is there already. */
    record BatchInStock(String batchId) implements WorkChange {
    }

    /**
     * Steps that take longer or shorter: the work of hands-on steps, the least rest of others, whose most goes along by as
     * many minutes. Rounded up to whole minutes.
     *
     * @param percent of the minutes that they take otherwise, 1 to 1,000
     * @param minutes added after that; below 0 to take away
     */
    record StepTime(StepChoice steps, int percent, int minutes) implements WorkChange {
    }

    /**
     * The time after steps in which the next step must begin (most waits), and the time that what they keep cold may be out
     * of the cold. Rounded down to whole minutes.
     *
     * @param percent of the minutes otherwise, 1 to 1,000
     */
    record StepWindow(StepChoice steps, int percent) implements WorkChange {
    }
}
