package crumbclock.formats.order;

import java.util.Set;
import java.util.TreeSet;

/**
 * Names that orders may refer to.
 *
 * @param cakeMethods  methods that make cakes
 * @param batchMethods methods that make shared batches
 * @param batches      shared batches of the problem
 * @param complete     false while a file that defines some of them could not be read: unknown names are then no issue
 */
public record Names(Set<String> cakeMethods, Set<String> batchMethods, Set<String> batches, boolean complete) {

    public Names {
        cakeMethods = new TreeSet<>(cakeMethods);
        batchMethods = new TreeSet<>(batchMethods);
        batches = new TreeSet<>(batches);
    }
}
