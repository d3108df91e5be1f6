package crumbclock.engine.model;

import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.LifeLimit;
import java.util.Optional;

/**
 * A limit of rule R12 on the way from one task to another, in real time; exactly one of {@code cold} and {@code life} is there.
 */
public record Limit(Task from, Task to, Task[] held, Optional<ColdLimit> cold, Optional<LifeLimit> life, boolean mirrored) {

    /** The one that is placed first, in abstract time. */
    public Task first() {
        return mirrored ? to : from;
    }

    /** The one that is placed last, in abstract time; then the limit can be checked. */
    public Task last() {
        return mirrored ? from : to;
    }
}
