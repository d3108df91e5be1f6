package crumbclock.methods;

import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.Footprint;

import java.util.List;

/** A batch has no size of its own, only an amount; its tables by size should say {@code any}. */
final class BatchScope {

    private static final TierRequest NO_SIZE = new TierRequest(new Footprint(true, 1, 1), 1);

    private BatchScope() {
    }

    static Scope of(int amount) {
        return new Scope(List.of(NO_SIZE), 1, amount);
    }
}
