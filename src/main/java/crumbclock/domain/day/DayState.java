package crumbclock.domain.day;

import crumbclock.domain.problem.KeptPlan;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How the problem of a plan that was made while the day ran differs from the problem in its file. With both, and with that plan for the
 * times of what has begun, the problem can be made again exactly.
 *
 * @param now      minute from which on was planned
 * @param kitchen  what could not be used, and who was not there; lines of the day file are 0
 * @param slower   minutes of work more, by step
 * @param skipped  steps that are not done
 * @param again    batches made a second time, in this order: one may be of a batch made by another before it
 * @param repairs  ids of repairs that are done
 * @param lostAt   by step, the minute up to which whatever was recorded of it counts for nothing
 * @param happened steps that had begun
 * @param goingOn  of these, stays whose end nobody knew
 * @param known    the plan that people had before
 */
public record DayState(int now, List<KitchenEvent> kitchen, Map<String, Integer> slower, Set<String> skipped, List<BatchAgain> again,
        List<String> repairs, Map<String, Integer> lostAt, Set<String> happened, Set<String> goingOn, KeptPlan known) {

    /** The day has not begun. */
    public static final DayState NONE = new DayState(0, List.of(), Map.of(), Set.of(), List.of(), List.of(), Map.of(), Set.of(), Set.of(), KeptPlan.NONE);

    public DayState {
        kitchen = List.copyOf(kitchen);
        slower = Collections.unmodifiableMap(new LinkedHashMap<>(slower));
        skipped = Collections.unmodifiableSet(new LinkedHashSet<>(skipped));
        again = List.copyOf(again);
        repairs = List.copyOf(repairs);
        lostAt = Collections.unmodifiableMap(new LinkedHashMap<>(lostAt));
        happened = Collections.unmodifiableSet(new LinkedHashSet<>(happened));
        goingOn = Collections.unmodifiableSet(new LinkedHashSet<>(goingOn));
    }

    /**
     * A shared batch that is made a second time.
     *
     * @param cakeIds that use the second one instead of the first; at least one
     */
    public record BatchAgain(String batchId, List<String> cakeIds) {

        /** At the end of the name of what is made again. */
        public static final String AGAIN = "-again";

        public BatchAgain {
            cakeIds = List.copyOf(cakeIds);
        }

        /** What the second batch is called: the first name with "-again" that nothing has. */
        public static String freeId(String batchId, Set<String> taken) {
            String id = batchId + AGAIN;
            for (int number = 2; taken.contains(id); number++) {
                id = batchId + AGAIN + "-" + number;
            }
            return id;
        }
    }
}
