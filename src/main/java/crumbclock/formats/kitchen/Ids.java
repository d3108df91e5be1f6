package crumbclock.formats.kitchen;

import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds ids that are used twice; brings allergens into one form. */
final class Ids {

    private Ids() {
    }

    /** Allergens in lower case, since "Nuts" and "nuts" must never count as two. */
    static Set<String> lowerCase(List<String> allergens) {
        return allergens.stream().map(word -> word.toLowerCase(Locale.ROOT)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** @param seen ids that are taken already; those of the entries are added */
    static <T> void unique(Spot spot, List<T> entries, Function<T, String> id, Set<String> seen, IssueLog log) {
        for (int i = 0; i < entries.size(); i++) {
            if (!seen.add(id.apply(entries.get(i)))) {
                spot.child(i).child("id").fault(log, "an id that nothing else of this kind has", "Rename one of the two.");
            }
        }
    }
}
