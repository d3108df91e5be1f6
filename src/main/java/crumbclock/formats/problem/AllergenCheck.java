package crumbclock.formats.problem;

import crumbclock.domain.problem.Problem;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.Spot;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds allergens to be free from that are probably misspelt: nothing contains them, but something has nearly that name. Read as they
 * stand they would keep nothing away. A name far from all others is taken as meant: nothing here contains it.
 */
public record AllergenCheck(Set<String> known, IssueLog log) {

    /** The words that the library uses for the fourteen of Regulation (EU) 1169/2011, Annex II, and the usual single ones. */
    private static final List<String> USUAL = List.of("almond", "celery", "crustaceans", "egg", "fish", "gluten", "hazelnut", "lupin",
            "milk", "molluscs", "mustard", "nuts", "peanut", "sesame", "soya", "sulphites", "walnut", "wheat");

    /** Knows what the steps contain, and the usual names as far as no step has nearly the same one. */
    public static AllergenCheck of(Problem problem, IssueLog log) {
        Set<String> known = new TreeSet<>();
        problem.steps().forEach(step -> known.addAll(step.contains()));
        for (String usual : USUAL) {
            if (!Nearest.advice(usual, new TreeSet<>(known)).startsWith("Did")) {
                known.add(usual);
            }
        }
        return new AllergenCheck(known, log);
    }

    /** What to say of a name that is probably misspelt; empty for one that is fine. */
    public String doubt(String allergen) {
        String advice = Nearest.advice(allergen, known);
        return known.contains(allergen) || !advice.startsWith("Did") ? "" : "Nothing contains \"" + allergen + "\". " + advice;
    }

    /** Checks a list in a JSON file. */
    public void check(Spot spot) {
        for (int i = 0; i < spot.node().size(); i++) {
            String doubt = doubt(spot.child(i).node().asText().toLowerCase(Locale.ROOT));
            if (!doubt.isEmpty()) {
                spot.child(i).fault(log, "an allergen as the methods name it", doubt);
            }
        }
    }
}
