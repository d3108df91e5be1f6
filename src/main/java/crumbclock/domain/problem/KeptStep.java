package crumbclock.domain.problem;

import java.util.List;

/**
 * What people have been told of one step.
 *
 * @param start   minute at which it begins
 * @param people  ids of who works on it; empty for an unattended step
 * @param putIn   id of who puts it in; empty when nobody does
 * @param takeOut id of who takes it out; empty when nobody does
 */
public record KeptStep(String stepId, int start, List<String> people, String putIn, String takeOut) {

    public KeptStep {
        people = List.copyOf(people);
    }
}
