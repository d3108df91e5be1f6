package crumbclock.domain.promise;

import java.util.Optional;

/**
 * One thing that would help, tried by planning.
 *
 * @param name   fit for a folder
 * @param words  what it is, for people
 * @param before earliest hand-over at this price without it; empty when none was found
 * @param plan   the earliest plan with it
 */
public record Help(String name, String words, Price price, Optional<Integer> before, PromisedPlan plan) {
}
