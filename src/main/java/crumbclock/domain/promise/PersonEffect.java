package crumbclock.domain.promise;

/**
 * What one more order does to a person.
 *
 * @param moved steps of other orders that the person works on or touches and that begin at another time, or that somebody else had before
 * @param more  minutes of hands-on work and touches more than in the plan that people have; below 0 for less
 */
public record PersonEffect(String personId, int moved, int more) {
}
